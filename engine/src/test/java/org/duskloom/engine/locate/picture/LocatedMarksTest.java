package org.duskloom.engine.locate.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

/** Marks of lights wherever these are; eight props of two pixels each. */
class LocatedMarksTest {
    private static final int PROPS = 8;
    private static final PictureSize SIZE = new PictureSize(600, 200);
    private static final int NIGHT = 0x090A0F;

    private static PixelMap map() {
        List<Prop> props = IntStream.range(0, PROPS)
                .mapToObj(prop -> new Prop("p" + prop, 2 * prop, 2, List.of(), Location.ofFile("test")))
                .toList();
        double[] none = new double[2 * PROPS];
        return new PixelMap(props, new Positions(none, none, none), new Positions(none, none, none));
    }

    /** The two pixels of a prop beside each other, one below the other the props. */
    private static List<Sighting> seen() {
        List<Sighting> seen = new ArrayList<>();
        for (int pixel = 0; pixel < 2 * PROPS; pixel++) {
            seen.add(new Sighting(pixel, 300 + 40 * (pixel % 2), 20 + 20 * (pixel / 2), 1));
        }
        return seen;
    }

    private static Raster drawn(List<Sighting> seen) throws Exception {
        Pictures one = new Pictures() {
            private final FindRun run = new FindRun(1, 1);

            @Override
            public int count() {
                return run.pictures().size();
            }

            @Override
            public String name(int picture) {
                return "";
            }

            @Override
            public PictureSize size(int picture) {
                return SIZE;
            }

            @Override
            public void read(int picture, byte[] codes) {
                Arrays.fill(codes, (byte) 0);
                byte code = (byte) (run.isLit(run.pictures().get(picture), 0) ? 200 : 0);
                codes[150 * SIZE.width() + 40] = code;
                codes[150 * SIZE.width() + 41] = code;
            }
        };
        PixelMap single = new PixelMap(
                List.of(new Prop("p", 0, 1, List.of(), Location.ofFile("test"))),
                new Positions(new double[1], new double[1], new double[1]),
                new Positions(new double[1], new double[1], new double[1]));
        Located found = new Locator(one, new FindRun(1, 1), single, false).locate();
        return LocatedPicture.draw(new Located(SIZE, 1, seen, List.of(), 0, found.spots()), map());
    }

    private static int colour(Raster raster, int prop) {
        return raster.colourAt(320, raster.height() - SIZE.height() + 20 + 20 * prop);
    }

    /** Six colours, in turns: the props beside each other on the wire have others. */
    @Test
    void propsBesideEachOtherHaveOtherColours() throws Exception {
        Raster raster = drawn(seen());
        Set<Integer> colours = new HashSet<>();
        for (int prop = 0; prop < PROPS; prop++) {
            assertThat(colour(raster, prop)).isNotEqualTo(NIGHT);
            assertThat(colour(raster, prop)).isEqualTo(colour(raster, prop % 6));
            colours.add(colour(raster, prop));
        }
        assertThat(colours).hasSize(6);
    }

    /** At the edge of the picture a mark is cut off, and its other side is seen. */
    @Test
    void marksAtTheEdgeAreCutOff() throws Exception {
        List<Sighting> corners = List.of(
                new Sighting(0, 0, 0, 1),
                new Sighting(2, SIZE.width() - 1, 0, 1),
                new Sighting(4, 0, SIZE.height() - 1, 1),
                new Sighting(6, SIZE.width() - 1, SIZE.height() - 1, 1),
                new Sighting(7, 299, -30, 1));
        Raster raster = drawn(corners);
        int top = raster.height() - SIZE.height();
        assertThat(raster.colourAt(6, top + 6)).isNotEqualTo(NIGHT);
        assertThat(raster.colourAt(SIZE.width() - 7, top + 6)).isNotEqualTo(NIGHT);
        assertThat(raster.colourAt(6, raster.height() - 7)).isNotEqualTo(NIGHT);
        assertThat(raster.colourAt(SIZE.width() - 7, raster.height() - 7)).isNotEqualTo(NIGHT);
    }

    /** The head says how many were found: with another number it looks otherwise; without any it is drawn, too. */
    @Test
    void theHeadTellsHowManyWereFound() throws Exception {
        Set<List<Integer>> heads = new HashSet<>();
        for (int count = 0; count <= 2 * PROPS; count++) {
            Raster raster = drawn(seen().subList(0, count));
            heads.add(IntStream.range(0, 40 * 300)
                    .map(dot -> raster.colourAt(dot % 300, dot / 300))
                    .boxed()
                    .toList());
        }
        assertThat(heads).hasSize(2 * PROPS + 1);
    }
}
