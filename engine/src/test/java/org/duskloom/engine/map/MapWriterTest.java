package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MapWriterTest {
    private static String written(PixelMap map) throws IOException {
        return written(map, CsvStyle.COMMAS);
    }

    private static String written(PixelMap map, CsvStyle style) throws IOException {
        StringBuilder out = new StringBuilder();
        MapWriter.write(map, style, out);
        return out.toString();
    }

    @Test
    void writesOnlyColumnsThatSaySomething() throws IOException {
        String flat = "prop,pixel,x,y\nfence,1,0,-2.5\nfence,2,1,1E-7\n";
        String deep = "prop,pixel,x,y,z,part,ownx,owny,ownz\na,1,0,0,5,rim,1,2,0\nb,1,1,0,0,,3,4,0\n";
        assertThat(written(Maps.map(flat))).isEqualTo(flat);
        assertThat(written(Maps.map(deep))).isEqualTo(deep);
    }

    @Test
    void writesRanksWhereAPartDoesNotRise() throws IOException {
        Part foot = new Part("foot", new int[] {0}, List.of());
        Part top = new Part("top", new int[] {2, 0}, List.of(foot));
        Positions line = new Positions(new double[] {0, 1, 2}, new double[3], new double[3]);
        Prop prop = new Prop("say \"hi\"", 0, 3, List.of(top), Location.ofFile("display.json"));
        PixelMap map = new PixelMap(List.of(prop), line, line);
        assertThat(written(map)).isEqualTo("""
                prop,pixel,x,y,part
                "say ""hi\""\",1,0,0,top#2;top/foot
                "say ""hi\""\",2,1,0,
                "say ""hi\""\",3,2,0,top#1
                """);
        Maps.assertSame(Maps.map(written(map)), map);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void isReadBackAsTheSameMap(long seed) throws IOException {
        PixelMap map = randomMap(new Random(seed));
        Maps.assertSame(Maps.map(written(map)), map);
        Maps.assertSame(Maps.map(written(map, CsvStyle.SEMICOLONS)), map);
    }

    /** In names a dot stays a dot, though they may look like numbers, and names of parts keep their semicolons. */
    @Test
    void writesSemicolonsAndDecimalCommas() throws IOException {
        PixelMap map = Maps.map("prop,pixel,x,y,part\n2.5,1,-2.5,1E-7,a;b\n");
        assertThat(written(map, CsvStyle.SEMICOLONS)).isEqualTo("\uFEFFprop;pixel;x;y;part\n2.5;1;-2,5;1E-7;\"a;b\"\n");
    }

    private static PixelMap randomMap(Random random) {
        List<Prop> props = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < 20; i++) {
            int count = 1 + random.nextInt(30);
            List<Integer> all = IntStream.range(0, count).boxed().toList();
            props.add(new Prop("prop " + i, next, count, parts(all, 3, random), Location.ofFile("display.json")));
            next += count;
        }
        return new PixelMap(props, positions(next, random), positions(next, random));
    }

    private static List<Part> parts(List<Integer> from, int depth, Random random) {
        List<Part> parts = new ArrayList<>();
        for (int i = random.nextInt(depth + 1); i > 0; i--) {
            List<Integer> pixels = new ArrayList<>(from);
            Collections.shuffle(pixels, random);
            pixels = pixels.subList(0, 1 + random.nextInt(pixels.size()));
            if (random.nextBoolean()) {
                Collections.sort(pixels);
            }
            String name = (random.nextBoolean() ? "part" : "") + i;
            int[] array = pixels.stream().mapToInt(Integer::intValue).toArray();
            parts.add(new Part(name, array, parts(pixels, depth - 1, random)));
        }
        return parts;
    }

    private static Positions positions(int count, Random random) {
        return new Positions(axis(count, random), axis(count, random), axis(count, random));
    }

    private static double[] axis(int count, Random random) {
        return IntStream.range(0, count)
                .mapToDouble(i -> switch (random.nextInt(5)) {
                    case 0 -> random.nextInt(5000) - 2500;
                    case 1 -> random.nextInt(100_000) / 8.0;
                    case 2 -> -0.0;
                    case 3 -> random.nextGaussian() * 1e-12;
                    default -> random.nextGaussian() * 1000;
                })
                .toArray();
    }
}
