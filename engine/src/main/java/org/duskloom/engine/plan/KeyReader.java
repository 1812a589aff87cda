package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.duskloom.engine.color.ColorMix;
import org.duskloom.engine.color.LinearColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.effect.ColorKey;
import org.duskloom.engine.effect.ColorTrack;
import org.duskloom.engine.effect.NumberKey;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.NumberTrack;
import org.duskloom.engine.effect.PaletteKey;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Easing;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.timeline.KeyFields;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.Values;

/**
 * Reads values that may move: a plain value, or {@code {"keys": [["0s", 0.2], ["1s", 1, "ease-in-out"]]}}, times from
 * the start of the cue. The easing of a key is the way to it from the key before; {@code linear} where none is written.
 */
final class KeyReader {
    private final TimeContext times;
    private final Played cue;
    private final List<Runnable> warnings;
    private final Problems problems;
    private final CurveBook curves;

    /**
     * A reader.
     *
     * @param times what the words in lengths of time refer to
     * @param cue whose values are read, by the clock of the show
     * @param curves what numbers may follow
     * @param warnings takes what is to be said if nothing is wrong
     */
    KeyReader(TimeContext times, Played cue, CurveBook curves, Problems problems, List<Runnable> warnings) {
        this.curves = curves;
        this.times = times;
        this.cue = cue;
        this.warnings = warnings;
        this.problems = problems;
    }

    /** A number that may move. */
    Optional<NumberTrack> number(NumberSetting setting, Node node, String what) {
        if (!(node instanceof ObjectNode)) {
            OptionalDouble plain = plain(setting, node, what);
            return plain.isPresent() ? Optional.of(NumberTrack.constant(plain.getAsDouble())) : Optional.empty();
        }
        if (FollowReader.isFollowing(node)) {
            return new FollowReader(curves, times, cue.at(), problems)
                    .read(node, what, (value, each) -> plain(setting, value, each));
        }
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(node, KeyFields.NUMBER, what, problems).orElseThrow();
        List<NumberKey> keys = new ArrayList<>();
        for (Key key : keys(fields, what)) {
            OptionalDouble value = plain(setting, key.value(), "a key of " + what);
            value.ifPresent(number -> keys.add(new NumberKey(key.time().seconds(), number, key.easing())));
        }
        return problems.errorCount() > errorsBefore || keys.isEmpty()
                ? Optional.empty()
                : Optional.of(NumberTrack.keyed(keys));
    }

    /** A colour that may move. */
    Optional<ColorTrack> color(Node node, String what) {
        if (refusesToFollow(node, what)) {
            return Optional.empty();
        }
        if (!(node instanceof ObjectNode)) {
            return Values.color(node, what, problems).map(ColorTrack::constant);
        }
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(node, KeyFields.COLOR, what, problems).orElseThrow();
        ColorMix mix = fields.value(KeyFields.MIX);
        List<ColorKey> keys = new ArrayList<>();
        for (Key key : keys(fields, what)) {
            Optional<LinearColor> value = Values.color(key.value(), "a key of " + what, problems);
            value.ifPresent(color -> keys.add(new ColorKey(key.time().seconds(), color, key.easing())));
        }
        return problems.errorCount() > errorsBefore ? Optional.empty() : Optional.of(ColorTrack.keyed(keys, mix));
    }

    /**
     * A palette that may move.
     *
     * @param plain reads one that does not move; the text says what it is
     */
    Optional<PaletteTrack> palette(Node node, String what, BiFunction<Node, String, Optional<Palette>> plain) {
        if (refusesToFollow(node, what)) {
            return Optional.empty();
        }
        if (!isKeyed(node)) {
            return plain.apply(node, what).map(PaletteTrack::constant);
        }
        int errorsBefore = problems.errorCount();
        Fields fields = Fields.of(node, KeyFields.COLOR, what, problems).orElseThrow();
        ColorMix mix = fields.value(KeyFields.MIX);
        List<PaletteKey> keys = new ArrayList<>();
        for (Key key : keys(fields, what)) {
            Optional<Palette> value = plain.apply(key.value(), "a key of " + what);
            value.ifPresent(palette -> keys.add(new PaletteKey(key.time().seconds(), palette, key.easing())));
        }
        return problems.errorCount() > errorsBefore ? Optional.empty() : Optional.of(PaletteTrack.keyed(keys, mix));
    }

