package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

class PropCheckTest {
    private static final int PIXELS = 12;

    /** On a line, one unit apart, and seen ten dots apart. */
    private static Candidates checked(double unit, int strayed) {
        List<Blob> blobs = IntStream.range(0, PIXELS)
                .mapToObj(pixel -> {
                    Blob blob = new Blob(pixel);
                    blob.x = 10 * pixel;
                    blob.y = pixel == strayed ? 300 : 0;
                    blob.flux = 1;
                    blob.sure = 1;
                    return blob;
                })
                .toList();
        double[] x =
                IntStream.range(0, PIXELS).mapToDouble(pixel -> unit * pixel).toArray();
        Positions own = new Positions(x, new double[PIXELS], new double[PIXELS]);
        Prop prop = new Prop("fence", 0, PIXELS, List.of(), Location.ofFile("test"));
        Candidates candidates = Candidates.of(blobs, PIXELS);
        PropCheck.check(candidates, new PixelMap(List.of(prop), own, own));
        return candidates;
    }

    @Test
    void refusesWhatStandsOffItsProp() {
        Candidates candidates = checked(1, 5);
        assertThat(IntStream.range(0, PIXELS).filter(pixel -> !candidates.has(pixel)))
                .containsExactly(5);
    }

    /** Such a display is read, with a warning. */
    @Test
    void refusesNothingOfAPropThatIsAllAtOnePlace() {
        Candidates candidates = checked(0, 5);
        assertThat(IntStream.range(0, PIXELS)).allMatch(candidates::has);
    }
}
