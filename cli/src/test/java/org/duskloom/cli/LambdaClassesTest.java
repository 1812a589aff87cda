package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Constructor;
import java.net.MalformedURLException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import net.bytebuddy.jar.asm.ClassReader;
import net.bytebuddy.jar.asm.ClassVisitor;
import net.bytebuddy.jar.asm.Handle;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.text.Counted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lambdas as classes and records as plain code do what they do where the JVM makes them, which is asked for both. */
class LambdaClassesTest {
    private static final String SAMPLES = LambdaSamples.class.getName().replace('.', '/');
    private static final LocalDateTime TIME = LocalDateTime.of(2026, 6, 21, 21, 0);

    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenGivesWhatTheJvmMakesOfIt() throws Exception {
        Map<String, byte[]> written = rewritten(samples());
        Constructor<?> made =
                new Own(written).loadClass(LambdaSamples.class.getName()).getDeclaredConstructor();
        made.setAccessible(true);
        assertThat(((Callable<?>) made.newInstance()).call()).isEqualTo(new LambdaSamples().call());
    }

    @Test
    void theJvmIsLeftWithWhatIsNotPlain() throws Exception {
        Map<String, byte[]> written = rewritten(samples());
        assertThat(linked(samples().values()).filter(one -> !one.equals("toString")))
                .hasSizeGreaterThan(35);
        // What can be written to a stream is made in two places: where it stands, and where it is read again.
        assertThat(linked(written.values()).filter(one -> !one.equals("toString")))
                .containsExactlyInAnyOrder("applyAsLong", "run", "run");
        assertThat(written.keySet()).contains(SAMPLES + "$$1.class", SAMPLES + "$Petals$$1.class");
    }

    @Test
    void theSameBytesComeOutTwiceWithTheTimesOfTheEntries() throws Exception {
        Path jar = packed(Map.of(SAMPLES + ".class", samples().get(SAMPLES + ".class")));
        LambdaClasses.rewrite(jar, folder.resolve("once.jar"));
        LambdaClasses.rewrite(jar, folder.resolve("twice.jar"));
        assertThat(folder.resolve("twice.jar")).hasSameBinaryContentAs(folder.resolve("once.jar"));
        try (ZipFile once = new ZipFile(folder.resolve("once.jar").toFile())) {
            assertThat(once.stream().map(ZipEntry::getTimeLocal))
                    .hasSizeGreaterThan(10)
                    .containsOnly(TIME);
        }
    }

    /** A build that packs nothing anew runs over the same jar once more. */
    @Test
    void aJarThatIsRewrittenAlreadyKeepsItsClasses() throws Exception {
        Map<String, byte[]> once = rewritten(samples());
        Map<String, byte[]> twice = rewritten(once);
        assertThat(twice.keySet()).isEqualTo(once.keySet());
        Constructor<?> made =
                new Own(twice).loadClass(LambdaSamples.class.getName()).getDeclaredConstructor();
        made.setAccessible(true);
        assertThat(((Callable<?>) made.newInstance()).call()).isEqualTo(new LambdaSamples().call());
    }

    @Test
    void whatIsNotOursStaysAsItIs() throws Exception {
        byte[] text = "a pond".getBytes(StandardCharsets.UTF_8);
        byte[] other = samples().get(SAMPLES + ".class");
        Map<String, byte[]> entries = Map.of("Later.txt", text, "com/other/Samples.class", other);
        Map<String, byte[]> written = rewritten(entries);
        assertThat(written.keySet()).isEqualTo(entries.keySet());
        assertThat(written.get("Later.txt")).isEqualTo(text);
        assertThat(written.get("com/other/Samples.class")).isEqualTo(other);
    }

