package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.effect.Brush;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Patch;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.map.PixelMap;

/** An effect with a setting of every kind, which paints nothing and remembers what it was given. */
final class Probe implements Effect {
    static final NumberSetting SIZE = NumberSetting.of("size", "share", 0, 1, 0.5, "how large");
    static final NumberSetting ARMS = NumberSetting.whole("arms", "arms", 1, 100, 3, "how many");
    static final ColorSetting COLOR = ColorSetting.of("color", "white", "which colour");
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "which colours", "white");
    static final DurationSetting EVERY = DurationSetting.of("every", 2, "how often");
    static final DurationSetting RISE = DurationSetting.orZero("rise", 100, "how fast");
    static final ChoiceSetting FROM = ChoiceSetting.of("from", "from where", "edge", "centre");
    static final FlagSetting REVERSE = FlagSetting.of("reverse", "the other way round");
    static final TextSetting PART = TextSetting.of("part", "part", "", 8, "which part");
    static final NumberSetting LAPS =
            NumberSetting.of("laps", "laps", 0, 9, 1, "how many laps").steady("a cue has one number of laps");
    static final FileSetting FILE = FileSetting.of("file", "PNG", "which picture");

    private final String name;
    final List<Canvas> canvases = new ArrayList<>();
    final List<Settings> settings = new ArrayList<>();

    Probe() {
        this("probe");
    }

    Probe(String name) {
        this.name = name;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String summary() {
        return "nothing";
    }

    @Override
    public String formula() {
        return "";
    }

    @Override
    public List<Setting<?>> settings() {
        return List.of(SIZE, ARMS, COLOR, PALETTE, EVERY, RISE, FROM, REVERSE, PART, FILE, LAPS);
    }

    @Override
    public boolean usesChance() {
        return true;
    }

    @Override
    public boolean usesOrder() {
        return true;
    }

    @Override
    public Kernel prepare(Settings given, Canvas canvas) throws SettingException {
        if (given.value(REVERSE) && given.value(FROM).equals("centre")) {
            throw new SettingException("reverse", "reverse does not go with from centre", "leave one out");
        }
        if (given.value(ARMS).at(0) == 13) {
            throw new SettingException("size", "size does not go with 13 arms", "");
        }
        for (int member = 0; member < canvas.memberCount(); member++) {
            canvas.part(member, given.value(PART));
        }
        settings.add(given);
        canvases.add(canvas);
        return () -> new Brush() {
            @Override
            public void begin(CueTime time) {}

            @Override
            public void paint(int firstPixel, Patch patch) {
                patch.clear();
            }
        };
    }

    /** The canvases that a cue of this effect gets; its fields are written as in a timeline, without "effect". */
    static List<Canvas> canvases(PixelMap map, String fields) {
        Probe probe = new Probe();
        TestShow.withCue(map, "{\"effect\": \"probe\", " + fields + "}")
                .with(probe)
                .plan();
        return probe.canvases;
    }

    /** The settings that a cue of this effect gets, from the fields of "with". */
    static Settings settings(String with) {
        Probe probe = new Probe();
        TestShow.withCue(
                        "prop,pixel,x,y\na,1,0,0\n", "{\"effect\": \"probe\", \"on\": \"a\", \"with\": {" + with + "}}")
                .with(probe)
                .plan();
        return probe.settings.get(0);
    }
}
