package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.MeasurementReader;
import org.duskloom.engine.survey.Measurements;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeasuredTextSurveyTest {
    private static final int PIXELS = 30;
    private static final PictureSize SIZE = new PictureSize(4000, 3000);
    private static final PixelMap MAP = map();

    private static PixelMap map() {
        double[] x = IntStream.range(0, PIXELS).asDoubleStream().toArray();
        Positions places = new Positions(x, new double[PIXELS], new double[PIXELS]);
        List<Prop> props = List.of(
                new Prop("arch", 0, 10, List.of(), Location.ofFile("test")),
                new Prop("bed \"3\" left", 10, 15, List.of(), Location.ofFile("test")),
                new Prop("ÿ", 25, 5, List.of(), Location.ofFile("test")));
        return new PixelMap(props, places, places);
    }

    private static Located located(List<Sighting> seen) {
        Reference nothing = Reference.of(SIZE, new Plane(SIZE), new Plane(SIZE), 1);
        return new Located(SIZE, 1, seen, List.of(), 0, new LightSpots(List.of(nothing)));
    }

    /** In German the decimal sign is a comma, which would be a cell of its own. */
    @ParameterizedTest
    @EnumSource
    void doesNotDependOnTheLanguageOfTheSystem(CsvStyle style) {
        Located one = located(List.of(new Sighting(12, 12.345678, 0.004, 0.128)));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ENGLISH);
            String english = MeasuredText.of(one, MAP, style);
            Locale.setDefault(Locale.GERMANY);
            assertThat(MeasuredText.of(one, MAP, style)).isEqualTo(english).contains("\"bed \"\"3\"\" left\"");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** What is written here is read there: no pixel more or less, and no place farther off than is rounded. */
    @ParameterizedTest
    @EnumSource
    void theSurveyReadsWhatIsWritten(CsvStyle style) {
        Random random = new Random(8);
        List<Sighting> seen = IntStream.range(0, PIXELS)
                .filter(pixel -> random.nextInt(4) > 0)
                .mapToObj(pixel -> new Sighting(
                        pixel, 3999 * random.nextDouble(), 2999 * random.nextDouble(), random.nextDouble()))
                .toList();
        Problems problems = new Problems();
        Measurements measured = MeasurementReader.read(
                        Inputs.source("measured.csv", MeasuredText.of(located(seen), MAP, style)), MAP, false, problems)
                .orElseThrow();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(measured.isPhoto()).as("told by how sure they are").isTrue();
        assertThat(measured.pixelCount()).isEqualTo(seen.size());
        int next = 0;
        for (MeasuredProp prop : measured.props()) {
            for (int i = 0; i < prop.count(); i++) {
                Sighting sighting = seen.get(next++);
                assertThat(MAP.props().get(prop.propIndex()).firstPixel() + prop.pixel(i))
                        .isEqualTo(sighting.pixel());
                assertThat(prop.places().x(i)).isCloseTo(sighting.x(), within(0.00501));
                assertThat(prop.places().y(i)).isCloseTo(sighting.y(), within(0.00501));
            }
        }
    }
}