    @Test
    void allClassesOfTheProgramLinkAndHardlyAnyLambdaIsLeft() throws Exception {
        Effect effect = EffectRegistry.installed().effects().get(0);
        Map<String, byte[]> classes = new TreeMap<>();
        for (Class<?> one : List.of(Main.class, effect.getClass(), Counted.class)) {
            classes.putAll(classesBeside(one));
        }
        Map<String, byte[]> written = rewritten(classes);
        Own loader = new Own(written);
        for (String file : written.keySet()) {
            Class<?> one = loader.loadClass(file.replace(".class", "").replace('/', '.'));
            // To list the methods of a class the JVM links it, which is when it looks at its code.
            assertThat(one.getDeclaredMethods()).isNotNull();
            assertThat(one.getClassLoader()).isSameAs(loader);
        }
        assertThat(linked(classes.values()).filter(one -> !one.equals("toString")))
                .hasSizeGreaterThan(2500);
        assertThat(linked(written.values()).filter(one -> !one.equals("toString")))
                .hasSizeLessThan(20);
    }

    /** The methods that the JVM links when it comes by. */
    private static Stream<String> linked(Iterable<byte[]> classes) {
        Stream.Builder<String> found = Stream.builder();
        for (byte[] one : classes) {
            new ClassReader(one)
                    .accept(
                            new ClassVisitor(Opcodes.ASM9) {
                                @Override
                                public MethodVisitor visitMethod(int a, String n, String t, String s, String[] e) {
                                    return new Linked(found);
                                }
                            },
                            0);
        }
        return found.build();
    }

    private static Map<String, byte[]> samples() throws Exception {
        Map<String, byte[]> samples = new TreeMap<>(classesBeside(LambdaSamples.class));
        samples.keySet().removeIf(name -> !name.startsWith(SAMPLES));
        return samples;
    }

    private static Map<String, byte[]> classesBeside(Class<?> one) throws IOException, URISyntaxException {
        Path place =
                Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
        if (Files.isDirectory(place)) {
            return classesUnder(place);
        }
        try (FileSystem jar = FileSystems.newFileSystem(place)) {
            return classesUnder(jar.getPath("/"));
        }
    }

    private static Map<String, byte[]> classesUnder(Path root) throws IOException {
        Map<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file :
                    (Iterable<Path>) files.filter(each -> each.toString().endsWith(".class"))::iterator) {
                String name = root.relativize(file).toString().replace('\\', '/');
                if (name.startsWith("org/duskloom/") && !name.endsWith("-info.class")) {
                    found.put(name, Files.readAllBytes(file));
                }
            }
        }
        return found;
    }

    private Map<String, byte[]> rewritten(Map<String, byte[]> entries) throws IOException {
        Path jar = packed(entries);
        LambdaClasses.main(new String[] {jar.toString()});
        Map<String, byte[]> found = new TreeMap<>();
        try (ZipFile file = new ZipFile(jar.toFile())) {
            for (ZipEntry entry : file.stream().toList()) {
                try (InputStream in = file.getInputStream(entry)) {
                    found.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        return found;
    }

    private Path packed(Map<String, byte[]> entries) throws IOException {
        Path jar = folder.resolve("packed.jar");
        try (OutputStream file = Files.newOutputStream(jar);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (Map.Entry<String, byte[]> each : entries.entrySet()) {
                ZipEntry entry = new ZipEntry(each.getKey());
                entry.setTimeLocal(TIME);
                out.putNextEntry(entry);
                out.write(each.getValue());
            }
        }
        return jar;
    }

    private static final class Linked extends MethodVisitor {
        private final Stream.Builder<String> found;

        Linked(Stream.Builder<String> found) {
            super(Opcodes.ASM9);
            this.found = found;
        }

        @Override
        public void visitInvokeDynamicInsn(String called, String type, Handle linker, Object... facts) {
            found.add(called);
        }
    }

    /** Has our classes from these files and no others, and all else as the program has it. */
    private static final class Own extends OwnClasses {
        private final Map<String, byte[]> files;

        Own(Map<String, byte[]> files) throws MalformedURLException {
            this.files = files;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] file = files.get(name.replace('.', '/') + ".class");
            if (file == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, file, 0, file.length);
        }
    }
}
