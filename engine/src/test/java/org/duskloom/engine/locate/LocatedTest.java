package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;

/** What is handed over: whole, and not to be changed from outside. */
class LocatedTest {
    private static final PictureSize SIZE = new PictureSize(40, 30);

    private static LightSpots spots() {
        Plane dark = new Plane(SIZE);
        Plane lit = new Plane(SIZE);
        for (int dot = 0; dot < dark.codes.length; dot++) {
            dark.codes[dot] = 30;
            lit.codes[dot] = (byte) (dot == 15 * 40 + 20 ? 200 : dot == 15 * 40 + 21 ? 10 : 30);
        }
        return new LightSpots(List.of(Reference.of(SIZE, dark, lit, 1)));
    }

    /** 25 dots round the light, with what they have above the dark; darker than dark is no light. */
    @Test
    void spotsAreTheLightAboveTheDark() {
        List<String> seen = new ArrayList<>();
        float above = Plane.light((byte) 200) - Plane.light((byte) 30);
        spots().forEach((x, y, light) -> {
            seen.add(x + "," + y);
            assertThat(light).isEqualTo(x == 20 && y == 15 ? above : 0);
        });
        assertThat(seen).hasSize(25).doesNotHaveDuplicates().startsWith("18,13").endsWith("22,17");
        assertThat(spots().usualPeak()).isEqualTo(above);
    }

    /** In rounds a place may be lit in each of them. */
    @Test
    void spotsOfAllRoundsAreHandedOver() throws Exception {
        DotPictures pictures = new DotPictures(new FindRun(6, 1));
        Reference round = pictures.readings().reference;
        int[] count = new int[1];
        new LightSpots(List.of(round, round)).forEach((x, y, light) -> count[0]++);
        assertThat(count[0]).isEqualTo(2 * round.dots.count());
    }

    @Test
    void keepsListsOfItsOwn() {
        List<Sighting> seen = new ArrayList<>(List.of(new Sighting(0, 1, 2, 1)));
        List<Unseen> unseen = new ArrayList<>(List.of(new Unseen(1, Unseen.Reason.DARK, -1)));
        Located located = new Located(SIZE, 1, seen, unseen, 0, spots());
        seen.clear();
        unseen.clear();
        assertThat(located.seen()).containsExactly(new Sighting(0, 1, 2, 1));
        assertThat(located.unseen()).hasSize(1);
    }

    @Test
    void nothingIsMissing() {
        assertThatNullPointerException()
                .isThrownBy(() -> new Located(null, 1, List.of(), List.of(), 0, spots()))
                .withMessage("size");
        assertThatNullPointerException()
                .isThrownBy(() -> new Located(SIZE, 1, List.of(), List.of(), 0, null))
                .withMessage("spots");
        assertThatNullPointerException()
                .isThrownBy(() -> new Unseen(1, null, -1))
                .withMessage("reason");
        assertThatNullPointerException()
                .isThrownBy(() -> new PicturesRefusedException(null, "is white", ""))
                .withMessage("picture");
        assertThatNullPointerException()
                .isThrownBy(() -> new PicturesRefusedException("", "is white", null))
                .withMessage("hint");
    }

    /** 65,536 x 65,536 dots are more than an int can count, and not none. */
    @Test
    void sizesDoNotOverflow() {
        assertThat(new PictureSize(4000, 3000).dots()).isEqualTo(12_000_000);
        PictureSize vast = new PictureSize(65_536, 65_536);
        assertThatThrownBy(vast::dots).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void refusalsSayWhichWhatAndHow() {
        PicturesRefusedException refused = new PicturesRefusedException("p7", "is white", "wait for the night");
        assertThat(refused).hasMessage("is white");
        assertThat(refused.picture()).isEqualTo("p7");
        assertThat(refused.hint()).isEqualTo("wait for the night");
    }
}
