package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

class WireCheckTest {
    private static final int PIXELS = 20;

    /** Two props of ten pixels on one wire, ten dots from each to the next, all as bright. */
    private static Candidates checked(Consumer<List<Blob>> change) {
        List<Blob> blobs = IntStream.range(0, PIXELS)
                .mapToObj(pixel -> {
                    Blob blob = new Blob(pixel);
                    blob.x = 10 * pixel;
                    blob.flux = 8;
                    return blob;
                })
                .toList();
        change.accept(blobs);
        Candidates candidates = Candidates.of(blobs, PIXELS);
        Positions none = new Positions(new double[PIXELS], new double[PIXELS], new double[PIXELS]);
        List<Prop> props = List.of(
                new Prop("rose", 0, 10, List.of(), Location.ofFile("test")),
                new Prop("lily", 10, 10, List.of(), Location.ofFile("test")));
        WireCheck.check(candidates, new PixelMap(props, none, none));
        return candidates;
    }

    private static int[] refused(Consumer<List<Blob>> change) {
        Candidates candidates = checked(change);
        return IntStream.range(0, PIXELS).filter(candidates::isRefused).toArray();
    }

    @Test
    void takesWhatRunsOn() {
        assertThat(refused(blobs -> {})).isEmpty();
        // Lights differ; a turn of the wire is not off its run.
        assertThat(refused(blobs -> {
                    blobs.get(3).flux = 4;
                    blobs.get(7).flux = 20;
                    blobs.get(4).y = 20;
                }))
                .isEmpty();
    }

    /** Windows and water give back less than half of the light. */
    @Test
    void refusesWhatIsMuchFainterThanItsNeighbours() {
        assertThat(refused(blobs -> {
                    blobs.get(0).flux = 2;
                    blobs.get(5).flux = 3;
                    blobs.get(6).flux = 3;
                }))
                .containsExactly(0, 5, 6);
    }

    @Test
    void aPropMayBeFainterThanAnother() {
        assertThat(refused(blobs -> blobs.subList(10, 20).forEach(blob -> blob.flux = 2)))
                .isEmpty();
    }

    @Test
    void refusesWhatIsFarOffBothNeighbours() {
        assertThat(refused(blobs -> blobs.get(5).y = 100)).containsExactly(5);
        // From one prop to the next the wire may be as long as it likes.
        assertThat(refused(blobs -> blobs.subList(10, 20).forEach(blob -> blob.y = 500)))
                .isEmpty();
    }
}
