package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.TestShow;
import org.duskloom.engine.render.ReferencePainter.Light;
import org.duskloom.engine.render.ReferencePainter.Paint;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Shows of random layers of random cues on random pixels, against the general formula written out in double precision.
 * One code of difference is allowed where a value lies between two.
 */
class RandomShowTest {
    private static final int PIXELS = 90;
    private static final int PARTS = 5;

    private final boolean[][] inPart = new boolean[PARTS][PIXELS];

    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63, 64, 65, 66, 67, 68})
    void isPaintedByTheFormula(long seed) {
        Random random = new Random(seed);
        PixelMap map = map(random);
        for (int show = 0; show < 25; show++) {
            List<PaintedLayer> layers = layers(random);
            byte[] frame = Frames.frame(
                    TestShow.of(map, "\"layers\": [" + json(layers) + "]").plan(), 0);
            for (int pixel = 0; pixel < PIXELS; pixel++) {
                int[] codes = Frames.codes(frame, pixel);
                double[] expected = expected(layers, pixel);
                for (int channel = 0; channel < 3; channel++) {
                    assertThat(codes[channel])
                            .as("pixel %s, channel %s of %s", pixel, channel, json(layers))
                            .isCloseTo(Frames.code(expected[channel]), Offset.offset(1));
                }
            }
        }
    }

    private double[] expected(List<PaintedLayer> layers, int pixel) {
        double[] stage = new double[3];
        for (PaintedLayer layer : layers) {
            double[] group = new double[3];
            double hidden = 1;
            for (Paint cue : layer.cues()) {
                hidden *= inPart[cue.part().charAt(1) - '0'][pixel] ? 1 - cue.opacity() : 1;
            }
            for (int channel = 0; channel < 3; channel++) {
                Light light = Light.NONE;
                for (Paint cue : layer.cues()) {
                    if (inPart[cue.part().charAt(1) - '0'][pixel]) {
                        Light source = new Light(cue.rgb()[channel] * cue.alpha(), cue.alpha()).times(cue.opacity());
                        light = ReferencePainter.over(cue.blend(), light, source);
                    }
                }
                group[channel] = light.value();
                if (!layer.mask()) {
                    Light under = new Light(stage[channel], 1);
                    stage[channel] = ReferencePainter.over(layer.blend(), under, light.times(layer.opacity()))
                            .value();
                }
            }
            if (layer.mask()) {
                double luminance = 0.2126 * group[0] + 0.7152 * group[1] + 0.0722 * group[2];
                for (int channel = 0; channel < 3; channel++) {
                    stage[channel] *= Math.min(1, 1 - layer.opacity() * (1 - hidden - luminance));
                }
            }
        }
        return stage;
    }

    private PixelMap map(Random random) {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y,part\n");
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            List<String> parts = new ArrayList<>();
            for (int part = 0; part < PARTS; part++) {
                inPart[part][pixel] = pixel == part || random.nextInt(2 + part) == 0;
                if (inPart[part][pixel]) {
                    parts.add("p" + part);
                }
            }
            csv.append("a,").append(pixel + 1).append(',').append(pixel).append(",0,");
            csv.append(String.join(";", parts)).append('\n');
        }
        return Maps.map(csv.toString());
    }

    private static List<PaintedLayer> layers(Random random) {
        List<PaintedLayer> layers = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            List<Paint> cues = new ArrayList<>();
            for (int cue = 0; cue < random.nextInt(5); cue++) {
                cues.add(Paint.random(random, PARTS));
            }
            double opacity = random.nextBoolean() ? 1 : random.nextDouble();
            layers.add(new PaintedLayer(i > 0 && random.nextInt(5) == 0, ReferencePainter.mode(random), opacity, cues));
        }
        return layers;
    }

    private static String json(List<PaintedLayer> layers) {
        return layers.stream().map(PaintedLayer::json).collect(Collectors.joining(",\n"));
    }

    private record PaintedLayer(boolean mask, String blend, double opacity, List<Paint> cues) {
        private String json() {
            String kind = mask ? "\"mask\": true" : "\"blend\": \"" + blend + "\"";
            return "{%s, \"opacity\": %s, \"cues\": [%s]}"
                    .formatted(kind, opacity, cues.stream().map(Paint::json).collect(Collectors.joining(",\n")));
        }
    }
}
