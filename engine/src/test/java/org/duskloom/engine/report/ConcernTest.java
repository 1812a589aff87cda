package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.meter.light.FlashRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that is beyond a limit is said, with what it is and what is allowed; what is within is not. */
class ConcernTest {
    private static final FlashPlace WHOLE = new FlashPlace(OptionalInt.empty(), OptionalInt.empty());

    @TempDir
    private Path folder;

    /** 125 mA of 0.1 A, of which 80 % are allowed; the fence needs 11.99 V. */
    @Test
    void saysCurrentAndVoltage() throws IOException {
        assertThat(Concern.of(report(0.1)).stream()
                        .filter(concern -> !concern.matter().equals("flashing")))
                .extracting(Concern::matter, Concern::text)
                .first()
                .hasToString("(\"current\", \"supply shed \"old\" would give up to 0.13 A, and 0.08 A of its 0.10 A are"
                        + " allowed\")");
        assertThat(Concern.of(report(1))).noneMatch(concern -> concern.matter().equals("current"));
    }

    @Test
    void saysFlashesByBothRules() throws IOException {
        Report report =
                seen(OptionalDouble.empty(), count(FlashRule.GENERAL, 7, true, 0), count(FlashRule.RED, 8, false, 0));

        assertThat(flashing(report))
                .containsExactly(
                        "light changes 7 times within the second from 1 s, and 6 are allowed, where the show ends and"
                                + " starts over at once",
                        "red changes 8 times within the second from 1 s, and 6 are allowed");
    }

    @Test
    void saysNothingOfSixChanges() throws IOException {
        assertThat(flashing(seen(
                        OptionalDouble.empty(),
                        count(FlashRule.GENERAL, 6, false, 0),
                        count(FlashRule.RED, 6, false, 0))))
                .isEmpty();
    }

    @Test
    void saysHowMuchOfTheAreaFlashes() throws IOException {
        assertThat(flashing(seen(
                        OptionalDouble.of(10),
                        count(FlashRule.GENERAL, 9, false, 1.3),
                        count(FlashRule.RED, 9, false, 0.9))))
                .containsExactly(
                        "light changes 9 times within the second from 1 s, and 6 are allowed; what does so fills"
                                + " 130 % of the area that is allowed");
    }

    private static List<String> flashing(Report report) {
        return Concern.of(report).stream()
                .filter(concern -> concern.matter().equals("flashing"))
                .map(Concern::text)
                .toList();
    }

    private Report report(double amps) throws IOException {
        return Reported.of(folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(amps))
                .report();
    }

    private Report seen(OptionalDouble metres, FlashCount general, FlashCount red) throws IOException {
        Report report = report(1);
        LightReport light = report.light().orElseThrow();
        FlashFigures flashes = new FlashFigures(metres, general, red, List.of());
        return report.with(new LightReport(flashes, light.worst(), light.use(), light.neverLit(), light.cues()));
    }

    /** In the second from frame 20 on, of 20 a second. */
    private static FlashCount count(FlashRule rule, int most, boolean overJoint, double fieldShare) {
        return new FlashCount(rule, most, WHOLE, 20, overJoint, most, 1, fieldShare);
    }
}
