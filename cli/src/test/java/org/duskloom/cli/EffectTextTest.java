package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.junit.jupiter.api.Test;

/** The shape of what is printed, with an effect that has every kind of cell. */
class EffectTextTest {
    private static final class Glow implements Effect {
        @Override
        public String name() {
            return "glow";
        }

        @Override
        public String summary() {
            return "warmth that comes and goes";
        }

        @Override
        public String formula() {
            return "level = \"depth\" * t";
        }

        @Override
        public List<Setting<?>> settings() {
            return List.of(
                    NumberSetting.of(
                            "depth",
                            "share",
                            0,
                            1,
                            0.25,
                            "how far it goes down between two of the moments at which it is full"),
                    ChoiceSetting.of("mood", "which colours", "warm", "cool"),
                    DurationSetting.optional("rest", "how long it stays dark"));
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) {
            throw new UnsupportedOperationException();
        }
    }

    @Test
    void textOfOne() {
        assertThat(EffectText.of(new Glow()).replace(System.lineSeparator(), "\n"))
                .isEqualTo("""
                glow     warmth that comes and goes
                formula  level = "depth" * t

                setting  unit   range            default  meaning
                depth    share  0 to 1           0.25     how far it goes down between two of the moments at which
                                                          it is full
                mood     word   warm, cool       warm     which colours
                rest     time   longer than 0 s  -        how long it stays dark
                """);
    }

    @Test
    void jsonOfAll() {
        assertThat(EffectJson.ofAll(List.of(new Glow()))).isEqualTo("""
                {
                  "duskloom": "effects/1",
                  "effects": [
                    {
                      "name": "glow",
                      "summary": "warmth that comes and goes",
                      "formula": "level = \\"depth\\" * t",
                      "settings": [
                        {"name": "depth", "unit": "share", "range": "0 to 1", "default": "0.25", "moves": true, "min": 0.0, "max": 1.0, \
                "whole": false, "meaning": "how far it goes down between two of the moments at which it is full"},
                        {"name": "mood", "unit": "word", "range": "warm, cool", "default": "warm", "moves": false, "words": ["warm", "cool"], \
                "meaning": "which colours"},
                        {"name": "rest", "unit": "time", "range": "longer than 0 s", "default": "", "moves": false, "meaning": "how long it \
                stays dark"}
                      ]
                    }
                  ]
                }
                """);
    }

    @Test
    void jsonOfNone() {
        assertThat(EffectJson.ofAll(List.of())).isEqualTo("{\n  \"duskloom\": \"effects/1\",\n  \"effects\": []\n}\n");
    }
}
