package org.duskloom.engine.timeline;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Tempo;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;

/** Reads what a timeline says of its music. */
final class MusicReader {
    private final Fields timeline;
    private final TimeContext times;
    private final LabelFiles tracks;
    private final Problems problems;
    private final Set<String> tracksRead = new HashSet<>();
    private boolean lacksMarkers;

    /** @param times without beats */
    MusicReader(Fields timeline, TimeContext times, LabelFiles tracks, Problems problems) {
        this.timeline = timeline;
        this.times = times;
        this.tracks = tracks;
        this.problems = problems;
    }

    /** The sound. */
    Optional<SoundSource> sound() {
        return timeline.given(MusicFields.SOUND).flatMap(sound -> {
            ExactTime starts = sound.node(MusicFields.SOUND_STARTS)
                    .filter(node -> countsNoBeats(
                            node, sound.label(MusicFields.SOUND_STARTS), "the beats lie where the sound has them"))
                    .flatMap(node -> Values.timeFrom(
                            node, sound.label(MusicFields.SOUND_STARTS), ExactTime.ZERO, times, problems))
                    .orElse(ExactTime.ZERO);
            return sound.given(MusicFields.SOUND_FILE).map(file -> new SoundSource(file, starts));
        });
    }

    /** The beats; nothing if none are given or something is wrong with them. */
    Optional<Beats> beats(ExactTime soundStarts) {
        Optional<Node> written = timeline.node(MusicFields.BEATS);
        if (written.isPresent() && written.get() instanceof TextNode file) {
            return track(file).flatMap(track -> TrackBeats.of(track, soundStarts, file, problems));
        }
        return written.flatMap(
                        node -> Fields.of(node, MusicFields.BEATS_OBJECT, timeline.label(MusicFields.BEATS), problems))
                .flatMap(fields -> steady(fields, soundStarts));
    }

    /** Beats and markers are mostly of the same track: what mostly is a slip in it is told once. */
    private Optional<LabelTrack> track(TextNode file) {
        Optional<LabelTrack> read = tracks.read(file);
        if (tracksRead.add(file.value())) {
            read.ifPresent(track -> TrackBeats.warnOfCase(track, problems));
        }
        return read;
    }

    /** Whether beats are given, be they right or wrong. */
    boolean saysBeats() {
        return timeline.node(MusicFields.BEATS).isPresent();
    }

    private Optional<Beats> steady(Fields fields, ExactTime soundStarts) {
        Optional<Tempo> tempo = fields.node(MusicFields.TEMPO).flatMap(node -> tempo(node, fields));
        ExactTime first = fields.node(MusicFields.FIRST)
                .filter(node -> countsNoBeats(node, fields.label(MusicFields.FIRST), "beats are counted from it"))
                .flatMap(node -> Values.time(node, fields.label(MusicFields.FIRST), times, problems))
                .orElse(ExactTime.ZERO);
        long bar = fields.value(MusicFields.BAR);
        return tempo.map(found -> Beats.steady(found, soundStarts.plus(first), (int) bar));
    }

    /** What beats hang on cannot be counted in beats. */
    private boolean countsNoBeats(Node node, String what, String reason) {
        if (!(node instanceof TextNode text) || !TimeText.countsMusic(text.value())) {
            return true;
        }
        problems.error(
                node.location(),
                what + " is " + Quoted.of(text.value()) + ", but " + reason,
                "write it in seconds or milliseconds, such as \"350ms\"");
        return false;
    }

    private Optional<Tempo> tempo(Node node, Fields fields) {
        String what = fields.label(MusicFields.TEMPO);
        if (!(node instanceof NumberNode number)) {
            Expected.number(node, what, 1, 1000, problems);
            return Optional.empty();
        }
        try {
            return Optional.of(Tempo.parse(number.written()));
        } catch (TextFormatException e) {
            problems.error(node.location(), what + ": " + e.getMessage(), e.hint());
            return Optional.empty();
        }
    }

    /**
     * The markers by name.
     *
     * @param context times of theirs may count beats
     */
    Map<String, InstantNames.Marker> markers(ExactTime soundStarts, CueContext context) {
        Optional<Node> written = timeline.node(MusicFields.MARKERS);
        if (written.isPresent() && written.get() instanceof TextNode file) {
            Optional<Map<String, InstantNames.Marker>> read =
                    track(file).map(track -> TrackMarkers.of(track, soundStarts, problems));
            lacksMarkers = read.isEmpty();
            return read.orElse(Map.of());
        }
        Map<String, InstantNames.Marker> markers = new LinkedHashMap<>();
        List<Field> fields = written.flatMap(
                        node -> Expected.object(node, timeline.label(MusicFields.MARKERS), problems))
                .map(ObjectNode::fields)
                .orElse(List.of());
        for (Field field : fields) {
            checkName(field);
            markers.put(field.name(), new InstantNames.Marker(context.marker(field), field.nameLocation()));
        }
        return markers;
    }

    /** Whether there are markers that could not be read, so that it is not known what their names are. */
    boolean lacksMarkers() {
        return lacksMarkers;
    }

    /** No time could count from some names, and others stand for something. */
    private void checkName(Field marker) {
        String name = marker.name();
        String what = "the name " + Quoted.of(name) + " of a marker ";
        if (name.isBlank()) {
            problems.error(marker.nameLocation(), what + "is empty", "give it one, such as \"chorus\"");
        } else if (!name.equals(name.strip())) {
            problems.error(
                    marker.nameLocation(), what + "begins or ends with a space", "write " + Quoted.of(name.strip()));
        } else if (name.contains("+")) {
            problems.error(
                    marker.nameLocation(),
                    what + "has a + in it, behind which times count on, as in \"@chorus+2b\"",
                    "write " + Quoted.of(name.replaceAll("\\s*\\+\\s*", " and ").strip()));
        } else if (name.equals(TrackBeats.BEAT) || name.equals(TrackBeats.BAR)) {
            problems.error(
                    marker.nameLocation(),
                    what + "is the word for the " + name + "s of the music",
                    "write " + Quoted.of("the " + name));
        }
    }
}
