package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnmixerTest {
    private static final PictureSize SIZE = new PictureSize(170, 90);
    private static final double BLUR = 1.5;

    /** Round spots, without noise. */
    private record Spots(FindRun run, double[][] places, double[] light) implements Pictures {
        @Override
        public int count() {
            return run.pictures().size();
        }

        @Override
        public String name(int picture) {
            return "picture " + picture;
        }

        @Override
        public PictureSize size(int picture) {
            return SIZE;
        }

        /** In codes of IEC 61966-2-1. */
        @Override
        public void read(int picture, byte[] codes) {
            for (int dot = 0; dot < codes.length; dot++) {
                double sum = 0.001;
                for (int pixel = 0; pixel < places.length; pixel++) {
                    double dx = dot % SIZE.width() - places[pixel][0];
                    double dy = dot / SIZE.width() - places[pixel][1];
                    boolean lit = run.isLit(run.pictures().get(picture), pixel);
                    sum += lit ? light[pixel] * Math.exp(-(dx * dx + dy * dy) / (2 * BLUR * BLUR)) : 0;
                }
                double code = sum <= 0.0031308 ? 12.92 * sum : 1.055 * Math.pow(sum, 1 / 2.4) - 0.055;
                codes[dot] = (byte) Math.round(255 * Math.min(1, code));
            }
        }
    }

    private static List<Blob> found(double[][] places, double[] light, boolean refined) throws IOException {
        FindRun run = new FindRun(places.length, 1);
        Spots spots = new Spots(run, places, light);
        Plane dark = new Plane(SIZE);
        Plane plane = new Plane(SIZE);
        spots.read(0, dark.codes);
        spots.read(1, plane.codes);
        Reference reference = Reference.of(SIZE, dark, plane, places.length);
        List<int[]> shown = IntStream.range(2, spots.count())
                .mapToObj(picture -> new int[] {picture})
                .toList();
        Readings readings;
        try {
            readings = Readings.read(reference, shown, spots, plane);
        } catch (PicturesRefusedException never) {
            throw new AssertionError(never);
        }
        FindCode code = run.code();
        List<Blob> blobs = BlobFinder.read(readings, code, 0, 1).blobs();
        if (refined) {
            Unmixer.refine(readings, code, blobs);
        }
        return blobs.stream()
                .sorted((a, b) -> Integer.compare(a.pixel, b.pixel))
                .toList();
    }

    /** Sixteen lights here and there, by which pictures are laid on each other; three of them touch. */
    private static double[][] places(double apart) {
        double[][] places = new double[16][];
        for (int pixel = 0; pixel < places.length; pixel++) {
            places[pixel] =
                    new double[] {12 + 37 * (pixel % 5) + 0.3 * pixel, 12 + 21 * (pixel / 5) + 1.7 * (pixel % 3)};
        }
        places[6] = new double[] {places[5][0] + apart, places[5][1] + 0.4};
        places[7] = new double[] {places[5][0] + 2 * apart, places[5][1] - 1};
        return places;
    }

    private static double[] light() {
        return IntStream.range(0, 16)
                .mapToDouble(pixel -> 0.3 + 0.1 * (pixel % 3))
                .toArray();
    }

    /** The spots of lights that touch run into each other, until their light is told apart. */
    @ParameterizedTest
    @CsvSource({"3.2", "4", "6"})
    void placesOfLightsThatTouchAreTheirOwn(double apart) throws IOException {
        double[][] places = places(apart);
        List<Blob> blobs = found(places, light(), true);
        assertThat(blobs)
                .extracting(blob -> blob.pixel)
                .containsExactlyElementsOf(IntStream.range(0, 16).boxed().toList());
        for (int pixel = 0; pixel < 16; pixel++) {
            assertThat(blobs.get(pixel).x).as("%s", pixel).isCloseTo(places[pixel][0], within(0.15));
            assertThat(blobs.get(pixel).y).as("%s", pixel).isCloseTo(places[pixel][1], within(0.15));
            double all = light()[pixel] * 2 * Math.PI * BLUR * BLUR;
            // The rim of a spot, below a fifth of its middle, holds a fifth of a Gaussian's light and is not counted.
            assertThat(blobs.get(pixel).flux / all).as("%s", pixel).isBetween(0.65, 1.0);
        }
    }

    /** As a spot of what says a number alone, those beside another one are farther off. */
    @Test
    void withoutItLightsSeemFartherApart() throws IOException {
        double[][] places = places(3.2);
        List<Blob> raw = found(places, light(), false);
        List<Blob> refined = found(places, light(), true);
        assertThat(raw.get(7).x - raw.get(5).x).isGreaterThan(refined.get(7).x - refined.get(5).x);
    }

    @Test
    void nothingIsMovedWhereNothingIsFound() throws IOException {
        assertThat(found(places(4), new double[16], true)).isEmpty();
    }
}
