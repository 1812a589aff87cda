package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.TimeContext;

/** Reads a timeline from its JSON tree. */
public final class TimelineReader {
    /** What the field {@code duskloom} of a timeline must say. */
    public static final String FORMAT = "timeline/1";

    /** How many frames a timeline may have: 24 hours at 1000 a second. */
    static final long MOST_FRAMES = 86_400_000L;

    private static final String WHAT = "the timeline";
    private static final FrameRate USUAL_RATE = FrameRate.of(40);
    private static final ExactTime PLACEHOLDER_LENGTH = ExactTime.ofSeconds(86_400);

    private final LabelFiles tracks;
    private final Problems problems;

    private TimelineReader(LabelFiles tracks, Problems problems) {
        this.tracks = tracks;
        this.problems = problems;
    }

    /** Reads a timeline that names no label tracks. */
    public static Optional<Timeline> read(Node root, Problems problems) {
        return read(root, LabelFiles.NONE, problems);
    }

    /**
     * Reads a timeline.
     *
     * @param root the whole file
     * @param tracks reads the label tracks that it names
     * @param problems where errors and warnings go; all of them, not only the first
     * @return the timeline as far as it could be read, so that what it names can be checked in the same run: cues with
     *     errors stand apart; nothing if it is not clear where its pixels come from
     */
    public static Optional<Timeline> read(Node root, LabelFiles tracks, Problems problems) {
        return Fields.of(root, TimelineFields.TIMELINE, WHAT, problems)
                .flatMap(new TimelineReader(tracks, problems)::bound);
    }

    private Optional<Timeline> bound(Fields fields) {
        int errorsBefore = problems.errorCount();
        fields.given(TimelineFields.FORMAT);
        String title = fields.given(TimelineFields.TITLE).map(TextNode::value).orElse("");
        Optional<PixelSource> pixels = pixels(fields);
        FrameRate rate = fields.node(TimelineFields.RATE).map(this::rate).orElse(USUAL_RATE);
        TimeContext plain = TimeContext.NONE.withRate(rate);
        MusicReader music = new MusicReader(fields, plain, tracks, problems);
        Optional<SoundSource> sound = music.sound();
        ExactTime soundStarts = sound.map(SoundSource::starts).orElse(ExactTime.ZERO);
        TimeContext times = inBeats(plain, music, soundStarts);
        ExactTime length = length(fields, rate, times);
        long seed = fields.value(TimelineFields.SEED);
        Map<String, NamedPalette> palettes = palettes(fields);
        LookBook looks = looks(fields);
        SceneBook book = new SceneBook(fields.given(TimelineFields.SCENES).orElse(List.of()), times, length, problems);
        CueContext context = new CueContext(WHAT, times, length, book, problems);
        Map<String, InstantNames.Marker> markers = music.markers(soundStarts, context);
        CueContext marked = music.lacksMarkers() ? context.withFaultyMarks() : context;
        LayersReader.Read read = new LayersReader(looks, marked)
                .read(fields.given(TimelineFields.LAYERS).map(ListNode::items).orElse(List.of()), markers);
        List<Fields> empty = new ArrayList<>(read.empty());
        Map<String, Scene> scenes =
                SceneNesting.workOut(book.read(looks, times, problems, empty), read.layers(), problems);
        looks.checkUntaken(problems);
        if (problems.errorCount() == errorsBefore) {
            warnOfIdle(looks, book, empty);
        }
        return pixels.map(source -> new Timeline(
                title,
                source,
                rate,
                length,
                seed,
                sound,
                markerTimes(markers),
                palettes,
                new Scenes(scenes, times.isEven() ? Optional.empty() : Optional.of(anew(book, looks, times))),
                read.layers(),
                looks.untakenSettings(),
                marked.times().withMarks(read.named())));
    }

    /** With the beats of the music, if it has any. */
    private static TimeContext inBeats(TimeContext plain, MusicReader music, ExactTime soundStarts) {
        return music.beats(soundStarts)
                .map(plain::withBeats)
                .orElseGet(() -> music.saysBeats() ? plain.withFaultyBeats() : plain);
    }