    private boolean refusesToFollow(Node node, String what) {
        boolean follows = node instanceof ObjectNode object
                && object.value(KeyFields.FOLLOW.name()).isPresent();
        if (follows) {
            problems.error(
                    node.location(),
                    what + " cannot follow the music",
                    "only numbers can: let \"opacity\" follow, or where there are several colours what goes through them");
        }
        return follows;
    }

    /** Whether a value is written as keys. */
    static boolean isKeyed(Node node) {
        return node instanceof ObjectNode object
                && object.fields().stream().anyMatch(field -> field.name().equals(KeyFields.KEYS.name()));
    }

    private OptionalDouble plain(NumberSetting setting, Node node, String what) {
        if (!setting.isWhole()) {
            return Expected.number(node, what, setting.min(), setting.max(), problems);
        }
        var whole = Expected.whole(node, what, (long) setting.min(), (long) setting.max(), problems);
        return whole.isPresent() ? OptionalDouble.of(whole.getAsLong()) : OptionalDouble.empty();
    }

    private List<Key> keys(Fields fields, String what) {
        Optional<List<Node>> items = fields.given(KeyFields.KEYS).map(ListNode::items);
        List<Key> keys = new ArrayList<>();
        for (Node item : items.orElse(List.of())) {
            Optional<Key> key = key(item, what);
            if (key.isPresent() && !keys.isEmpty()) {
                requireLater(keys.get(keys.size() - 1), key.get(), what);
            }
            key.ifPresent(keys::add);
        }
        keys.stream()
                .filter(key -> key.time().compareTo(cue.length()) > 0)
                .findFirst()
                .ifPresent(key -> warnings.add(() -> warnOfLate(key, what)));
        return keys;
    }

    private Optional<Key> key(Node node, String what) {
        Optional<List<Node>> parts =
                Expected.list(node, "a key of " + what, problems).map(ListNode::items);
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        int size = parts.get().size();
        if (size < 2 || size > 3) {
            problems.error(
                    node.location(),
                    "a key of " + what + " has " + size + " instead of 2 or 3 values",
                    "write a time, a value and perhaps an easing, such as [\"1s\", 0.5, \"ease-in-out\"]");
            return Optional.empty();
        }
        Node timeNode = parts.get().get(0);
        Optional<ExactTime> time = Values.length(timeNode, "the time of a key of " + what, times, problems)
                .map(lapse -> lapse.from(cue.at()));
        Optional<Easing> easing = size == 2
                ? Optional.of(Easing.LINEAR)
                : Values.easing(parts.get().get(2), "the easing of a key of " + what, problems);
        return time.isEmpty() || easing.isEmpty()
                ? Optional.empty()
                : Optional.of(new Key(timeNode, time.get(), parts.get().get(1), easing.get()));
    }

    private void warnOfLate(Key key, String what) {
        problems.warn(
                key.at().location(),
                "a key of " + what + " at " + key.time() + " is never reached: the cue lasts " + cue.length(),
                "times of keys count from the start of the cue");
    }

    private void requireLater(Key before, Key key, String what) {
        if (key.time().compareTo(before.time()) < 0) {
            problems.error(
                    key.at().location(),
                    "a key of " + what + " at " + key.time() + " stands after one at " + before.time(),
                    "list the keys by time");
        }
    }

    /** A key as written. */
    private record Key(Node at, ExactTime time, Node value, Easing easing) {}
}
