package org.duskloom.engine.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.KindCheck;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.ColorSetting;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.HitsSetting;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;
import org.duskloom.engine.time.Pulse;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.NamedPalette;
import org.duskloom.engine.timeline.PaletteReader;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Values;

/** Turns the settings of cues, as written, into the values that effects ask for. */
final class SettingsReader {
    private static final NumberSetting OPACITY =
            NumberSetting.of("opacity", "share", 0, 1, 1, "how much of the cue is seen");

    private static final NumberTrack OPAQUE = OPACITY.standard();

    private final Show show;
    private final Problems problems;
    private final CurveBook curves;
    private final HitsReader hits;
    private final FirstFaults faults;
    private final Set<String> palettesUsed = new HashSet<>();
    private final List<Runnable> warnings = new ArrayList<>();
    /** Those in which nothing was found wrong. */
    private final Map<PlainSettings, Settings> known = new HashMap<>();
    /** Opacities that do not move. */
    private final Map<Double, NumberTrack> opacities = new HashMap<>();

    /** @param beats of the music */
    SettingsReader(Show show, Optional<FrameBeats> beats, FirstFaults faults, Problems problems) {
        this.show = show;
        this.problems = problems;
        this.faults = faults;
        this.curves = new CurveBook(show, beats, problems);
        this.hits = new HitsReader(show.timeline(), beats, problems);
    }

    /** The settings of a cue; those with errors have their defaults. Equal ones are the same wherever that is cheap. */
    Settings read(Effect effect, Cue cue) {
        Optional<PlainSettings> plain = PlainSettings.of(effect, cue);
        Optional<Settings> before = plain.map(known::get);
        if (before.isPresent()) {
            return before.get();
        }
        int saidBefore = said();
        Settings settings = readAnew(effect, cue);
        if (said() == saidBefore) {
            plain.ifPresent(written -> known.put(written, settings));
        }
        return settings;
    }

    private int said() {
        return problems.errorCount() + problems.warningCount() + warnings.size();
    }

    private Settings readAnew(Effect effect, Cue cue) {
        Map<String, Setting<?>> byName = byName(effect);
        Map<Setting<?>, Object> given = new LinkedHashMap<>();
        KeyReader keys = keys(cue);
        for (Field field : cue.with()) {
            setting(field, effect, byName)
                    .ifPresent(setting -> faults.read(
                                    cue,
                                    field,
                                    () -> value(setting, field.value(), what(setting, effect, field, cue), keys))
                            .ifPresent(value -> given.put(setting, value)));
        }
        for (Field field : cue.changes()) {
            setting(field, effect, byName)
                    .ifPresent(setting -> faults.read(cue, field, () -> changed(setting, field, effect, cue, keys))
                            .ifPresent(value -> given.put(setting, value)));
        }
        return Settings.of(given);
    }

    /** Holds settings that nobody plays against what their effect declares. */
    void check(Effect effect, List<Field> with) {
        Map<String, Setting<?>> byName = byName(effect);
        for (Field field : with) {
            setting(field, effect, byName)
                    .ifPresent(
                            setting -> KindCheck.check(field.value(), setting.kind(), what(setting, effect), problems));
        }
    }

    private static Map<String, Setting<?>> byName(Effect effect) {
        Map<String, Setting<?>> byName = new LinkedHashMap<>();
        effect.settings().forEach(setting -> byName.put(setting.name(), setting));
        return byName;
    }

    private Optional<Setting<?>> setting(Field field, Effect effect, Map<String, Setting<?>> byName) {
        Setting<?> setting = byName.get(field.name());
        if (setting == null) {
            problems.error(
                    field.nameLocation(),
                    "the effect " + effect.name() + " has no setting " + Quoted.of(field.name()),
                    NearestName.hint(field.name(), byName.keySet()));
        }
        return Optional.ofNullable(setting);
    }

    /** What a repeat adds to a setting that is not written, on top of its default. */
    private Optional<?> changed(Setting<?> setting, Field change, Effect effect, Cue cue, KeyReader keys) {
        if (setting instanceof NumberSetting number && change.value() instanceof NumberNode added) {
            NumberNode sum = added.added(number.standard().at(0), 1);
            return value(setting, sum, what(setting, effect, change, cue), keys);
        }
        String given = change.value() instanceof NumberNode
                ? "a number to add, but " + what(setting, effect) + " is none"
                : Expected.shown(change.value());
        problems.error(
                change.nameLocation(),
                "the change of " + Quoted.of(change.name()) + " per repeat is " + given,
                setting instanceof NumberSetting
                        ? "give a number to add to " + setting.standardText()
                                + ", its default, or a list of values to go through"
                        : "give a list of values to go through");
        return Optional.empty();
    }

    /** The opacity of a cue over its time. */
    NumberTrack opacity(Played cue) {
        Node written = cue.opacity().orElse(null);
        if (written == null) {
            return OPAQUE;
        }
        if (isPlainOpacity(written)) {
            return opacities.computeIfAbsent(((NumberNode) written).value(), NumberTrack::constant);
        }
        return keys(cue).number(OPACITY, written, "\"opacity\" of a cue").orElse(OPAQUE);
    }

