package org.duskloom.engine.format;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.regex.Pattern;
import org.duskloom.engine.frame.RunInfo;

/** How a file of a whole show is put together from the files of runs that follow each other. */
public sealed interface Seam {
    /**
     * What is made of frames comes behind a header; those bytes of all runs follow each other, behind the header of the
     * whole.
     *
     * @param header what stands before the frames of a run
     * @param plain whether behind the header stand the frames themselves, as in {@code frames.rgb}
     * @param members what the names in its folder look like, where that is written as a whole
     */
    record Bodies(Function<RunInfo, byte[]> header, boolean plain, Optional<Pattern> members) implements Seam {
        public Bodies {
            Objects.requireNonNull(header, "header");
            Objects.requireNonNull(members, "members");
        }

        /** A file by itself. */
        public Bodies(Function<RunInfo, byte[]> header, boolean plain) {
            this(header, plain, Optional.empty());
        }
    }

    /**
     * It does not hang on the frames: every run has the same file.
     *
     * @param options what was asked for beside the words for such a file, as its bytes show it; empty for nothing
     */
    record Same(Function<byte[], String> options) implements Seam {
        public Same {
            Objects.requireNonNull(options, "options");
        }
    }

    /**
     * A folder that holds the bytes of each frame in a file of its own.
     *
     * @param fileName the name of a frame's file
     * @param members what the names look like
     */
    record Singles(LongFunction<String> fileName, Pattern members) implements Seam {
        public Singles {
            Objects.requireNonNull(fileName, "fileName");
            Objects.requireNonNull(members, "members");
        }
    }
}
