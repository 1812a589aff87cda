package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.duskloom.engine.render.FrameRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A second looked at closer, of a show at 20 frames a second that is dark, red from frame 20 and white from 40
 * to 59.
 */
class WorstSecondTest {
    private static final FlashPlace FENCE = new FlashPlace(OptionalInt.of(0), OptionalInt.empty());
    private static final FlashPlace POST = new FlashPlace(OptionalInt.of(1), OptionalInt.of(1));

    @TempDir
    private Path folder;

    private PlayingCues playing;
    private FrameRenderer frames;

    @BeforeEach
    void render() throws IOException {
        Reported reported = Reported.of(folder, "");
        playing = reported.report().cues();
        frames = new FrameRenderer(
                playing.plan(), "Fence", FramePixels.of(reported.show().map()));
    }

    @Test
    void namesTheCuesThere() throws IOException {
        assertThat(worst(FENCE, 5, 7, false).cues()).containsExactly("ground: solid");
        assertThat(worst(FENCE, 30, 7, false).cues()).containsExactly("ground: solid", "flood");
        assertThat(worst(POST, 25, 7, false).cues()).containsExactly("flood");
        assertThat(worst(POST, 5, 7, false).cues()).isEmpty();
    }

    /** Beyond the last frame only where the second runs over the joint. */
    @Test
    void goesOverTheJoint() throws IOException {
        assertThat(worst(FENCE, 50, 7, true).moments())
                .extracting(WorstSecond.Moment::frame)
                .contains(60L);
        assertThat(worst(FENCE, 50, 7, false).moments())
                .allSatisfy(moment -> assertThat(moment.frame()).isLessThan(60));
    }

    /** It begins with the first frame and shows where the light turns: at frame 20. */
    @Test
    void drawsItsMoments() throws IOException {
        WorstSecond second = worst(FENCE, 15, 7, false);

        assertThat(second.moments())
                .extracting(WorstSecond.Moment::frame)
                .startsWith(15L)
                .contains(20L);
        for (WorstSecond.Moment moment : second.moments()) {
            assertThat(ImageIO.read(new ByteArrayInputStream(moment.png())).getWidth())
                    .isGreaterThan(200);
        }
    }

    @Test
    void slowsNothingThatPasses() throws IOException {
        assertThat(worst(FENCE, 30, 6, false).slowDowns()).isEmpty();
        assertThat(worst(FENCE, 30, 7, false).slowDowns())
                .extracting(SlowDown::cue)
                .containsExactly("ground: solid", "flood");
    }

    private WorstSecond worst(FlashPlace place, long first, int most, boolean overJoint) throws IOException {
        return WorstSecond.of(
                new FlashCount(FlashRule.GENERAL, most, place, first, overJoint, most, 1, 0), frames, playing);
    }
}
