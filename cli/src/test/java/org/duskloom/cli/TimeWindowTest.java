package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Timeline;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The show lasts two seconds at 40 frames per second: a frame every 25 ms. */
class TimeWindowTest {
    @TempDir
    private Path folder;

    private Timeline timeline;

    @BeforeEach
    void read() throws Exception {
        Optional<LoadedShow> loaded = LoadedShow.load(Garden.in(folder), new Problems());
        timeline = loaded.orElseThrow().show().timeline();
    }

    @ParameterizedTest
    @CsvSource({
        ", , 0, 80",
        "1s, , 40, 80",
        ", 1s, 0, 40",
        "500ms, 1s, 20, 40",
        "0:01, 0:01.5, 40, 60",
        "7f, 9f, 7, 9",
        "1ms, 26ms, 1, 2",
        "0s, 2s, 0, 80",
        "1.999s, 80f, 80, 80"
    })
    void holdsTheFramesInIt(String from, String to, long first, long end) throws TextFormatException {
        if (first == end) {
            assertThatThrownBy(() -> TimeWindow.frames(timeline, from, to)).hasMessageStartingWith("no frame lies");
        } else {
            assertThat(TimeWindow.frames(timeline, from, to)).isEqualTo(new FrameSpan(first, end));
        }
    }

    @Test
    void refusesTimesThatAreNone() {
        assertThatThrownBy(() -> TimeWindow.frames(timeline, null, "later"))
                .isInstanceOf(TextFormatException.class)
                .hasMessageStartingWith("--to: the time \"later\"");
        assertThatThrownBy(() -> TimeWindow.frames(timeline, "-1s", null))
                .hasMessageStartingWith("--from: the time \"-1s\" is negative");
        assertThatThrownBy(() -> TimeWindow.frames(timeline, null, "2001ms"))
                .hasMessage("--to 2001ms lies beyond the show");
        assertThatThrownBy(() -> TimeWindow.frames(timeline, "1s", "500ms"))
                .hasMessage("no frame lies between 1s and 0.5s");
    }
}
