package org.duskloom.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.format.RawFrameSink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TeeSinkTest {
    private final List<String> log = new ArrayList<>();

    @TempDir
    private Path folder;

    @Test
    void servesAllInOrder() throws IOException {
        try (TeeSink tee = new TeeSink(List.of(new Recorder("a", -1), new Recorder("b", -1)))) {
            tee.frame(3, new byte[3]);
            tee.finish();
        }
        assertThat(log).containsExactly("a 3", "b 3", "a done", "b done", "a closed", "b closed");
    }

    @Test
    void closesAllEvenIfClosingFails() {
        TeeSink tee = new TeeSink(List.of(new Unclosable("first"), new Recorder("b", -1), new Unclosable("second")));
        assertThatThrownBy(tee::close)
                .hasMessage("first")
                .satisfies(fault -> assertThat(fault.getSuppressed()).hasSize(1));
        assertThat(log).containsExactly("b closed");
    }

    /** A run of which one result fails in the middle: earlier output stays, and nothing of this run does. */
    @Test
    void aFailingSinkSpoilsTheWholeGroupAndNothingElse() throws IOException {
        Files.writeString(folder.resolve("frames.rgb"), "old");
        assertThatThrownBy(() -> renderInto(new Recorder("strip", 5))).hasMessage("strip is full");
        assertThat(namesIn(folder)).containsExactly("frames.rgb");
        assertThat(folder.resolve("frames.rgb")).hasContent("old");
    }

    @Test
    void theSameRunWithoutTheFaultReplacesIt() throws IOException {
        Files.writeString(folder.resolve("frames.rgb"), "old");
        renderInto(new Recorder("strip", -1));
        assertThat(folder.resolve("frames.rgb")).hasSize(30);
    }

    private void renderInto(FrameSink second) throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE);
                TeeSink tee = new TeeSink(
                        List.of(new RawFrameSink(group.open(folder.resolve("frames.rgb")), 0, 1), second))) {
            for (int n = 0; n < 10; n++) {
                tee.frame(n, new byte[3]);
            }
            tee.finish();
            group.publish();
        }
    }

    /** Notes what it is asked; fails at one frame, or never. */
    private final class Recorder implements FrameSink {
        private final String name;
        private final long failsAt;

        Recorder(String name, long failsAt) {
            this.name = name;
            this.failsAt = failsAt;
        }

        @Override
        public void frame(long frameNumber, byte[] rgb) throws IOException {
            log.add(name + " " + frameNumber);
            if (frameNumber == failsAt) {
                throw new IOException(name + " is full");
            }
        }

        @Override
        public void finish() {
            log.add(name + " done");
        }

        @Override
        public void close() {
            log.add(name + " closed");
        }
    }

    /** Cannot be closed. */
    private record Unclosable(String message) implements FrameSink {
        @Override
        public void frame(long frameNumber, byte[] rgb) {}

        @Override
        public void finish() {}

        @Override
        public void close() throws IOException {
            throw new IOException(message);
        }
    }
}
