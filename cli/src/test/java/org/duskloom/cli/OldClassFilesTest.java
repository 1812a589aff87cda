package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import net.bytebuddy.jar.asm.ClassWriter;
import net.bytebuddy.jar.asm.Label;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import org.joml.Matrix4d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Raising old class files: the JVM itself says whether the stack maps are right, and nothing else may change. */
class OldClassFilesTest {
    private static final FileTime TIME = FileTime.from(Instant.parse("2026-06-21T21:00:00Z"));

    @TempDir
    private Path folder;

    @Test
    void whatIsOldIsRaisedAndAllElseStaysAsItIs() throws Exception {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("Later.txt", "a pond".getBytes(StandardCharsets.UTF_8));
        entries.put("Least.class", leastOfTwo(Opcodes.V1_2));
        entries.put("Early.class", leastOfTwo(Opcodes.V1_8));
        Path jar = packed(entries);
        OldClassFiles.main(new String[] {jar.toString()});
        Map<String, byte[]> raised = unpacked(jar);
        assertThat(raised.keySet()).containsExactlyElementsOf(entries.keySet());
        assertThat(raised.get("Later.txt")).isEqualTo(entries.get("Later.txt"));
        assertThat(raised.get("Early.class")).isEqualTo(entries.get("Early.class"));
        assertThat(raised.get("Least.class")).startsWith(0xCA, 0xFE, 0xBA, 0xBE, 0, 0, 0, 50);
        Class<?> least = new Strict(Map.of("Least", raised.get("Least.class"))).loadClass("Least");
        assertThat(least.getMethod("of", int.class, int.class).invoke(null, 7, 3))
                .isEqualTo(3);
        assertThat(Files.list(folder)).containsExactly(jar);
    }

    @Test
    void theSameBytesComeOutTwiceWithTheTimesOfTheEntries() throws Exception {
        Path jar = packed(Map.of("Least.class", leastOfTwo(Opcodes.V1_5)));
        OldClassFiles.raise(jar, folder.resolve("once.jar"));
        OldClassFiles.raise(jar, folder.resolve("twice.jar"));
        assertThat(folder.resolve("twice.jar")).hasSameBinaryContentAs(folder.resolve("once.jar"));
        try (ZipFile once = new ZipFile(folder.resolve("once.jar").toFile())) {
            assertThat(once.getEntry("Least.class").getLastModifiedTime()).isEqualTo(TIME);
        }
    }

    @Test
    void theLibrariesThatAreOldLink() throws Exception {
        for (Class<?> one : new Class<?>[] {CommandLine.class, Matrix4d.class}) {
            Path jar = Path.of(placeOf(one));
            OldClassFiles.raise(jar, folder.resolve("raised.jar"));
            Map<String, byte[]> old = new TreeMap<>();
            Map<String, byte[]> raised = unpacked(folder.resolve("raised.jar"));
            unpacked(jar).forEach((name, bytes) -> {
                if (name.endsWith(".class") && OldClassFiles.isOld(bytes)) {
                    old.put(name.replace('/', '.').replace(".class", ""), raised.get(name));
                }
            });
            assertThat(old).as("old classes of " + jar).hasSizeGreaterThan(50);
            Strict strict = new Strict(old);
            for (String name : old.keySet()) {
                // To list the methods of a class the JVM links it, which is when it looks at the stack maps.
                assertThat(strict.loadClass(name).getDeclaredMethods()).isNotNull();
            }
        }
    }

    /** A class of our own with a branch, for which a stack map is needed, of the old kind without. */
    private static byte[] leastOfTwo(int version) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(version, Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER, "Least", null, "java/lang/Object", null);
        MethodVisitor of = writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, "of", "(II)I", null, null);
        Label second = new Label();
        of.visitCode();
        of.visitVarInsn(Opcodes.ILOAD, 0);
        of.visitVarInsn(Opcodes.ILOAD, 1);
        of.visitJumpInsn(Opcodes.IF_ICMPGE, second);
        of.visitVarInsn(Opcodes.ILOAD, 0);
        of.visitInsn(Opcodes.IRETURN);
        of.visitLabel(second);
        of.visitVarInsn(Opcodes.ILOAD, 1);
        of.visitInsn(Opcodes.IRETURN);
        of.visitMaxs(0, 0);
        of.visitEnd();
        writer.visitEnd();
        return writer.toByteArray();
    }

    private Path packed(Map<String, byte[]> entries) throws IOException {
        Path jar = folder.resolve("packed.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (Map.Entry<String, byte[]> each : entries.entrySet()) {
                out.putNextEntry(new ZipEntry(each.getKey()).setLastModifiedTime(TIME));
                out.write(each.getValue());
            }
        }
        return jar;
    }

    private static Map<String, byte[]> unpacked(Path jar) throws IOException {
        Map<String, byte[]> found = new LinkedHashMap<>();
        try (ZipFile file = new ZipFile(jar.toFile())) {
            for (ZipEntry entry : file.stream().toList()) {
                try (InputStream in = file.getInputStream(entry)) {
                    found.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        return found;
    }

    private static URI placeOf(Class<?> one) throws URISyntaxException {
        return one.getProtectionDomain().getCodeSource().getLocation().toURI();
    }

    /** Has all classes as of Java 7: from then on the JVM goes by stack maps alone and does not look by itself. */
    private static final class Strict extends ClassLoader {
        private final Map<String, byte[]> files;

        Strict(Map<String, byte[]> files) {
            super(ClassLoader.getPlatformClassLoader());
            this.files = files;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] file = files.get(name);
            if (file == null) {
                throw new ClassNotFoundException(name);
            }
            byte[] newer = file.clone();
            newer[7] = Opcodes.V1_7;
            return defineClass(name, newer, 0, newer.length);
        }
    }
}
