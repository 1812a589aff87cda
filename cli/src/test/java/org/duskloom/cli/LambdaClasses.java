package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import net.bytebuddy.jar.asm.ClassReader;
import net.bytebuddy.jar.asm.ClassWriter;

/**
 * Writes the lambdas of our classes as classes, and {@code equals} and {@code hashCode} of our records as plain code.
 * The JVM would make them at every start, each when it first comes by, which takes it five times as long as loading a
 * class from the archive. Compiled as a test, so that nothing of it comes near the program; the build runs it over the
 * jar that it has packed.
 */
final class LambdaClasses {
    private static final String OURS = "org/duskloom/";
    private static final String CLASS = ".class";

    private final Map<String, byte[]> written = new LinkedHashMap<>();
    private final Map<String, List<String>> added = new LinkedHashMap<>();
    private final Map<String, List<String>> newMembers = new LinkedHashMap<>();

    private LambdaClasses() {}

    /** Rewrites our classes in a jar, in place. */
    public static void main(String[] arguments) throws IOException {
        Path jar = Path.of(arguments[0]);
        Path rewritten = jar.resolveSibling(jar.getFileName() + ".rewritten");
        rewrite(jar, rewritten);
        Files.move(rewritten, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Writes the entries of a jar into another one, with the same times, and new classes behind those they are of. */
    static void rewrite(Path jar, Path into) throws IOException {
        LambdaClasses classes = new LambdaClasses();
        try (ZipFile from = new ZipFile(jar.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(into))) {
            List<? extends ZipEntry> entries = Collections.list(from.entries());
            for (ZipEntry entry : entries) {
                if (isOurs(entry)) {
                    classes.split(OldClassFiles.read(from, entry));
                }
            }
            for (ZipEntry entry : entries) {
                if (isOurs(entry)) {
                    classes.write(out, entry);
                } else {
                    OldClassFiles.write(out, entry, OldClassFiles.read(from, entry));
                }
            }
        }
    }

    private static boolean isOurs(ZipEntry entry) {
        return entry.getName().startsWith(OURS) && entry.getName().endsWith(CLASS);
    }

    private void split(byte[] classFile) {
        ClassReader reader = new ClassReader(classFile);
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        LambdaHost host = new LambdaHost(reader.getClassName(), writer);
        reader.accept(host, 0);
        written.put(reader.getClassName(), writer.toByteArray());
        written.putAll(host.lambdas());
        added.put(reader.getClassName(), List.copyOf(host.lambdas().keySet()));
        newMembers
                .computeIfAbsent(host.nest(), nest -> new ArrayList<>())
                .addAll(host.lambdas().keySet());
    }

    private void write(ZipOutputStream out, ZipEntry entry) throws IOException {
        String name = entry.getName().substring(0, entry.getName().length() - CLASS.length());
        List<String> members = newMembers.getOrDefault(name, List.of());
        OldClassFiles.write(out, entry, members.isEmpty() ? written.get(name) : withMembers(name, members));
        // Not all that are there by name: of a jar that was rewritten before, those are entries already.
        for (String lambda : added.get(name)) {
            ZipEntry behind = new ZipEntry(lambda + CLASS);
            // As it is written, without a zone of time, so that every machine packs the same bytes.
            behind.setTimeLocal(entry.getTimeLocal());
            OldClassFiles.write(out, behind, written.get(lambda));
        }
    }

    /** A class that says who else may use the private members of its nest. */
    private byte[] withMembers(String name, List<String> members) {
        ClassReader reader = new ClassReader(written.get(name));
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(writer, 0);
        members.forEach(writer::visitNestMember);
        return writer.toByteArray();
    }
}
