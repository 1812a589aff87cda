package org.duskloom.engine.render;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;

/** White on the left fifth of its canvas, nothing on the rest. */
record EdgeEffect() implements Effect {
    static EffectRegistry amongPlainEffects() {
        return EffectRegistry.of(Stream.concat(PlainEffects.all().effects().stream(), Stream.of(new EdgeEffect()))
                .toList());
    }

    @Override
    public String name() {
        return "edge";
    }

    @Override
    public String summary() {
        return "edge";
    }

    @Override
    public String formula() {
        return "edge";
    }

    @Override
    public List<Setting<?>> settings() {
        return List.of();
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) {
        return () -> new Brush() {
            @Override
            public void begin(CueTime time) {}

            @Override
            public void paint(int firstPixel, Patch patch) {
                for (int cell = patch.from(); cell < patch.to(); cell++) {
                    float light = canvas.x()[firstPixel + cell - patch.from()] < -0.6 ? 1 : 0;
                    patch.red[cell] = light;
                    patch.green[cell] = light;
                    patch.blue[cell] = light;
                    patch.alpha[cell] = light;
                }
            }
        };
    }
}
