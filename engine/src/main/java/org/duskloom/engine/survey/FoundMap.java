package org.duskloom.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;

/**
 * The pixel map of a display as it was found: measured pixels where they were measured, the others where the survey's
 * reading of their prop puts them, props of which nothing was measured as they are described. Depth that was not
 * measured is that of the reading, which a picture leaves as described. Parts and own places go with the places on the
 * shape, so that on a prop that is wired in another order they belong to other pixels than described.
 *
 * @param map the map
 * @param measuredPixels how many pixels are where they were measured; not those whose measurements were left out
 */
public record FoundMap(PixelMap map, int measuredPixels) {
    /**
     * The map of what was found.
     *
     * @param result the survey of that display
     */
    public static FoundMap of(Display display, SurveyResult result) {
        return new Builder(display.map(), result).found();
    }

    /** Fills in prop after prop. */
    private static final class Builder {
        private final PixelMap described;
        private final SurveyResult result;
        private final double[][] stage;
        private final double[][] own;
        private final List<Prop> props;
        private int measuredPixels;

        Builder(PixelMap described, SurveyResult result) {
            this.described = described;
            this.result = result;
            this.stage = copy(described.stage());
            this.own = copy(described.own());
            this.props = new ArrayList<>(described.props());
        }

        FoundMap found() {
            for (int i = 0; i < result.findings().size(); i++) {
                Finding finding = result.findings().get(i);
                MeasuredProp measured = result.measured().props().get(i);
                place(measured.propIndex(), finding);
                if (finding.measuredPixels() > 0) {
                    overwrite(measured, finding);
                }
            }
            return new FoundMap(new PixelMap(props, positions(stage), positions(own)), measuredPixels);
        }

        private void place(int propIndex, Finding finding) {
            Prop prop = described.props().get(propIndex);
            Wiring wiring = finding.reading().wiring();
            Positions places = finding.reading().places(finding.prop());
            int[] pixelAt = new int[prop.pixelCount()];
            for (int i = 0; i < prop.pixelCount(); i++) {
                int pixel = prop.firstPixel() + i;
                int from = prop.firstPixel() + wiring.describedPixel(i);
                pixelAt[wiring.describedPixel(i)] = i;
                set(stage, pixel, places.x(i), places.y(i), places.z(i));
                set(
                        own,
                        pixel,
                        described.own().x(from),
                        described.own().y(from),
                        described.own().z(from));
            }
            if (wiring.kind() != WiringKind.AS_DESCRIBED) {
                List<Part> parts = rewired(prop.parts(), pixelAt);
                props.set(
                        propIndex,
                        new Prop(prop.name(), prop.firstPixel(), prop.pixelCount(), parts, prop.definedAt()));
            }
        }

        private void overwrite(MeasuredProp measured, Finding finding) {
            int first = described.props().get(measured.propIndex()).firstPixel();
            for (int i = 0; i < measured.count(); i++) {
                int pixel = measured.pixel(i);
                boolean isLeftOut = finding.slips().stream().anyMatch(slip -> slip.pixel() == pixel)
                        || finding.muddles().stream()
                                .anyMatch(muddle -> muddle.pixels().contains(pixel));
                if (!isLeftOut) {
                    boolean isDeep = result.dimensions() == Dimensions.DEEP;
                    double z = isDeep ? measured.places().z(i) : stage[2][first + pixel];
                    set(
                            stage,
                            first + pixel,
                            measured.places().x(i),
                            measured.places().y(i),
                            z);
                    measuredPixels++;
                }
            }
        }

        /** @param pixelAt which pixel hangs where each is described */
        private static List<Part> rewired(List<Part> parts, int[] pixelAt) {
            return parts.stream()
                    .map(part -> new Part(
                            part.name(),
                            IntStream.of(part.pixels())
                                    .map(pixel -> pixelAt[pixel])
                                    .toArray(),
                            rewired(part.children(), pixelAt)))
                    .toList();
        }

        private static double[][] copy(Positions positions) {
            double[][] copy = new double[3][positions.size()];
            for (int i = 0; i < positions.size(); i++) {
                set(copy, i, positions.x(i), positions.y(i), positions.z(i));
            }
            return copy;
        }

        private static void set(double[][] at, int pixel, double x, double y, double z) {
            at[0][pixel] = x;
            at[1][pixel] = y;
            at[2][pixel] = z;
        }

        private static Positions positions(double[][] at) {
            return new Positions(at[0], at[1], at[2]);
        }
    }
}
