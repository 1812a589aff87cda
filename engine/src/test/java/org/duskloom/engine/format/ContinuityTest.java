package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;

/** Files without frame numbers: of frames 10 to 13, two pixels each, all have to come, each in its turn. */
class ContinuityTest {
    private static final RunInfo SHOW = RunInfo.ofWhole("garden", FrameRate.of(40), 100, FramePixels.unnamed(2));

    private final Continuity frames = new Continuity(SHOW.only(FrameList.of(new FrameSpan(10, 14))));

    @Test
    void takesFramesInTurn() {
        assertThatCode(() -> {
                    for (int frame = 10; frame < 14; frame++) {
                        frames.check(batch(frame, 2));
                    }
                    frames.checkComplete();
                })
                .doesNotThrowAnyException();
    }

    @Test
    void refusesAFrameThatIsNotTheNext() {
        assertThatThrownBy(() -> frames.check(batch(11, 2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("frame 11 of 6 bytes, expected 10 of 6");
        frames.check(batch(10, 2));
        assertThatThrownBy(() -> frames.check(batch(10, 2))).hasMessageContaining("expected 11");
        assertThatThrownBy(() -> frames.check(batch(12, 2))).hasMessageContaining("expected 11");
    }

    /** Three pixels are nine bytes: whatever came after would stand at another place than it is looked for. */
    @Test
    void refusesAFrameOfAnotherSize() {
        assertThatThrownBy(() -> frames.check(batch(10, 3))).hasMessage("frame 10 of 9 bytes, expected 10 of 6");
    }

    @Test
    void refusesToEndEarly() {
        frames.check(batch(10, 2));
        frames.check(batch(11, 2));
        assertThatThrownBy(frames::checkComplete)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("2 frames of 4");
    }

    /** Every second frame would look like a show at twice the speed. */
    @Test
    void refusesToLeaveFramesOut() {
        assertThatThrownBy(() -> new Continuity(SHOW.only(FrameList.of(10, 12, 14))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith("leave frames out");
    }

    private static FrameBatch batch(long frame, int pixels) {
        return FrameBatch.of(frame, new byte[3 * pixels]);
    }
}
