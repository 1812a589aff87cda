package org.duskloom.cli;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The program in a JVM of its own, from the classes under test. */
final class ProgramProcess {
    private ProgramProcess() {}

    static ProcessBuilder of(List<String> jvmOptions, Object... arguments) {
        return of(Main.class, jvmOptions, arguments);
    }

    /** The same of another class with a main method. */
    static ProcessBuilder of(Class<?> main, List<String> jvmOptions, Object... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-Xmx256m"));
        command.addAll(jvmOptions);
        command.addAll(List.of("-cp", classPath(), main.getName()));
        Stream.of(arguments).map(Object::toString).forEach(command::add);
        return new ProcessBuilder(command);
    }

    static ProcessBuilder of(Object... arguments) {
        return of(List.of(), arguments);
    }

    /** Modules of the tests may stand on either path; a class path takes both. */
    static String classPath() {
        return String.join(
                File.pathSeparator,
                Stream.of("jdk.module.path", "java.class.path")
                        .map(System::getProperty)
                        .filter(Objects::nonNull)
                        .toList());
    }
}
