package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.duskloom.engine.find.FindCode;
import org.duskloom.engine.find.FindRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of square lights of 2 by 2 dots on a grid, each dot of which says what is asked of it. */
class WordReaderTest {
    private static final int PIXELS = 12;
    private static final FindRun RUN = new FindRun(PIXELS, 1);
    private static final FindCode CODE = RUN.code();
    private static final PictureSize SIZE = new PictureSize(60, 40);

    /** Where the first dot of a light is. */
    private static int left(int pixel) {
        return 6 + 12 * (pixel % 4) + pixel % 3;
    }

    private static int top(int pixel) {
        return 6 + 12 * (pixel / 4);
    }

    /** Changes what is seen of a light. */
    private interface Fault {
        double light(int picture, int pixel, double light);
    }

    private static Plane picture(int picture, Fault fault) {
        Plane plane = new Plane(SIZE);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            double light = RUN.isLit(RUN.pictures().get(picture), pixel) ? 0.5 : 0;
            byte code = code(fault.light(picture, pixel, light));
            for (int dot = 0; dot < 4; dot++) {
                plane.codes[(top(pixel) + dot / 2) * SIZE.width() + left(pixel) + dot % 2] = code;
            }
        }
        return plane;
    }

    private static byte code(double light) {
        double code = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (byte) Math.round(255 * Math.min(1, code));
    }

    private record Taken(Fault fault) implements Pictures {
        @Override
        public int count() {
            return RUN.pictures().size();
        }

        @Override
        public String name(int picture) {
            return "photo " + picture;
        }

        @Override
        public PictureSize size(int picture) {
            return SIZE;
        }

        @Override
        public void read(int picture, byte[] codes) {
            System.arraycopy(picture(picture, fault).codes, 0, codes, 0, codes.length);
        }
    }

    private static Readings readings(Fault fault) throws Exception {
        Reference reference = Reference.of(SIZE, picture(0, fault), picture(1, fault), PIXELS);
        List<int[]> shown = IntStream.range(2, RUN.pictures().size())
                .mapToObj(picture -> new int[] {picture})
                .toList();
        return Readings.read(reference, shown, new Taken(fault), new Plane(SIZE));
    }

    private static int said(Readings readings, int pixel) {
        return new WordReader(readings, CODE).pixel(readings.reference.dots.at(left(pixel), top(pixel)));
    }

    @Test
    void everyLightSaysItsNumber() throws Exception {
        Readings readings = readings((picture, pixel, light) -> light);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            assertThat(said(readings, pixel)).isEqualTo(pixel);
        }
        assertThat(said(readings, 0)).isZero();
        WordReader words = new WordReader(readings, CODE);
        words.pixel(readings.reference.dots.at(left(5), top(5)));
        assertThat((double) words.usual).isCloseTo(0.5, Offset.offset(0.01));
        assertThat((double) words.sureness).isCloseTo(1, Offset.offset(0.01));
    }

    /** Dots beside a light are kept, too, but there is no light in them. */
    @Test
    void whatIsDarkSaysNothing() throws Exception {
        Readings readings = readings((picture, pixel, light) -> light);
        int beside = readings.reference.dots.at(left(3) - 2, top(3));
        assertThat(beside).isNotNegative();
        assertThat(new WordReader(readings, CODE).pixel(beside)).isEqualTo(-1);
    }

    /**
     * A bit that nobody can read is filled in, two of them too, as words differ in four; with a third nothing is said.
     */
    @ParameterizedTest
    @CsvSource({"1, 5", "2, 5", "3, -1"})
    void fillsInBitsThatAreNotClear(int unclear, int said) throws Exception {
        Readings readings = readings(
                (picture, pixel, light) -> pixel == 5 && picture >= 2 && (picture - 2) / 2 < unclear ? 0.25 : light);
        assertThat(said(readings, 5)).isEqualTo(said);
    }

    /** Clear, but wrong: it might be another light's, and is never taken for a word. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void doesNotPutWrongBitsRight(int bit) throws Exception {
        Readings readings = readings((picture, pixel, light) ->
                pixel == 5 && picture >= 2 && (picture - 2) / 2 == bit ? 0.5 - light : light);
        assertThat(said(readings, 5)).isEqualTo(-1);
        assertThat(said(readings, 6)).isEqualTo(6);
    }

    /** What is bright in every picture, or in both of most pairs, is no light of the run. */
    @Test
    void whatDoesNotTakeTurnsSaysNothing() throws Exception {
        Readings readings = readings((picture, pixel, light) -> pixel == 7 && picture >= 1 ? 0.5 : light);
        assertThat(said(readings, 7)).isEqualTo(-1);
        Readings doubled = readings((picture, pixel, light) -> pixel == 7 && picture >= 2 ? 0.3 + light : light);
        assertThat(said(doubled, 7)).isEqualTo(-1);
    }

    @Test
    void dotsOfOneNumberAreOneBlob() throws Exception {
        List<Blob> blobs = BlobFinder.read(readings((picture, pixel, light) -> light), CODE, 0, 1)
                .blobs();
        assertThat(blobs).hasSize(PIXELS);
        for (Blob blob : blobs) {
            // The middle of two dots beside each other is half-way, and so far from either.
            assertThat(blob.x).isCloseTo(left(blob.pixel) + 0.5, Offset.offset(0.05));
            assertThat(blob.y).isCloseTo(top(blob.pixel) + 0.5, Offset.offset(0.05));
            assertThat(blob.flux).isCloseTo(4 * 0.5, Offset.offset(0.05));
            assertThat(blob.spread).isCloseTo(0.5, Offset.offset(0.05));
            assertThat(blob.burnt).isFalse();
        }
    }

    /** In the second of four rounds only pixels 1, 5 and 9 are asked for. */
    @Test
    void ofARoundOnlyItsOwnPixelsCount() throws Exception {
        assertThat(BlobFinder.read(readings((picture, pixel, light) -> light), CODE, 1, 4)
                        .blobs())
                .extracting(blob -> blob.pixel)
                .containsExactlyInAnyOrder(1, 5, 9);
    }

    @Test
    void saysWhatIsBurntOut() throws Exception {
        BlobFinder finder =
                BlobFinder.read(readings((picture, pixel, light) -> pixel == 2 ? 3 * light : light), CODE, 0, 1);
        assertThat(finder.blobs())
                .filteredOn(blob -> blob.burnt)
                .extracting(blob -> blob.pixel)
                .containsExactly(2);
        assertThat(finder.isBurntTogether()).isFalse();
    }
}
