package org.duskloom.engine.locate.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.locate.Located;
import org.duskloom.engine.locate.Locator;
import org.duskloom.engine.locate.PictureSize;
import org.duskloom.engine.locate.Pictures;
import org.duskloom.engine.locate.Sighting;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.preview.Raster;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;

class LocatedPictureTest {
    private static final int WIDTH = 500;
    private static final int HEIGHT = 120;
    private static final int PIXELS = 12;
    private static final FindRun RUN = new FindRun(PIXELS, 1);
    private static final int NIGHT = 0x090A0F;

    /** Twelve lights on a line, the fifth one dark, below a wall that is bright in every picture. */
    private static final class Wall implements Pictures {
        @Override
        public int count() {
            return RUN.pictures().size();
        }

        @Override
        public String name(int picture) {
            return "picture " + picture;
        }

        @Override
        public PictureSize size(int picture) {
            return new PictureSize(WIDTH, HEIGHT);
        }

        @Override
        public void read(int picture, byte[] codes) {
            for (int dot = 0; dot < codes.length; dot++) {
                int x = dot % WIDTH;
                int y = dot / WIDTH;
                double code = y < 10 ? 120 : 10;
                for (int pixel = 0; pixel < PIXELS; pixel++) {
                    if (pixel != 4 && RUN.isLit(RUN.pictures().get(picture), pixel)) {
                        code += 200 * Math.exp(-(Math.pow(x - x(pixel), 2) + Math.pow(y - 60, 2)) / 6);
                    }
                }
                codes[dot] = (byte) Math.round(Math.min(230, code));
            }
        }
    }

    private static int x(int pixel) {
        return 40 + 36 * pixel;
    }

    private static PixelMap map() {
        double[] x = IntStream.range(0, PIXELS).mapToDouble(pixel -> pixel).toArray();
        Positions places = new Positions(x, new double[PIXELS], new double[PIXELS]);
        List<Prop> props = List.of(
                new Prop("rose", 0, 6, List.of(), Location.ofFile("test")),
                new Prop("lily", 6, 6, List.of(), Location.ofFile("test")));
        return new PixelMap(props, places, places);
    }

    private static Located located() throws Exception {
        return new Locator(new Wall(), RUN, map(), false).locate();
    }

    private static int head(Raster raster) {
        return raster.height() - HEIGHT;
    }

