package org.duskloom.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

/**
 * Many runs of the program in one process, as a process of its own is dear. Each line of the standard input holds the
 * words of one with tabs between; each line of the output its code and what it wrote.
 */
final class ProgramBatch {
    /** The argument with which a run does not wait for the one before, nor shares a lock or a counter with it. */
    static final String AT_ONCE = "at-once";

    private ProgramBatch() {}

    public static void main(String[] arguments) throws Exception {
        BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            String words = line;
            if (List.of(arguments).contains(AT_ONCE)) {
                begin(words);
            } else {
                run(words);
            }
        }
    }

    private static void begin(String line) throws Exception {
        ClassLoader classes = new OwnClasses();
        Method run = classes.loadClass(ProgramBatch.class.getName()).getDeclaredMethod("run", String.class);
        run.setAccessible(true);
        Thread thread = new Thread(() -> {
            try {
                run.invoke(null, line);
            } catch (ReflectiveOperationException fault) {
                throw new AssertionError(fault);
            }
        });
        thread.setContextClassLoader(classes);
        thread.start();
    }

    private static void run(String line) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream people = new PrintStream(err, true, StandardCharsets.UTF_8);
        Streams streams = new Streams(out, StandardCharsets.UTF_8, people, TerminalTraits.PLAIN);
        int code = new Program(streams).run(line.split("\t"));
        System.out.println(code + "\t" + coded(out) + "\t" + coded(err) + "\t");
    }

    static String line(List<String> words) {
        return String.join("\t", words) + "\n";
    }

    static List<Ran> read(String lines) {
        return lines.lines().map(ProgramBatch::readOne).toList();
    }

    private static Ran readOne(String line) {
        String[] parts = line.split("\t", -1);
        return new Ran(Integer.parseInt(parts[0]), plain(parts[1]), plain(parts[2]));
    }

    private static String coded(ByteArrayOutputStream bytes) {
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    private static String plain(String coded) {
        return new String(Base64.getDecoder().decode(coded), StandardCharsets.UTF_8);
    }
}
