package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import net.bytebuddy.jar.asm.ClassReader;
import net.bytebuddy.jar.asm.ClassVisitor;
import net.bytebuddy.jar.asm.ClassWriter;
import net.bytebuddy.jar.asm.Opcodes;

/**
 * Class files of libraries that are older than Java 6, raised to Java 6: the archive of classes that the launcher
 * makes takes no older ones, nor such as have no stack maps. Nothing else of them changes. Compiled as a test, so that
 * nothing of it comes near the program; the build runs it over the jar that it has packed.
 */
final class OldClassFiles {
    private OldClassFiles() {}

    /** Raises what is old in a jar, in place. */
    public static void main(String[] arguments) throws IOException {
        Path jar = Path.of(arguments[0]);
        Path raised = jar.resolveSibling(jar.getFileName() + ".raised");
        raise(jar, raised);
        Files.move(raised, jar, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Writes the entries of a jar into another one, in the same order and with the same times. */
    static void raise(Path jar, Path into) throws IOException {
        URL[] place = {jar.toUri().toURL()};
        try (ZipFile from = new ZipFile(jar.toFile());
                URLClassLoader classes = new URLClassLoader(place, ClassLoader.getPlatformClassLoader());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(into))) {
            for (ZipEntry entry : Collections.list(from.entries())) {
                byte[] bytes = read(from, entry);
                boolean old = entry.getName().endsWith(".class") && isOld(bytes);
                write(out, entry, old ? raised(bytes, classes) : bytes);
            }
        }
    }

    /** Whether a class file is older than Java 6; its version stands behind a word and half a word. */
    static boolean isOld(byte[] classFile) {
        return ((classFile[6] & 0xFF) << 8 | classFile[7] & 0xFF) < Opcodes.V1_6;
    }

    /** The class with stack maps, which are reckoned from its code and from the classes that it names. */
    static byte[] raised(byte[] classFile, ClassLoader classes) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return classes;
            }
        };
        new ClassReader(classFile).accept(asOfJava6(writer), ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }

    private static ClassVisitor asOfJava6(ClassWriter writer) {
        return new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(int version, int access, String name, String signature, String parent, String[] faces) {
                super.visit(Opcodes.V1_6, access, name, signature, parent, faces);
            }
        };
    }

    /** The bytes of an entry. */
    static byte[] read(ZipFile from, ZipEntry entry) throws IOException {
        try (InputStream in = from.getInputStream(entry)) {
            return in.readAllBytes();
        }
    }

    /** Sizes are found anew: this may be another class, and another zlib packs to another size. */
    static void write(ZipOutputStream out, ZipEntry entry, byte[] bytes) throws IOException {
        ZipEntry written = new ZipEntry(entry);
        written.setMethod(ZipEntry.DEFLATED);
        written.setCompressedSize(-1);
        out.putNextEntry(written);
        out.write(bytes);
        out.closeEntry();
    }
}
