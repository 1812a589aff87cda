package org.duskloom.engine.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.duskloom.engine.map.Positions;
import org.junit.jupiter.api.Test;

/** The camera that other tests believe. */
class TestCameraTest {
    private static final Lighting ALL_LIT = (step, pixel) -> 1;

    /** Nine lights, 100 apart, the middle one at the zero point. */
    private static Positions nine() {
        double[] x = IntStream.range(0, 9).mapToDouble(i -> 100 * (i % 3) - 100).toArray();
        double[] y = IntStream.range(0, 9).mapToDouble(i -> 100 * (i / 3) - 100).toArray();
        return new Positions(x, y, new double[9]);
    }

    /** By similar triangles: 1,000 away with a focal length of 500, 100 units are 50 picture pixels. */
    @Test
    void seesAlongStraightRays() {
        double[] eye = {0, 0, 1000};
        double[] origin = {0, 0, 0};
        Pinhole straight = Pinhole.looking(eye, origin, 0, 500, 0, 1001, 801);
        assertThat(straight.place(100, 50, 0)).containsExactly(new double[] {550, 375}, within(1e-9));
        assertThat(straight.place(100, 50, 500)).containsExactly(new double[] {600, 350}, within(1e-9));
        assertThat(straight.place(100, 50, 2000)).contains(Double.NaN);
        Pinhole bent = Pinhole.looking(eye, origin, 0, 500, -0.1, 1001, 801);
        assertThat(bent.place(300, 400, 0))
                .containsExactly(new double[] {500 + 150 * 0.975, 400 - 200 * 0.975}, within(1e-9));
        // Held a quarter turn to the left, what is above is seen on the right.
        Pinhole askew = Pinhole.looking(eye, origin, 90, 500, 0, 1001, 801);
        assertThat(askew.place(0, 100, 0)).containsExactly(new double[] {550, 400}, within(1e-9));
        // From the right of the display, what is at its right is nearer and seems larger.
        Pinhole aside = Pinhole.looking(new double[] {1000, 0, 0}, origin, 0, 500, 0, 1001, 801);
        assertThat(aside.place(500, 100, 0)).containsExactly(new double[] {500, 300}, within(1e-9));
        assertThat(aside.place(0, 0, 100)).containsExactly(new double[] {450, 400}, within(1e-9));
    }

    /** The middle of each spot's light, less what noise and the glow of others leave. */
    @Test
    void drawsLightsWhereTheyAre() {
        TestCamera camera = new Evening(nine(), 4)
                .aside(25)
                .near(40)
                .lens(-0.05)
                .roll(3)
                .noise(0)
                .bloom(0)
                .camera();
        BufferedImage picture = camera.picture(ALL_LIT, Exposure.of(0), 3);
        for (int pixel = 0; pixel < 9; pixel++) {
            double[] at = camera.place(pixel, 3);
            assertThat(centre(picture, at, 9)).containsExactly(at, within(0.05));
        }
        assertThat(camera.near()).isCloseTo(40, within(1e-9));
    }

    @Test
    void dependsOnTheSeedAndTheNumberAlone() {
        Evening evening = Evening.usual(nine(), 4).near(30);
        BufferedImage picture = evening.camera().picture(ALL_LIT, Exposure.of(0), 2);
        assertThat(rgb(evening.camera().picture(ALL_LIT, Exposure.of(0), 2))).isEqualTo(rgb(picture));
        TestCamera same = evening.camera();
        assertThat(rgb(same.picture(ALL_LIT, Exposure.of(0), 3))).isNotEqualTo(rgb(picture));
        assertThat(rgb(same.picture(ALL_LIT, Exposure.of(0), 2))).isEqualTo(rgb(picture));
    }

    @Test
    void noiseIsAsStrongAsAsked() {
        TestCamera camera = new Evening(nine(), 4).near(40).noise(3).camera();
        BufferedImage dark = camera.picture((step, pixel) -> 0, Exposure.of(0), 0);
        double[] green =
                IntStream.of(rgb(dark)).mapToDouble(code -> code >> 8 & 255).toArray();
        double mean = IntStream.range(0, green.length)
                .mapToDouble(i -> green[i])
                .average()
                .orElseThrow();
        double square = IntStream.range(0, green.length)
                .mapToDouble(i -> (green[i] - mean) * (green[i] - mean))
                .average()
                .orElseThrow();
        // A few are cut off at 0.
        assertThat(Math.sqrt(square)).isCloseTo(3, within(0.15));
    }

    @Test
    void tooMuchLightBurnsOutAndStays() {
        TestCamera camera =
                new Evening(nine(), 4).near(60).peak(10).shake(0).noise(0).camera();
        BufferedImage picture = camera.picture(ALL_LIT, Exposure.of(0), 0);
        double[] at = camera.place(4, 0);
        for (int dx = -2; dx <= 2; dx++) {
            assertThat(picture.getRGB((int) Math.round(at[0]) + dx, (int) Math.round(at[1])))
                    .isEqualTo(0xFFFFFFFF);
        }
    }

