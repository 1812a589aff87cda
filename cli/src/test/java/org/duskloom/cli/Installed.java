package org.duskloom.cli;

import java.io.IOException;
import org.junit.jupiter.api.Assumptions;

/** Programs of others. A test that misses its program is left out, and says so. */
final class Installed {
    private Installed() {}

    /** Leaves the test out unless that command works. */
    static void require(String... command) {
        if (!works(command)) {
            skip("not installed: " + String.join(" ", command));
        }
    }

    /** The same for what runs as root only. */
    static void requireRoot(String program) {
        if (!"root".equals(System.getProperty("user.name"))) {
            skip(program + " runs as root only");
        }
    }

    /** Leaves the test out, and says why. */
    static void skip(String reason) {
        System.err.println("SKIPPED: " + reason);
        Assumptions.abort(reason);
    }

    private static boolean works(String... command) {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
