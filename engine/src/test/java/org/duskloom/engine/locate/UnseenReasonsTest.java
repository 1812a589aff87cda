package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.duskloom.engine.locate.Unseen.Reason;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

/** A wire of twelve pixels in two props, ten dots from each to the next, in a picture 120 dots wide. */
class UnseenReasonsTest {
    private static final int PIXELS = 12;
    private static final PictureSize SIZE = new PictureSize(120, 20);
    private static final PixelMap MAP = new PixelMap(
            List.of(prop("bean", 0, 8), prop("pea", 8, 4)),
            new Positions(new double[PIXELS], new double[PIXELS], new double[PIXELS]),
            new Positions(new double[PIXELS], new double[PIXELS], new double[PIXELS]));

    private static Prop prop(String name, int first, int count) {
        return new Prop(name, first, count, List.of(), Location.ofFile("test"));
    }

    /** A light in the picture at each of these places. */
    private static Reference lights(int... columns) {
        Plane lit = new Plane(SIZE);
        for (int column : columns) {
            lit.codes[10 * SIZE.width() + column] = (byte) 230;
        }
        return Reference.of(SIZE, new Plane(SIZE), lit, PIXELS);
    }

    /** What is said of a pixel if these are missing, the first being at so many dots from the left. */
    private static Unseen of(int pixel, double first, Set<Integer> missing, Reference reference) {
        List<Blob> blobs = new ArrayList<>();
        IntStream.range(0, PIXELS)
                .filter(seen -> !missing.contains(seen))
                .forEach(seen -> blobs.add(BlobsTest.blob(seen, first + 10 * seen, 10, 8)));
        return new UnseenReasons(Candidates.of(blobs, PIXELS), MAP, List.of(reference)).of(pixel);
    }

    @Test
    void isDarkWhereNothingIsSeenAtItsPlace() {
        assertThat(of(4, 5, Set.of(4), lights(5, 15))).isEqualTo(new Unseen(4, Reason.DARK, -1));
    }

    @Test
    void isUnsureWhereThereIsALight() {
        assertThat(of(4, 5, Set.of(4), lights(5, 45))).isEqualTo(new Unseen(4, Reason.UNSURE, -1));
        assertThat(of(4, 5, Set.of(4), lights(5, 46)).reason())
                .as("a dot aside")
                .isEqualTo(Reason.UNSURE);
        assertThat(of(4, 5, Set.of(4), lights(5, 48)).reason())
                .as("three aside")
                .isEqualTo(Reason.DARK);
    }

    /** Half-way between its neighbours, or straight on from two. */
    @Test
    void goesStraightOnAtTheEnds() {
        assertThat(of(0, 5, Set.of(0), lights(5, 45)).reason()).isEqualTo(Reason.UNSURE);
        assertThat(of(5, 5, Set.of(4, 5), lights(5, 55)).reason()).isEqualTo(Reason.UNSURE);
        assertThat(of(4, 5, Set.of(4, 5), lights(5, 55)).reason()).isEqualTo(Reason.DARK);
    }

    @Test
    void isOutsideWhereThePictureEnds() {
        assertThat(of(0, -15, Set.of(0), lights(45))).isEqualTo(new Unseen(0, Reason.OUTSIDE, -1));
        assertThat(of(11, 20, Set.of(11), lights(45)).reason()).isEqualTo(Reason.OUTSIDE);
        assertThat(of(11, 9, Set.of(11), lights(45)).reason()).isEqualTo(Reason.DARK);
    }

    /** Where a wire turns back, a missing pixel may be on another one; nearer than three dots they are one spot. */
    @Test
    void isMeltedIntoALightThatIsThere() {
        List<Blob> blobs = new ArrayList<>();
        double[] xs = {0, 10, Double.NaN, 30, 22, 60, 70, 80};
        for (int pixel = 0; pixel < xs.length; pixel++) {
            if (!Double.isNaN(xs[pixel])) {
                blobs.add(BlobsTest.blob(pixel, xs[pixel], 10, 8));
            }
        }
        UnseenReasons reasons = new UnseenReasons(Candidates.of(blobs, PIXELS), MAP, List.of(lights(20)));
        assertThat(reasons.of(2)).isEqualTo(new Unseen(2, Reason.MELTED, 4));
    }

    @Test
    void isMirroredWhereWhatWasSeenIsRefused() {
        List<Blob> blobs = new ArrayList<>();
        IntStream.range(0, PIXELS).forEach(pixel -> blobs.add(BlobsTest.blob(pixel, 10 * pixel, 10, 8)));
        Candidates candidates = Candidates.of(blobs, PIXELS);
        candidates.refuse(3);
        assertThat(new UnseenReasons(candidates, MAP, List.of(lights(30))).of(3))
                .isEqualTo(new Unseen(3, Reason.MIRRORED, -1));
    }

    /** From one prop to the next the wire goes anywhere, and over more than four pixels as well. */
    @Test
    void doesNotGuessAcrossPropsOrFar() {
        assertThat(of(8, 5, Set.of(8, 9, 10, 11), lights(85)).reason())
                .as("only the other prop is seen")
                .isEqualTo(Reason.DARK);
        assertThat(of(7, 5, Set.of(2, 3, 4, 5, 6, 7), lights(75)).reason()).isEqualTo(Reason.DARK);
        assertThat(of(7, 5, Set.of(4, 5, 6, 7), lights(75)).reason()).isEqualTo(Reason.UNSURE);
    }
}
