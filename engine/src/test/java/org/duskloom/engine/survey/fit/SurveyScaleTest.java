package org.duskloom.engine.survey.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalDouble;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.MeasurementReader;
import org.duskloom.engine.survey.Measurements;
import org.duskloom.engine.survey.Reading;
import org.duskloom.engine.survey.SurveyResult;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;
import org.junit.jupiter.api.Test;

/** Displays of the largest kind: 2,000 props with 100,000 pixels, all of them measured. */
class SurveyScaleTest {
    private static final String FLOWER = """
            "daisy": {"build": [
              {"ring": {"count": 15, "radius": 90, "start": 90, "direction": "clockwise"}},
              {"ring": {"count": 30, "radius": 150, "start": 90, "direction": "clockwise"}},
              {"line": {"count": 5, "from": [0, -170], "to": [30, -290]}}]}""";

    private static Built meadow() {
        StringBuilder props = new StringBuilder();
        for (int i = 0; i < 2000; i++) {
            props.append(String.format(
                    Locale.ROOT,
                    "%s{\"name\": \"daisy-%d\", \"shape\": \"daisy\", \"at\": [%d, %d], \"turn\": %d}",
                    i == 0 ? "" : ",",
                    i,
                    500 * (i % 50),
                    700 * (i / 50),
                    i % 360));
        }
        return new Built(Built.display(FLOWER, props.toString()));
    }

    @Test
    void findsWhatDiffersInAMeadow() {
        Built built = meadow();
        for (int i = 0; i < 2000; i += 20) {
            String daisy = "daisy-" + i;
            double x = 500 * (i % 50);
            double y = 700 * (i / 50);
            switch (i / 20 % 4) {
                case 0 -> built.reverse(daisy);
                case 1 -> built.turn(daisy, 90, x, y);
                case 2 -> built.start(daisy, 9);
                default -> built.turn(daisy, 11 + i % 37, x, y).move(daisy, 40 + i % 31, i % 13 * 5);
            }
        }
        built.swap("daisy-3", "daisy-1777");
        SurveyResult result = built.survey(5, 1);
        assertThat(result.findings()).hasSize(2000);
        assertThat(result.findings(Verdict.DIFFERENT)).hasSize(102);
        assertThat(result.findings(Verdict.AS_DESCRIBED)).hasSize(1898);
        assertThat(result.exchanges()).hasSize(1);
        assertThat(result.motions()).isEmpty();
    }

    @Test
    void readsAndLaysAPhotoOfAMeadow() {
        Built built = meadow().move("daisy-77", 100, 100);
        PixelMap map = built.display().map();
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (MeasuredProp prop : built.flat(5, 1).props()) {
            Prop named = map.props().get(prop.propIndex());
            for (int i = 0; i < prop.count(); i++) {
                csv.append(named.name()).append(',').append(prop.pixel(i) + 1).append(',');
                csv.append(prop.places().x(i) / 10).append(',');
                csv.append(3000 - prop.places().y(i) / 10).append('\n');
            }
        }
        Problems problems = new Problems();
        Measurements photo = SourceText.of(csv.toString().getBytes(StandardCharsets.UTF_8), "photo.csv", problems)
                .flatMap(source -> MeasurementReader.read(source, map, true, problems))
                .orElseThrow();
        assertThat(photo.pixelCount()).isEqualTo(100_000);
        SurveyResult result = Survey.compare(built.display(), photo, OptionalDouble.empty());
        assertThat(result.findings(Verdict.DIFFERENT)).hasSize(1);
        assertThat(result.photo().orElseThrow().countsDown()).isTrue();
    }

    /** One prop with all pixels: a pond's edge whose wiring starts elsewhere. */
    @Test
    void findsTheStartOfAVeryLongLoop() {
        Built built = new Built(Built.display(
                        "\"pond\": {\"build\": [{\"polyline\": {\"count\": 30000, \"points\": [[0, 0], [9000, 500], [7000,"
                                + " 6000], [-2000, 4000], [0, 0.3]]}}]}",
                        "{\"name\": \"pond\", \"shape\": \"pond\", \"at\": [0, 0]}"))
                .start("pond", 12_345);
        SurveyResult result = Survey.compare(built.display(), built.flat(0.05, 1), OptionalDouble.empty());
        Reading reading = result.findings().get(0).reading();
        assertThat(reading.wiring().kind()).isEqualTo(WiringKind.OTHER_START);
        assertThat(reading.wiring().describedPixel(0)).isEqualTo(12_345);
    }
}
