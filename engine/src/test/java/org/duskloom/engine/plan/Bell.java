package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Hits;
import org.duskloom.engine.effect.HitsSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/** An effect that hits on beats or markers, which paints nothing and remembers when it was prepared to hit. */
final class Bell implements Effect {
    static final HitsSetting ON = HitsSetting.of("on", "when it rings");
    static final FlagSetting CRACKED = FlagSetting.of("cracked", "cannot ring");

    final List<Hits> hits = new ArrayList<>();

    @Override
    public String name() {
        return "bell";
    }

    @Override
    public String summary() {
        return "nothing";
    }

    @Override
    public String formula() {
        return "nothing";
    }

    @Override
    public List<Setting<?>> settings() {
        return List.of(ON, CRACKED);
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        hits.add(settings.value(ON));
        if (settings.value(CRACKED)) {
            throw new SettingException("cracked", "it does not ring", "mend it");
        }
        return () -> null;
    }
}
