package org.duskloom.engine.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.junit.jupiter.api.Test;

class SettingsTest {
    private static final NumberSetting WIDTH = NumberSetting.of("width", "share", 0, 1, 0.5, "how wide");
    private static final NumberSetting HEIGHT = NumberSetting.of("height", "share", 0, 1, 0.5, "how high");
    private static final DurationSetting EVERY = DurationSetting.of("every", 2, "how long a pass takes");
    private static final ChoiceSetting FROM = ChoiceSetting.of("from", "where", "edge", "centre");
    private static final FlagSetting BACK = FlagSetting.of("back", "the other way");
    private static final FileSetting FILE = FileSetting.of("file", "PNG", "what is seen");
    private static final List<Setting<?>> ALL = List.of(WIDTH, HEIGHT, EVERY, FROM, BACK, FILE);

    private static Fingerprint print(Map<Setting<?>, Object> given) {
        return Settings.of(given).fingerprint(ALL, file -> "digest of " + file.getFileName());
    }

    @Test
    void whatIsNotWrittenIsTheDefault() {
        Settings some = Settings.of(Map.of(WIDTH, NumberTrack.constant(0.25), FROM, "centre"));
        assertThat(some.isGiven(WIDTH)).isTrue();
        assertThat(some.isGiven(HEIGHT)).isFalse();
        assertThat(some.value(WIDTH).first()).isEqualTo(0.25);
        assertThat(some.value(HEIGHT).first()).isEqualTo(0.5);
        assertThat(some.value(EVERY)).contains(Period.ofSeconds(2));
        assertThat(some.value(FROM)).isEqualTo("centre");
        assertThat(some.value(BACK)).isFalse();
        assertThat(some.value(FILE)).isEmpty();
    }

    /** Every way to be another value; the value of one setting under another's name too. */
    @Test
    void otherSettingsHaveOtherFingerprints() {
        List<Map<Setting<?>, Object>> different = List.of(
                Map.of(),
                Map.of(WIDTH, NumberTrack.constant(0.5)),
                Map.of(HEIGHT, NumberTrack.constant(0.5)),
                Map.of(WIDTH, NumberTrack.constant(0.25)),
                Map.of(WIDTH, NumberTrack.constant(0.5), HEIGHT, NumberTrack.constant(0.25)),
                Map.of(WIDTH, NumberTrack.constant(0.25), HEIGHT, NumberTrack.constant(0.5)),
                Map.of(EVERY, Optional.of(Period.ofSeconds(3))),
                Map.of(EVERY, Optional.of(new Period(3, Period.Unit.BEATS))),
                Map.of(FROM, "edge"),
                Map.of(FROM, "centre"),
                Map.of(BACK, true),
                Map.of(BACK, false),
                Map.of(FILE, Optional.of(Path.of("here", "bee.png"))),
                Map.of(FILE, Optional.of(Path.of("here", "fly.png"))));
        Set<Fingerprint> prints = new LinkedHashSet<>();
        different.forEach(given -> prints.add(print(given)));
        assertThat(prints).hasSize(different.size());
    }

    /** A file is its bytes, and the order in which settings were written is nothing. */
    @Test
    void theSameSettingsHaveTheSameFingerprint() {
        assertThat(print(Map.of(FILE, Optional.of(Path.of("here", "bee.png")))))
                .isEqualTo(print(Map.of(FILE, Optional.of(Path.of("elsewhere", "bee.png")))));
        assertThat(print(Map.of(FROM, "edge", BACK, true))).isEqualTo(print(Map.of(BACK, true, FROM, "edge")));
    }

    @Test
    void theyHearBeatsIfOneOfThemDoes() {
        assertThat(Settings.of(Map.of()).hearBeats()).isFalse();
        assertThat(Settings.of(Map.of(
                                WIDTH, NumberTrack.constant(1), EVERY, Optional.of(Period.ofSeconds(3)), FROM, "edge"))
                        .hearBeats())
                .isFalse();
        assertThat(Settings.of(Map.of(EVERY, Optional.of(new Period(3, Period.Unit.BARS))))
                        .hearBeats())
                .isTrue();
        assertThat(Settings.of(Map.of(WIDTH, new FollowingNumber(new Slope(true), 0, 1)))
                        .hearBeats())
                .isTrue();
        assertThat(Settings.of(Map.of(WIDTH, new FollowingNumber(new Slope(false), 0, 1)))
                        .hearBeats())
                .isFalse();
    }

    /** From 0.5 to 0.1 along a level that is a tenth of the time: 0.5 - 0.4 · t / 10, by the show's clock. */
    @Test
    void aNumberFollowsALevel() {
        FollowingNumber number = new FollowingNumber(new Slope(false), 0.5, 0.1);
        assertThat(number.at(2, 3)).isEqualTo(0.5 - 0.4 * 0.5);
        assertThat(number.at(0, 0)).isEqualTo(0.5);
        assertThat(number.at(10, 0)).isEqualTo(0.5 - 0.4);
        assertThat(number.first()).isEqualTo(0.5);
        assertThat(number.keyRange()).containsExactly(0.1, 0.5);
        assertThat(number.isConstant()).isFalse();
    }

    /** A level that rises to 1 in ten seconds. */
    private record Slope(boolean hearsBeats) implements LevelCurve {
        @Override
        public double at(double showSecond) {
            return showSecond / 10;
        }

        @Override
        public void addTo(FingerprintWriter parts) {
            parts.text("slope");
        }
    }
}
