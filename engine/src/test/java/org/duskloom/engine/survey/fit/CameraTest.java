package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.Pinhole;
import org.duskloom.engine.map.Positions;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the test camera, which counts in other numbers: eye, focal length and k1. */
class CameraTest {
    private static final Positions GARDEN = Displays.garden().map().stage();

    private static Pinhole pinhole(double aside, double k1) {
        return Evening.usual(GARDEN, 1)
                .aside(aside)
                .lens(k1)
                .roll(2)
                .near(16)
                .camera()
                .pinhole();
    }

    private static Positions seen(Pinhole pinhole) {
        double[][] at = IntStream.range(0, GARDEN.size())
                .mapToObj(i -> pinhole.place(GARDEN.x(i), GARDEN.y(i), GARDEN.z(i)))
                .toArray(double[][]::new);
        double[] x = Arrays.stream(at).mapToDouble(place -> place[0]).toArray();
        double[] y = Arrays.stream(at).mapToDouble(place -> place[1]).toArray();
        return new Positions(x, y, new double[x.length]);
    }

    private static CameraSearch.Found found(Positions picture) {
        int[] all = IntStream.range(0, GARDEN.size()).toArray();
        int[] propOf = IntStream.of(all)
                .map(pixel -> Displays.garden().map().propIndexOf(pixel))
                .toArray();
        int[] sample = IntStream.of(all).filter(pixel -> pixel % 4 == 0).toArray();
        return CameraSearch.of(GARDEN, picture, propOf, sample, 0.1);
    }

    /** Exact places leave nothing over, and give the very camera back. */
    @ParameterizedTest
    @CsvSource({"0, 0", "25, -0.05", "-50, 0.03"})
    void isFoundFromExactPlaces(double aside, double k1) {
        Pinhole pinhole = pinhole(aside, k1);
        CameraSearch.Found found = found(seen(pinhole));
        Camera camera = found.camera();
        assertThat(found.agreeing()).hasSize(GARDEN.size());
        assertThat(found.sigma()).isLessThan(0.01);
        assertThat(camera.focalLength()).isCloseTo(pinhole.focal(), within(0.001 * pinhole.focal()));
        assertThat(camera.k1()).isCloseTo(k1, within(0.001));
        double[] eye = pinhole.eye();
        Vector3d toward = camera.towardEye(new Vector3d(GARDEN.x(7), GARDEN.y(7), GARDEN.z(7)));
        Vector3d truly = new Vector3d(eye[0] - GARDEN.x(7), eye[1] - GARDEN.y(7), eye[2] - GARDEN.z(7));
        assertThat(toward.dot(truly.div(truly.length()))).isCloseTo(1, within(1e-6));
        double[] at = new double[2];
        camera.see(1200, 900, 700, at);
        assertThat(at).containsExactly(pinhole.place(1200, 900, 700), within(0.05));
    }

    /** What is seen of a plane lies in the plane, where it is seen. */
    @Test
    void goesBackAlongTheRay() {
        Camera camera = found(seen(pinhole(25, -0.05))).camera();
        double[] at = new double[2];
        camera.see(-2000, 1500, 600, at);
        Vector3d tilted = new Vector3d(0, 0.6, 0.8);
        Vector3d place = camera.onPlane(at[0], at[1], tilted, new Vector3d(-100, 1500 - 80, 600 + 60));
        assertThat(place.x).isCloseTo(-2000, within(1e-3));
        assertThat(place.y).isCloseTo(1500, within(1e-3));
        assertThat(place.z).isCloseTo(600, within(1e-3));
    }

    /** Along parallel rays, as from very far away, it is the plain picture. */
    @Test
    void seesAlongParallelRaysToo() {
        Camera.Frame unit = new Camera.Frame(0, 0, 0, 1);
        double[] front = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        Camera camera = Camera.of(unit, unit, front, 0.5, 0, 2, 0);
        double[] at = new double[2];
        camera.see(1, 3, 77, at);
        assertThat(at).containsExactly(3, -6);
        assertThat(camera.onPlane(3, -6, new Vector3d(0, 0, 1), new Vector3d(0, 0, 5)))
                .isEqualTo(new Vector3d(1, 3, 5));
        assertThat(camera.distance()).isInfinite();
        assertThat(camera.unitsPerPictureUnit()).isEqualTo(0.5);
    }

    @Test
    void seesNothingBehindIt() {
        Camera.Frame unit = new Camera.Frame(0, 0, 0, 1);
        Camera camera = Camera.of(unit, unit, new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1}, 0, 0, 1, 0.5);
        double[] at = new double[2];
        camera.see(0, 0, 1.9, at);
        assertThat(at).containsExactly(0, 0);
        camera.see(0, 0, 2.1, at);
        assertThat(at).containsExactly(Double.NaN, Double.NaN);
    }
}
