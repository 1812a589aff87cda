package org.duskloom.cli;

import org.duskloom.engine.file.StagedFiles;

/** Entry point of the program. */
public final class Main {
    private Main() {}

    /** Runs the program and ends the JVM with its {@link ExitCode}. */
    public static void main(String[] args) {
        // Before any class of JOML is loaded: with heap buffers its way round the JDK ends the JVM.
        System.setProperty("joml.nounsafe", "true");
        System.setProperty("java.awt.headless", "true");
        Streams streams = Streams.ofProcess();
        if (hasOtherArithmetic(streams)) {
            System.exit(ExitCode.USAGE);
        }
        StagedFiles.abandonOnShutdown();
        System.exit(new Program(streams).run(args));
    }

    /** JOML's own switches change what it computes, and with it the frames. */
    private static boolean hasOtherArithmetic(Streams streams) {
        for (String name : System.getProperties().stringPropertyNames()) {
            if (name.startsWith("joml.") && !name.equals("joml.nounsafe")) {
                streams.tell("duskloom: the Java property " + name + " would change the frames; leave it out");
                return true;
            }
        }
        return false;
    }
}
