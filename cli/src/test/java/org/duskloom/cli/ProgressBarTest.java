package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.ref.WeakReference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.frame.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class ProgressBarTest {
    private static final long MS = 1_000_000;

    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final PrintStream terminal = new PrintStream(written, true, StandardCharsets.UTF_8);

    /** Any number: {@link System#nanoTime} may be negative and run over. */
    private long now = Long.MAX_VALUE - 500 * MS;

    private final ProgressBar bar = new ProgressBar(terminal, "frame", () -> now);

    /** 640 of 1920 in 0.8 s: a third of 30 cells is 10, 800 frames per second, 1280 frames take 1.6 s more. */
    @Test
    void showsShareRateAndTimeLeft() {
        assertThat(ProgressBar.line(640, 1920, "frame", 0.8))
                .isEqualTo("[##########                    ] 640/1920 frames, 800 frames/s, 1.6 s left");
    }

    @Test
    void isFullAtTheEnd() {
        assertThat(ProgressBar.line(86_400_000, 86_400_000, "frame", 3600))
                .isEqualTo("[" + "#".repeat(30) + "] 86400000/86400000 frames, 24000 frames/s, 0.0 s left");
    }

    @Test
    void aShortRunShowsNothing() {
        now += 399 * MS;
        bar.at(1920, 1920);
        bar.close();
        assertThat(screen()).isEmpty();
        assertThat(written.size()).isZero();
    }

    @Test
    void isRedrawnTenTimesASecond() {
        now += 400 * MS;
        bar.at(100, 1000);
        assertThat(screen()).isEqualTo(ProgressBar.line(100, 1000, "frame", 0.4));
        now += 99 * MS;
        bar.at(200, 1000);
        assertThat(screen()).isEqualTo(ProgressBar.line(100, 1000, "frame", 0.4));
        now += 1 * MS;
        bar.at(300, 1000);
        assertThat(screen()).isEqualTo(ProgressBar.line(300, 1000, "frame", 0.5));
    }

    @Test
    void leavesNothingBehind() {
        now += 70_000 * MS;
        bar.at(1, 1000);
        now += 100_000 * MS;
        bar.at(1000, 1000);
        assertThat(screen()).isEqualTo(ProgressBar.line(1000, 1000, "frame", 170));
        bar.close();
        assertThat(screen()).isEmpty();
        assertThat(written.toString(StandardCharsets.UTF_8)).endsWith("\r");
    }

    /** A run that is stopped closes the bar while frames still come. */
    @Test
    void staysAwayOnceItIsClosed() {
        now += 1000 * MS;
        bar.at(1, 1000);
        bar.close();
        now += 1000 * MS;
        bar.at(2, 1000);
        bar.close();
        assertThat(screen()).isEmpty();
    }

    /** What a program that works for days would pile up: the JVM keeps what is to be done when it stops. */
    @Test
    @Timeout(60)
    void isForgottenWhenItsWorkIsDone() throws Exception {
        TerminalTraits live = new TerminalTraits(true, true, true);
        Streams streams = new Streams(terminal, StandardCharsets.UTF_8, terminal, live);
        List<WeakReference<Progress>> bars = new ArrayList<>();
        ProgressBar.during(streams, progress -> bars.add(new WeakReference<>(progress)));
        assertThatThrownBy(() -> ProgressBar.during(streams, progress -> {
                    bars.add(new WeakReference<>(progress));
                    throw new IOException("full");
                }))
                .hasMessage("full");
        assertThat(bars).hasSize(2);
        while (bars.stream().anyMatch(bar -> bar.get() != null)) {
            System.gc();
            Thread.sleep(1);
        }
    }

    /**
     * What a terminal shows of the line: a carriage return goes back to its start, letters overwrite what stands there.
     */
    private String screen() {
        StringBuilder line = new StringBuilder();
        int column = 0;
        for (char c : written.toString(StandardCharsets.UTF_8).toCharArray()) {
            if (c == '\r') {
                column = 0;
            } else {
                line.setLength(Math.max(line.length(), column + 1));
                line.setCharAt(column++, c);
            }
        }
        return line.toString().stripTrailing();
    }
}