    private void warnOfIdle(LookBook looks, SceneBook book, List<Fields> emptyLayers) {
        looks.warnOfUnused(problems);
        book.warnOfUnused(problems);
        emptyLayers.forEach(layer ->
                problems.warn(layer.location(), layer.what() + " has no cues", "remove it, or put cues in it"));
    }

    private ExactTime length(Fields fields, FrameRate rate, TimeContext times) {
        Optional<ExactTime> length = fields.node(TimelineFields.LENGTH)
                .flatMap(node -> Values.timeAboveZero(node, fields.label(TimelineFields.LENGTH), times, problems));
        length.ifPresent(time -> checkFrameCount(rate, time, fields));
        return length.orElse(PLACEHOLDER_LENGTH);
    }

    private Optional<PixelSource> pixels(Fields fields) {
        Optional<TextNode> display = fields.given(TimelineFields.DISPLAY);
        Optional<TextNode> map = fields.given(TimelineFields.MAP);
        Optional<Node> groups = fields.node(TimelineFields.GROUPS);
        if (fields.has(TimelineFields.DISPLAY) == fields.has(TimelineFields.MAP)) {
            return Optional.empty();
        }
        if (display.isPresent() && groups.isPresent()) {
            problems.error(
                    groups.get().location(), "\"groups\" stand beside a \"display\"", "move them into the display");
        }
        return display.map(file -> new PixelSource(PixelSource.Kind.DISPLAY, file, Optional.empty()))
                .or(() -> map.map(file -> new PixelSource(PixelSource.Kind.MAP, file, groups)));
    }

    private FrameRate rate(Node node) {
        String what = "\"rate\" of the timeline";
        if (!(node instanceof NumberNode) && !(node instanceof TextNode)) {
            Expected.number(node, what, 0, FrameRate.FASTEST, problems);
            return USUAL_RATE;
        }
        try {
            return FrameRate.parse(node instanceof TextNode text ? text.value() : ((NumberNode) node).written());
        } catch (TextFormatException e) {
            problems.error(node.location(), what + ": " + e.getMessage(), e.hint());
            return USUAL_RATE;
        }
    }

    private void checkFrameCount(FrameRate rate, ExactTime length, Fields fields) {
        long frames = rate.firstFrameAtOrAfter(length);
        if (frames > MOST_FRAMES) {
            problems.error(
                    fields.location(TimelineFields.LENGTH),
                    "the timeline has " + frames + " frames",
                    "allowed: up to " + MOST_FRAMES + "; shorten it or lower the rate");
        }
    }

    /** Those with errors are black, so that a cue that names one does not give rise to another error. */
    private Map<String, NamedPalette> palettes(Fields fields) {
        Map<String, NamedPalette> palettes = new LinkedHashMap<>();
        for (Field field : fields.given(TimelineFields.PALETTES).orElse(List.of())) {
            Palette palette = PaletteReader.read(field.value(), "palette " + Quoted.of(field.name()), problems)
                    .orElseGet(() -> Palette.evenly(List.of(LinearColor.BLACK), PaletteStyle.SMOOTH));
            palettes.put(field.name(), new NamedPalette(field.nameLocation(), palette));
        }
        return palettes;
    }

    private static Map<String, ExactTime> markerTimes(Map<String, InstantNames.Marker> markers) {
        Map<String, ExactTime> times = new LinkedHashMap<>();
        markers.forEach((name, marker) -> marker.time().ifPresent(time -> times.put(name, time)));
        return times;
    }

    private static Scenes.Reader anew(SceneBook book, LookBook looks, TimeContext times) {
        return (name, start, found) -> book.read(name, start, looks, times, found, new ArrayList<>());
    }

    private LookBook looks(Fields fields) {
        LookBook looks = new LookBook();
        fields.given(TimelineFields.LOOKS).orElse(List.of()).forEach(field -> looks.add(field, problems));
        return looks;
    }
}