    @Test
    void hidesAndKillsLights() {
        TestCamera camera =
                new Evening(nine(), 4).near(40).hide(0).kill(8).windows(0.3).camera();
        assertThat(IntStream.range(0, 9).filter(camera::isVisible)).containsExactly(1, 2, 3, 4, 5, 6, 7);
        assertThat(camera.reflections(8)).isEmpty();
        BufferedImage picture = camera.picture(ALL_LIT, Exposure.of(0), 0);
        assertThat(brightest(picture, camera.place(0, 0))).isLessThan(60);
        assertThat(brightest(picture, camera.place(1, 0))).isGreaterThan(180);
        TestCamera many = new Evening(Displays.garden().map().stage(), 4)
                .near(8)
                .hideShare(0.05)
                .camera();
        assertThat(IntStream.range(0, 1288).filter(many::isVisible).count()).isBetween(1195L, 1250L);
    }

    /** The light that is 1,000 before a window seems to be 1,000 behind it; the ray goes through it at a quarter. */
    @Test
    void windowsShowLightsBehindThem() {
        double[] light = {0, 0, 0};
        double[] eye = {600, 0, 2000};
        Mirror wide = Mirror.window(0, 0, -1000, 400, 400, 0, 0.2);
        assertThat(wide.image(light, eye)).containsExactly(0, 0, -2000);
        assertThat(Mirror.window(0, 0, -1000, 290, 400, 0, 0.2).image(light, eye))
                .isEmpty();
        assertThat(Mirror.window(0, 0, -1000, 310, 400, 0, 0.2).image(light, eye))
                .isNotEmpty();
        assertThat(wide.image(light, new double[] {0, 0, -3000})).isEmpty();
        assertThat(Mirror.wetGround(-50, 0.1).image(light, eye)).containsExactly(0, -100, 0);
        // A window that is turned to the right by 45 degrees shows on the right what is before it.
        double[] turned = Mirror.window(0, 0, 0, 400, 400, 45, 0.2).image(new double[] {0, 0, 100}, eye);
        assertThat(turned).containsExactly(new double[] {-100, 0, 0}, within(1e-9));
    }

    @Test
    void takesPhotosOfStepsAndFilms() {
        Lighting countdown = (step, pixel) -> step == 5 ? 1 : 0;
        assertThat(Exposure.of(5).light(countdown, 0)).isEqualTo(1);
        assertThat(Exposure.late(4, 0.6).light(countdown, 0)).isEqualTo(0.6);
        assertThat(Exposure.photos(34)).hasSize(34);
        List<Exposure> film = Exposure.film(12.5, 0.04, 1, -0.5, 8);
        assertThat(film).hasSize(107);
        assertThat(film.get(0).parts()).containsExactly(new Exposure.Part(-1, 1));
        double light = film.stream()
                .mapToDouble(picture -> picture.light(countdown, 0))
                .sum();
        // 12.5 pictures a second see a second of light, give or take what falls between shutters.
        assertThat(light).isCloseTo(12.5, within(0.6));
        Exposure across = Exposure.film(1, 0.5, 1, 0.8, 1).get(0);
        assertThat(across.parts()).hasSize(2);
        assertThat(across.parts().get(0).share()).isCloseTo(0.4, within(1e-9));
        assertThat(across.parts().get(1).share()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void writesPhotosThatShowTheSame() throws IOException {
        TestCamera camera = Evening.usual(nine(), 4).near(40).camera();
        BufferedImage picture = camera.picture(ALL_LIT, Exposure.of(0), 0);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(PhotoFiles.jpeg(picture, 0.85)));
        assertThat(read.getWidth()).isEqualTo(picture.getWidth());
        double[] at = camera.place(4, 0);
        assertThat(centre(read, at, 9)).containsExactly(centre(picture, at, 9), within(0.1));
    }

    private static int[] rgb(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static int brightest(BufferedImage image, double[] at) {
        int brightest = 0;
        for (int y = (int) at[1] - 3; y <= at[1] + 3; y++) {
            for (int x = (int) at[0] - 3; x <= at[0] + 3; x++) {
                brightest = Math.max(brightest, image.getRGB(x, y) >> 8 & 255);
            }
        }
        return brightest;
    }

    /** The centre of the light above that of the ground, decoded from green. */
    private static double[] centre(BufferedImage image, double[] near, int reach) {
        double[] sum = new double[3];
        for (int y = (int) Math.round(near[1]) - reach; y <= Math.round(near[1]) + reach; y++) {
            for (int x = (int) Math.round(near[0]) - reach; x <= Math.round(near[0]) + reach; x++) {
                double code = (image.getRGB(x, y) >> 8 & 255) / 255.0;
                double linear = code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
                double weight = Math.max(0, linear - 0.01);
                sum[0] += weight;
                sum[1] += weight * x;
                sum[2] += weight * y;
            }
        }
        return new double[] {sum[1] / sum[0], sum[2] / sum[0]};
    }
}
