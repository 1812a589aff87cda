package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntUnaryOperator;
import javax.imageio.ImageIO;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.Exposure;
import org.duskloom.engine.camera.Lighting;
import org.duskloom.engine.camera.PhotoFiles;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the garden to the file: photos of a run, places in them, what hangs wrong, and the map as it was found. */
class PhotoChainTest {
    private static final Path DISPLAY = Project.file("demos/garden/display.json");
    private static final List<String> BRANCH = List.of("daisy-11", "daisy-12", "daisy-13", "daisy-14");

    @TempDir
    private Path folder;

    /** The garden as somebody hung it. */
    private static final class Hung {
        private final PixelMap map = Displays.garden().map();
        private final double[][] places = new double[map.pixelCount()][];

        Hung() {
            for (int pixel = 0; pixel < places.length; pixel++) {
                places[pixel] = new double[] {
                    map.stage().x(pixel), map.stage().y(pixel), map.stage().z(pixel)
                };
            }
        }

        private Prop prop(String name) {
            return map.prop(name).orElseThrow();
        }

        Hung turn(String name, double degrees, double aboutX, double aboutY) {
            double cosine = Math.cos(Math.toRadians(degrees));
            double sine = Math.sin(Math.toRadians(degrees));
            for (int i = 0; i < prop(name).pixelCount(); i++) {
                double[] place = places[prop(name).firstPixel() + i];
                double x = place[0] - aboutX;
                double y = place[1] - aboutY;
                place[0] = aboutX + cosine * x - sine * y;
                place[1] = aboutY + sine * x + cosine * y;
            }
            return this;
        }

        /** Each pixel of one prop changes its place with one of another. */
        Hung swap(String a, String b, IntUnaryOperator partner, int count) {
            for (int i = 0; i < count; i++) {
                int here = prop(a).firstPixel() + i;
                int there = prop(b).firstPixel() + partner.applyAsInt(i);
                double[] kept = places[here];
                places[here] = places[there];
                places[there] = kept;
            }
            return this;
        }

        Positions positions() {
            double[][] at = new double[3][places.length];
            for (int pixel = 0; pixel < places.length; pixel++) {
                for (int axis = 0; axis < 3; axis++) {
                    at[axis][pixel] = places[pixel][axis];
                }
            }
            return new Positions(at[0], at[1], at[2]);
        }
    }

    private static Positions muddled() {
        Hung hung = new Hung()
                .turn("daisy-3", 90, -2820, 1750)
                .swap("daisy-7", "daisy-8", i -> i, 61)
                .swap("fence", "fence", i -> 149 - i, 75);
        BRANCH.forEach(daisy -> hung.turn(daisy, -4, 1710, 2590));
        return hung.positions();
    }

    @ParameterizedTest
    @CsvSource({"0, 21", "25, 22", "45, 23"})
    void fromTheGardenToTheFile(double aside, long seed) throws IOException {
        Positions hung = muddled();
        TestCamera camera = Evening.usual(hung, seed).aside(aside).near(12).camera();
        FindRun run = new FindRun(hung.size(), 1);
        Lighting lighting = (step, pixel) -> run.isLit(run.pictures().get(step), pixel) ? 1 : 0;
        Path photos = folder.resolve("photos");
        PhotoFiles.write(camera, lighting, Exposure.photos(run.pictures().size()), 0.85, photos);

        Path measured = folder.resolve("measured.csv");
        Ran located = Ran.with("locate", photos, "-o", measured, "--display", DISPLAY);
        assertThat(located.code()).as(located.err()).isZero();

        Ran survey = Ran.with("survey", DISPLAY, measured, "--photo");
        assertThat(survey.code()).as(survey.err()).isZero();
        assertThat(survey.out())
                .contains("\nchanged places: daisy-7 and daisy-8\n")
                .contains("\nmoved together: daisy-11, daisy-12, daisy-13, daisy-14\n  turned by 4 degrees clockwise ")
                .contains("\ndaisy-3: a quarter turn to the left: 90 degrees counter-clockwise\n")
                .contains("\nfence: wired from the other end\n")
                .contains("\n10 props as described: daisy-1, daisy-2, daisy-4, daisy-5, daisy-6, daisy-9, daisy-10,"
                        + " trellis-left, trellis-right, pond\n");
        assertThat(Ran.with("survey", DISPLAY, measured)).isEqualTo(survey);

        Path map = folder.resolve("map.csv");
        Ran mapped = Ran.with("map", DISPLAY, "--from", measured, "-o", map);
        assertThat(mapped.code()).as(mapped.err()).isZero();
        List<String> rows = Files.readAllLines(map);
        assertThat(rows).hasSize(1289);
        for (int pixel = 0; pixel < hung.size(); pixel++) {
            String[] cells = rows.get(pixel + 1).split(",");
            double x = Double.parseDouble(cells[2]) - hung.x(pixel);
            double y = Double.parseDouble(cells[3]) - hung.y(pixel);
            assertThat(Math.hypot(x, y)).as(rows.get(pixel + 1)).isLessThan(10);
        }
    }

    /**
     * The picture that the README shows is what is made of the photos beside it. Readers of JPEG may differ by a code,
     * by which a place may come to lie in the next dot.
     */
    @Test
    void theKeptPictureIsThatOfTheKeptPhotos() throws IOException {
        Path measured = folder.resolve("measured.csv");
        Ran located = Ran.with("locate", Project.file("demos/garden/photos"), "-o", measured, "--display", DISPLAY);
        assertThat(located.code()).as(located.err()).isZero();
        BufferedImage made = ImageIO.read(folder.resolve("located.png").toFile());
        BufferedImage kept =
                ImageIO.read(Project.file("demos/garden/located.png").toFile());
        assertThat(kept.getWidth()).isEqualTo(made.getWidth());
        assertThat(kept.getHeight()).isEqualTo(made.getHeight());
        int other = 0;
        for (int y = 0; y < made.getHeight(); y++) {
            for (int x = 0; x < made.getWidth(); x++) {
                other += Math.abs((made.getRGB(x, y) >> 8 & 255) - (kept.getRGB(x, y) >> 8 & 255)) > 8 ? 1 : 0;
            }
        }
        assertThat(other).isLessThan(made.getWidth() * made.getHeight() / 500);
    }
}
