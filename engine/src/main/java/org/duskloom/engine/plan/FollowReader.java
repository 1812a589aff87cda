package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.effect.LevelCurve;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.timeline.Followed;
import org.duskloom.engine.timeline.KeyFields;
import org.duskloom.engine.timeline.Values;

/** Reads numbers that follow the music: {@code {"follow": "low", "from": 0.1, "to": 1}}. */
final class FollowReader {
    private static final ExactTime USUAL_ATTACK = ExactTime.ofMilliseconds(20);
    private static final ExactTime USUAL_RELEASE = ExactTime.ofMilliseconds(250);

    private final CurveBook curves;
    private final TimeContext times;
    private final ExactTime start;
    private final Problems problems;

    /** @param start of the cue, from which beats of attack and release count */
    FollowReader(CurveBook curves, TimeContext times, ExactTime start, Problems problems) {
        this.curves = curves;
        this.times = times;
        this.start = start;
        this.problems = problems;
    }

    /** Whether a value is written as one that follows. */
    static boolean isFollowing(Node node) {
        return node instanceof ObjectNode object
                && object.value(KeyFields.KEYS.name()).isEmpty()
                && object.fields().stream()
                        .anyMatch(field -> KeyFields.FOLLOWING.names().contains(field.name()));
    }

    /** Reads a number as it may be written for the setting. */
    interface Plain {
        OptionalDouble number(Node node, String what);
    }

    Optional<NumberTrack> read(Node node, String what, Plain plain) {
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(node, KeyFields.FOLLOWING, what, problems).orElseThrow();
        Optional<Followed> followed = fields.given(KeyFields.FOLLOW);
        OptionalDouble from = number(fields, KeyFields.FROM, plain);
        OptionalDouble to = number(fields, KeyFields.TO, plain);
        ExactTime attack = length(fields, KeyFields.ATTACK).orElse(USUAL_ATTACK);
        ExactTime release = length(fields, KeyFields.RELEASE).orElse(USUAL_RELEASE);
        double floor = fields.value(KeyFields.FLOOR);
        Optional<LevelCurve> curve = followed.flatMap(word -> word == Followed.BEAT
                ? beat(fields)
                : sound(word, new CurveBook.Smoothing(floor, attack, release), fields));
        return curve.isEmpty() || problems.errorCount() > errorsBefore
                ? Optional.empty()
                : Optional.of(NumberTrack.following(curve.get(), from.orElseThrow(), to.orElseThrow()));
    }

    private static OptionalDouble number(Fields fields, DeclaredField<Node> field, Plain plain) {
        return fields.node(field)
                .map(value -> plain.number(value, fields.label(field)))
                .orElse(OptionalDouble.empty());
    }

    private Optional<ExactTime> length(Fields fields, DeclaredField<Node> field) {
        return fields.node(field)
                .flatMap(node -> Values.length(node, fields.label(field), times, problems))
                .map(lapse -> lapse.from(start));
    }

    private Optional<LevelCurve> beat(Fields fields) {
        Optional<LevelCurve> curve = curves.ofBeats();
        if (curve.isEmpty() && !times.beatsFaulty()) {
            problems.error(
                    fields.location(KeyFields.FOLLOW),
                    fields.label(KeyFields.FOLLOW) + " is \"beat\", but the timeline has no \"beats\"",
                    "say where they lie: \"beats\": {\"tempo\": 120}, or the name of a label track");
        }
        for (DeclaredField<?> field : List.of(KeyFields.FLOOR, KeyFields.ATTACK, KeyFields.RELEASE)) {
            if (fields.has(field)) {
                problems.error(
                        fields.location(field),
                        fields.label(field) + " stands beside \"follow\": \"beat\", which has no level to smooth",
                        "leave it out");
            }
        }
        return curve;
    }

    private Optional<LevelCurve> sound(Followed word, CurveBook.Smoothing smoothing, Fields fields) {
        if (!curves.hasSound()) {
            problems.error(
                    fields.location(KeyFields.FOLLOW),
                    fields.label(KeyFields.FOLLOW) + " is \"" + word.word() + "\", but the timeline has no \"sound\"",
                    "name it: \"sound\": {\"file\": \"song.wav\"}");
            return Optional.empty();
        }
        SoundBand band = switch (word) {
            case LOW -> SoundBand.LOW;
            case MID -> SoundBand.MID;
            case HIGH -> SoundBand.HIGH;
            case ALL, BEAT -> SoundBand.ALL;
        };
        return curves.ofSound(band, smoothing);
    }
}