    @Test
    void marksWhatWasFoundAndShowsNothingElse() throws Exception {
        Located located = located();
        assertThat(located.seen()).hasSize(11);
        Raster raster = LocatedPicture.draw(located, map());
        assertThat(raster.width()).isEqualTo(WIDTH);
        int middle = head(raster) + 60;
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            // Beside the wire, which is drawn over the lights.
            int shown = raster.colourAt(x(pixel), middle + 1) & 0xFF;
            assertThat(shown > 100).as("pixel %s", pixel).isEqualTo(pixel != 4);
        }
        // The wall is in all pictures, so it is no light.
        assertThat(raster.colourAt(250, head(raster) + 5)).isEqualTo(NIGHT);
        assertThat(raster.colourAt(250, head(raster) + 110)).isEqualTo(NIGHT);
    }

    /** A line from each pixel to the next, in the colour of its prop; none over a gap, none from prop to prop. */
    @Test
    void drawsWires() throws Exception {
        Raster raster = LocatedPicture.draw(located(), map());
        int rose = behind(0, raster);
        int lily = behind(6, raster);
        assertThat(rose).isNotEqualTo(NIGHT).isNotEqualTo(lily);
        assertThat(lily).isNotEqualTo(NIGHT);
        assertThat(behind(1, raster)).isEqualTo(rose);
        assertThat(behind(3, raster)).isEqualTo(NIGHT);
        assertThat(behind(4, raster)).isEqualTo(NIGHT);
        assertThat(behind(5, raster)).isEqualTo(NIGHT);
    }

    /** The colour half way to the next pixel. */
    private static int behind(int pixel, Raster raster) {
        return raster.colourAt(x(pixel) + 18, head(raster) + 60);
    }

    /** The corner of a square is round the first pixel of each prop alone. */
    @Test
    void showsWhereAWireBegins() throws Exception {
        Raster raster = LocatedPicture.draw(located(), map());
        int middle = head(raster) + 60;
        for (int pixel : new int[] {0, 1, 6, 7, 11}) {
            boolean corner = raster.colourAt(x(pixel) - 6, middle - 6) != NIGHT;
            assertThat(corner).as("pixel %s", pixel).isEqualTo(pixel % 6 == 0);
        }
    }

    /** A place a little short of the middle of a dot is in that dot, as is one a little beyond it; so is its square. */
    @Test
    void marksStandInTheMiddle() throws Exception {
        Located located = located();
        assertThat(located.seen()).allSatisfy(at -> assertThat(at.x()).isCloseTo(x(at.pixel()), within(0.1)));
        assertThat(located.seen()).anySatisfy(at -> assertThat(at.x()).isLessThan(x(at.pixel())));
        Raster raster = LocatedPicture.draw(located, map());
        for (int pixel : new int[] {0, 6}) {
            for (int side : new int[] {-6, 6}) {
                assertThat(raster.colourAt(x(pixel) + side, head(raster) + 60 + side))
                        .isNotEqualTo(NIGHT);
                assertThat(raster.colourAt(x(pixel) + side / 6 * 7, head(raster) + 60 + side))
                        .isEqualTo(NIGHT);
            }
        }
    }

    /** Where lights are dense, no ring of another one is drawn over the square. */
    @Test
    void squaresLieOverRings() throws Exception {
        Located found = located();
        List<Sighting> dense = IntStream.range(0, 6)
                .mapToObj(pixel -> new Sighting(pixel, 100 + 3 * pixel, 60, 1))
                .toList();
        Raster raster = LocatedPicture.draw(
                new Located(found.size(), found.picture(), dense, List.of(), 0, found.spots()), map());
        int corner = raster.colourAt(94, head(raster) + 54);
        assertThat(corner).isNotEqualTo(NIGHT);
        for (int along = -6; along <= 6; along++) {
            assertThat(raster.colourAt(106, head(raster) + 60 + along)).isEqualTo(corner);
            assertThat(raster.colourAt(107, head(raster) + 60 + along)).isEqualTo(NIGHT);
        }
    }

    /** A picture that is too wide is drawn smaller, with every light where it is as a share of the width. */
    @Test
    void drawsWidePicturesSmaller() throws Exception {
        Located small = located();
        Located wide = new Located(
                new PictureSize(10 * WIDTH, 10 * HEIGHT),
                small.picture(),
                small.seen().stream()
                        .map(at -> new Sighting(at.pixel(), 10 * at.x() + 4.5, 10 * at.y() + 4.5, at.sure()))
                        .toList(),
                small.unseen(),
                small.burnt(),
                small.spots());
        Raster raster = LocatedPicture.draw(wide, map());
        assertThat(raster.width()).isEqualTo(2400);
        int left = (int) (4.8 * (x(0) + 0.5)) - 6;
        int top = raster.height() - 576 + (int) (4.8 * 60.5) - 6;
        assertThat(raster.colourAt(left, top)).isNotEqualTo(NIGHT);
        assertThat(raster.colourAt(left + 12, top + 12)).isNotEqualTo(NIGHT);
    }

    @Test
    void showsTheWholePictureIfAsked() throws Exception {
        byte[] codes = new byte[WIDTH * HEIGHT];
        new Wall().read(1, codes);
        Raster raster = LocatedPicture.drawOver(codes, located(), map());
        assertThat(raster.colourAt(250, head(raster) + 5)).isEqualTo(0x787878);
    }
}
