package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Finding blobs near a place, and which of several is a pixel's. */
class BlobsTest {
    static Blob blob(int pixel, double x, double y, double flux) {
        Blob blob = new Blob(pixel);
        blob.x = x;
        blob.y = y;
        blob.flux = flux;
        return blob;
    }

    @Test
    void isAsFarAsPythagorasSays() {
        assertThat(blob(0, 1, 2, 1).distanceTo(blob(1, 4, 6, 1))).isEqualTo(5);
        assertThat(blob(0, 1, 2, 1).distanceTo(blob(1, 1, 2, 9))).isZero();
    }

    /** Against looking at every blob, also where coordinates are below 0. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 3, 16})
    void findsTheNearestOfAll(double reach) {
        Random random = new Random(3);
        List<Blob> blobs = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            blobs.add(blob(i, random.nextDouble(-20, 40), random.nextDouble(-20, 40), 1));
        }
        BlobGrid grid = new BlobGrid(blobs, reach);
        for (int run = 0; run < 200; run++) {
            Blob place = blob(0, random.nextDouble(-25, 45), random.nextDouble(-25, 45), 1);
            int most = 1 + random.nextInt(12);
            int[] expected = IntStream.range(0, blobs.size())
                    .filter(i -> blobs.get(i).distanceTo(place) <= reach)
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> blobs.get(i).distanceTo(place)))
                    .limit(most)
                    .mapToInt(Integer::intValue)
                    .toArray();
            assertThat(grid.nearest(place.x, place.y, most)).containsExactly(expected);
        }
    }

    @Test
    void findsNothingWhereNothingIs() {
        assertThat(new BlobGrid(List.of(), 3).nearest(0, 0, 8)).isEmpty();
        assertThat(new BlobGrid(List.of(blob(0, 5, 0, 1)), 4.9).nearest(0, 0, 8))
                .isEmpty();
        assertThat(new BlobGrid(List.of(blob(0, 5, 0, 1)), 5).nearest(0, 0, 8)).containsExactly(0);
    }

    /** Ten dots from each pixel of the wire to the next; pixel 2 is seen twice. */
    private static Candidates wire(double x, double flux, double otherX, double otherFlux) {
        return Candidates.of(
                List.of(
                        blob(0, 0, 0, 8),
                        blob(1, 10, 0, 8),
                        blob(2, x, 0, flux),
                        blob(2, otherX, 0, otherFlux),
                        blob(3, 30, 0, 8)),
                5);
    }

    /** From 0.6 of the brightest on, how bright it is says nothing. */
    @ParameterizedTest
    @CsvSource({
        "20, 10, 70, 5.9, 20",
        "70, 10, 20, 5.9, 70",
        "20, 10, 70, 6.1, 20",
        "70, 10, 20, 6.1, 20",
        "70, 6.1, 20, 10, 20",
        "20, 6.1, 70, 10, 20"
    })
    void takesTheBrighterOneAndOfEqualsTheOneOnTheWire(
            double x, double flux, double otherX, double otherFlux, double chosen) {
        Candidates candidates = wire(x, flux, otherX, otherFlux);
        assertThat(candidates.of(2).x).isEqualTo(chosen);
        assertThat(candidates.isRefused(2)).isFalse();
    }

    /** At 20 it is 10 from its neighbours, at -18 it is 18 from the first; three times as far would be needed. */
    @Test
    void refusesBothWhereNeitherIsMuchNearer() {
        Candidates candidates = wire(20, 10, -18, 9);
        assertThat(candidates.has(2)).isFalse();
        assertThat(candidates.isRefused(2)).isTrue();
    }

    @Test
    void refusesBothWhereNoNeighbourIsKnown() {
        Candidates alone = Candidates.of(List.of(blob(0, 0, 0, 5), blob(0, 90, 0, 5)), 1);
        assertThat(alone.has(0)).isFalse();
        assertThat(alone.isRefused(0)).isTrue();
    }

    @Test
    void knowsWhichPixelsWereSeen() {
        Candidates candidates = wire(20, 10, 70, 1);
        assertThat(candidates.pixels()).isEqualTo(5);
        assertThat(candidates.has(4)).isFalse();
        assertThat(candidates.isRefused(4)).as("nothing was seen of it").isFalse();
        assertThat(candidates.of(4)).isNull();
        assertThat(candidates.next(4, -1)).isEqualTo(3);
        assertThat(candidates.next(4, 1)).isEqualTo(-1);
        assertThat(candidates.next(0, -1)).isEqualTo(-1);
        candidates.refuse(2);
        assertThat(candidates.next(1, 1)).as("what was refused is no neighbour").isEqualTo(3);
        assertThat(candidates.of(2)).isNull();
        assertThat(candidates.isRefused(2)).isTrue();
    }
}