    /** The opacity that all plays of a cue have; nothing where each may have its own, or something is to be said. */
    Optional<NumberTrack> evenOpacity(Cue first) {
        Node written = first.opacity().orElse(null);
        if (written == null || isPlainOpacity(written)) {
            return Optional.of(opacity(first));
        }
        if (FollowReader.isFollowing(written)) {
            return Optional.empty();
        }
        Problems aside = new Problems();
        List<Runnable> slips = new ArrayList<>();
        Optional<NumberTrack> track = new KeyReader(show.timeline().lengths(), first, curves, aside, slips)
                .number(OPACITY, written, "\"opacity\" of a cue");
        return aside.hasErrors() || aside.warningCount() > 0 || !slips.isEmpty() ? Optional.empty() : track;
    }

    private static boolean isPlainOpacity(Node written) {
        return written instanceof NumberNode number
                && number.value() >= OPACITY.min()
                && number.value() <= OPACITY.max();
    }

    /** Warns of what mostly is a slip: keys that are never reached, palettes that no cue names. */
    void warnOfSlips() {
        warnings.forEach(Runnable::run);
        show.timeline().palettes().forEach((name, palette) -> {
            if (!palettesUsed.contains(name)) {
                problems.warn(palette.location(), "no cue uses the palette " + Quoted.of(name), "");
            }
        });
    }

    private Optional<?> value(Setting<?> setting, Node node, String what, KeyReader keys) {
        if (!setting.moves() && (KeyReader.isKeyed(node) || FollowReader.isFollowing(node))) {
            problems.error(node.location(), what + " cannot move", setting.whyNot());
            return Optional.empty();
        }
        if (setting instanceof NumberSetting number) {
            return keys.number(number, node, what);
        }
        if (setting instanceof ColorSetting) {
            return keys.color(node, what);
        }
        if (setting instanceof PaletteSetting) {
            return keys.palette(node, what, this::palette);
        }
        if (setting instanceof DurationSetting duration) {
            return duration(duration, node, what);
        }
        if (setting instanceof HitsSetting) {
            return Expected.text(node, what, problems).flatMap(text -> hits.read(text, what));
        }
        if (setting instanceof ChoiceSetting choice) {
            return choice.kind().read(node, what, problems);
        }
        if (setting instanceof FlagSetting flag) {
            return flag.kind().read(node, what, problems);
        }
        return setting instanceof TextSetting text ? text(text, node, what) : file(node, what);
    }

    private KeyReader keys(Played cue) {
        return new KeyReader(show.timeline().lengths(), cue, curves, problems, warnings);
    }

    private Optional<Palette> palette(Node node, String what) {
        if (node instanceof TextNode name) {
            NamedPalette named = show.timeline().palettes().get(name.value());
            if (named != null) {
                palettesUsed.add(name.value());
                return Optional.of(named.palette());
            }
            return PaletteNames.color(name, what, show.timeline().palettes().keySet(), problems);
        }
        return PaletteReader.read(node, what, problems);
    }

    private Optional<?> duration(DurationSetting setting, Node node, String what) {
        TimeContext lengths = show.timeline().lengths();
        Optional<Lapse> time = setting.zeroAllowed()
                ? Values.length(node, what, lengths, problems)
                : Values.lengthAboveZero(node, what, lengths, problems);
        return time.map(length -> Optional.of(period(length, (TextNode) node)));
    }

    /** Where it counts beats it follows them, even if these are all as long. */
    private Period period(Lapse length, TextNode written) {
        Optional<TimeText.Count> count =
                TimeText.musicIn(written.value(), show.timeline().lengths());
        return count.map(music -> new Period(
                        music.count().nearest(), music.pulse() == Pulse.BAR ? Period.Unit.BARS : Period.Unit.BEATS))
                .orElseGet(() -> Period.ofSeconds(length.from(ExactTime.ZERO).seconds()));
    }

    private Optional<String> text(TextSetting setting, Node node, String what) {
        Optional<String> text = Expected.text(node, what, problems).map(TextNode::value);
        if (text.isPresent() && text.get().codePointCount(0, text.get().length()) > setting.longest()) {
            problems.error(node.location(), what + " is too long", "allowed: " + setting.range());
            return Optional.empty();
        }
        return text;
    }

    private Optional<Optional<Path>> file(Node node, String what) {
        Optional<TextNode> text = Expected.text(node, what, problems);
        Optional<Path> path = text.flatMap(name -> show.files().locate(name, problems));
        return path.filter(found -> show.files().remember(text.orElseThrow(), found, problems))
                .map(Optional::of);
    }

    /** A number may be another one in each play. */
    private static String what(Setting<?> setting, Effect effect, Field field, Cue cue) {
        return what(setting, effect) + (field.value() instanceof NumberNode ? FirstFaults.in(cue) : "");
    }

    private static String what(Setting<?> setting, Effect effect) {
        return "\"" + setting.name() + "\" of " + effect.name();
    }
}
