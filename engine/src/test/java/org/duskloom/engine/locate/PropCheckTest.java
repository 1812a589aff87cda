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

    /** A ring of 24, one unit from each to the next, ten dots seen, as an oval from aside. */
    private static Candidates ring(double[][] moved) {
        int count = 24;
        double radius = count / (2 * Math.PI);
        double[] x = new double[count];
        double[] y = new double[count];
        List<Blob> blobs = IntStream.range(0, count)
                .mapToObj(pixel -> {
                    x[pixel] = radius * Math.cos(2 * Math.PI * pixel / count);
                    y[pixel] = radius * Math.sin(2 * Math.PI * pixel / count);
                    Blob blob = new Blob(pixel);
                    blob.x = 200 + 7 * x[pixel] + moved[pixel][0];
                    blob.y = 150 - 10 * y[pixel] + 2 * x[pixel] + moved[pixel][1];
                    blob.flux = 1;
                    blob.sure = 1;
                    return blob;
                })
                .toList();
        Positions own = new Positions(x, y, new double[count]);
        Prop prop = new Prop("daisy", 0, count, List.of(), Location.ofFile("test"));
        Candidates candidates = Candidates.of(blobs, count);
        PropCheck.check(candidates, new PixelMap(List.of(prop), own, own));
        return candidates;
    }

    private static IntStream refused(Candidates candidates) {
        return IntStream.range(0, candidates.pixels()).filter(pixel -> !candidates.has(pixel));
    }

    /** The reflection of a hidden light, in the middle of its own ring: no farther than three steps from many of it. */
    @Test
    void refusesWhatIsInsideItsRing() {
        double[][] moved = new double[24][2];
        moved[6] = new double[] {0, 30};
        assertThat(refused(ring(moved))).containsExactly(6);
    }

    /** What hangs otherwise than described is for the survey to say. */
    @Test
    void refusesNoBentPart() {
        double[][] moved = new double[24][2];
        for (int pixel = 3; pixel < 10; pixel++) {
            moved[pixel] = new double[] {25, 40};
        }
        assertThat(refused(ring(moved))).doesNotContain(4, 5, 6, 7, 8);
        assertThat(refused(ring(new double[24][2]))).isEmpty();
    }

    @Test
    void refusesNeitherOfTwoThatChangedPlaces() {
        double[][] moved = new double[24][2];
        double radius = 24 / (2 * Math.PI);
        double dx = radius * (Math.cos(2 * Math.PI / 24) - 1);
        double dy = radius * Math.sin(2 * Math.PI / 24);
        moved[0] = new double[] {7 * dx, -10 * dy + 2 * dx};
        moved[1] = new double[] {-7 * dx, 10 * dy - 2 * dx};
        assertThat(refused(ring(moved))).isEmpty();
    }
}
