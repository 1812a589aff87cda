package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Doubt;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Severity;
import org.junit.jupiter.api.Test;

/** What an effect itself has to say of its settings, and of the files that they name. */
class EffectWordsTest {
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\npond,1,0,0\ngate,1,1,0\n");

    /** Doubts any depth over a half, and cannot be used at 1; at 0.9 it finds two faults in a file. */
    private static final class Deep implements Effect {
        private static final NumberSetting DEPTH = NumberSetting.of("depth", "share", 0, 1, 0.75, "how deep");

        @Override
        public String name() {
            return "deep";
        }

        @Override
        public String summary() {
            return "";
        }

        @Override
        public String formula() {
            return "";
        }

        @Override
        public List<Setting<?>> settings() {
            return List.of(DEPTH);
        }

        @Override
        public List<Doubt> doubts(Settings settings) {
            double depth = settings.value(DEPTH).at(0);
            return depth > 0.5 ? List.of(new Doubt("depth", "nothing is seen below " + depth, "go up")) : List.of();
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
            double depth = settings.value(DEPTH).at(0);
            if (depth == 1) {
                throw new SettingException("depth", "no pond is so deep", "dig");
            }
            if (depth == 0.9) {
                throw new SettingException("depth", List.of(fault(3), fault(7)));
            }
            return PlainEffects.CLOCK.prepare(Settings.of(Map.of()), canvas);
        }

        private static Problem fault(int line) {
            return new Problem(Severity.ERROR, new Location("pond.txt", line, 1), "is wet", "dry it");
        }
    }

    private static List<String> problems(String... cues) {
        return TestShow.of(MAP, "\"layers\": [{\"cues\": [\n" + String.join(",\n", cues) + "\n]}]")
                .with(new Deep())
                .problems();
    }

    /** At the setting, or at the effect where the setting is not written. */
    @Test
    void isDoubtedOnceHoweverOftenItIsPlayed() {
        assertThat(problems(
                        "{\"on\": \"pond\", \"for\": \"1s\", \"repeat\": 3, \"effect\": \"deep\", \"with\": {\"depth\": 0.6}}",
                        "{\"on\": \"*\", \"spread\": \"each\", \"effect\": \"deep\"}",
                        "{\"on\": \"gate\", \"effect\": \"deep\", \"with\": {\"depth\": 0.5}}"))
                .containsExactly(
                        "show.json:3:78: warning: deep: nothing is seen below 0.6; go up",
                        "show.json:4:41: warning: deep: nothing is seen below 0.75; go up");
    }

    @Test
    void isNotDoubtedWhereItCannotBeUsed() {
        assertThat(problems("{\"on\": \"pond\", \"effect\": \"deep\", \"with\": {\"depth\": 1}}"))
                .containsExactly("show.json:3:52: error: deep: no pond is so deep; dig");
    }

    @Test
    void tellsWhatIsWrongInAFileWhereItIsWrong() {
        assertThat(problems("{\"on\": \"pond\", \"effect\": \"deep\", \"with\": {\"depth\": 0.9}}"))
                .containsExactly("pond.txt:3:1: error: is wet; dry it", "pond.txt:7:1: error: is wet; dry it");
    }
}
