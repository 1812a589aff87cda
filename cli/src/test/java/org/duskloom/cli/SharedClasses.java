package org.duskloom.cli;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * The classes under test in the JVM's archive of classes that are loaded already, for tests that start the program many
 * times. It takes none from folders, so what these hold becomes a jar.
 */
final class SharedClasses {
    private final String classPath;
    private final Path archive;

    /** @param folder where they shall stand */
    SharedClasses(Path folder) throws IOException {
        classPath = jarred(ProgramProcess.classPath(), folder.resolve("classes.jar"));
        archive = folder.resolve("classes.jsa");
    }

    /** Lets a JVM have them. The first one makes the archive as it ends, of all that it has loaded. */
    ProcessBuilder of(ProcessBuilder program) {
        List<String> command = program.command();
        command.set(command.indexOf("-cp") + 1, classPath);
        String use = Files.exists(archive) ? "SharedArchiveFile" : "ArchiveClassesAtExit";
        command.addAll(1, List.of("-XX:" + use + "=" + archive, "-Xlog:disable"));
        return program;
    }

    /** The same path with one jar in place of all folders, which is first. */
    private static String jarred(String classPath, Path jar) throws IOException {
        List<String> entries = new ArrayList<>(List.of(jar.toString()));
        Set<String> names = new HashSet<>();
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            out.setLevel(0);
            for (String entry : classPath.split(File.pathSeparator)) {
                if (Files.isDirectory(Path.of(entry))) {
                    addAll(Path.of(entry), names, out);
                } else {
                    entries.add(entry);
                }
            }
        }
        return String.join(File.pathSeparator, entries);
    }

    private static void addAll(Path folder, Set<String> names, JarOutputStream out) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                if (names.add(name)) {
                    out.putNextEntry(new JarEntry(name));
                    Files.copy(file, out);
                    out.closeEntry();
                }
            }
        }
    }
}
