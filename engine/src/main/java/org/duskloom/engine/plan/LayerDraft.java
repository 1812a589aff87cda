package org.duskloom.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;

/**
 * What is painted one over the other into a layer, or into a scene. Scenes are taken apart wherever that makes no
 * difference: a group is kept only where its cues meet and something acts on the whole of them. For one thread.
 */
final class LayerDraft {
    /** When so many pairs of cues were compared, groups are kept: that is always right. */
    private static final long MOST_COMPARED = 5_000_000;

    private final List<Entry> entries = new ArrayList<>();
    /** The cues of the first entries; of how many. */
    private final DraftTimes times = new DraftTimes();

    private int timed;
    private long compared;

    /** What is mixed by itself: a cue, or a group of cues. */
    private static final class Entry {
        private final List<CueDraft> cues;
        private final CueDraft.GroupDraft group;
        private List<PlannedShare> shares = List.of();
        private BlendMode blend;

        Entry(List<CueDraft> cues, CueDraft.GroupDraft group, BlendMode blend) {
            this.cues = List.copyOf(cues);
            this.group = group;
            this.blend = blend;
        }

        boolean isMask() {
            return group != null && group.mask();
        }

        boolean isOverlapping() {
            return group == null && cues.get(0).body().canvases().overlapping();
        }

        void mix(BlendMode word, List<PlannedShare> more) {
            blend = word;
            if (!more.isEmpty()) {
                shares = Stream.concat(shares.stream(), more.stream()).toList();
            }
            if (group != null) {
                group.mix(word, more);
            }
        }
    }

    /** Paints a cue over what is there. */
    void add(CueDraft cue) {
        entries.add(new Entry(List.of(cue), null, cue.body().blend()));
    }

    /**
     * Paints a whole over what is there.
     *
     * @param whole what is mixed with each other first
     * @param shares how much of it is seen; none for all
     */
    void add(LayerDraft whole, BlendMode blend, boolean mask, List<PlannedShare> shares) {
        boolean plain = blend == BlendMode.NORMAL && shares.isEmpty() && !mask;
        if (plain && (whole.isNormal() || !meets(whole))) {
            entries.addAll(whole.entries);
        } else if (!mask && !whole.meetsItself()) {
            whole.entries.forEach(entry -> entry.mix(blend, shares));
            entries.addAll(whole.entries);
        } else if (!whole.entries.isEmpty()) {
            entries.add(whole.asGroup(blend, mask, shares));
        }
    }

    /** The cues in the order of painting. */
    List<PlannedCue> planned() {
        List<PlannedCue> planned = new ArrayList<>();
        for (Entry entry : entries) {
            for (CueDraft cue : entry.cues) {
                planned.add(planned(entry, cue));
            }
        }
        return planned;
    }

    private static PlannedCue planned(Entry entry, CueDraft cue) {
        List<PlannedGroup> groups = cue.groups().isEmpty()
                ? List.of()
                : cue.groups().stream().map(CueDraft.GroupDraft::planned).toList();
        return entry.group == null
                ? new PlannedCue(cue.body().mixed(entry.blend, entry.shares), groups)
                : new PlannedCue(cue.body(), groups);
    }

    private Entry asGroup(BlendMode blend, boolean mask, List<PlannedShare> shares) {
        CueDraft.GroupDraft group = new CueDraft.GroupDraft(blend, mask);
        group.mix(blend, shares);
        List<CueDraft> all = new ArrayList<>();
        for (Entry entry : entries) {
            for (CueDraft cue : entry.cues) {
                CueDraft inside = entry.group == null ? cue.mixed(entry.blend, entry.shares) : cue;
                inside.enclose(group);
                all.add(inside);
            }
        }
        return new Entry(all, group, blend);
    }

    private boolean isNormal() {
        return entries.stream().allMatch(entry -> entry.blend == BlendMode.NORMAL && !entry.isMask());
    }

    private boolean meets(LayerDraft other) {
        for (; timed < entries.size(); timed++) {
            entries.get(timed).cues.forEach(times::add);
        }
        return other.entries.stream()
                .flatMap(entry -> entry.cues.stream())
                .anyMatch(cue -> meets(cue, times.near(cue)));
    }

    private boolean meets(CueDraft cue, List<CueDraft> near) {
        compared += near.size();
        return compared > MOST_COMPARED || near.stream().anyMatch(cue::meets);
    }

    /** A cue of an entry, for the search for pairs that meet. */
    private record Owned(CueDraft cue, Entry entry) {}

    private boolean meetsItself() {
        if (entries.stream().anyMatch(entry -> entry.isMask() || entry.isOverlapping())) {
            return true;
        }
        List<Owned> byStart = entries.stream()
                .flatMap(entry -> entry.cues.stream().map(cue -> new Owned(cue, entry)))
                .sorted(Comparator.comparingLong(owned -> owned.cue().firstFrame()))
                .toList();
        List<Owned> running = new ArrayList<>();
        for (Owned next : byStart) {
            running.removeIf(
                    owned -> owned.cue().endFrameExclusive() <= next.cue().firstFrame());
            compared += running.size();
            if (compared > MOST_COMPARED
                    || running.stream()
                            .anyMatch(owned ->
                                    owned.entry() != next.entry() && owned.cue().meets(next.cue()))) {
                return true;
            }
            running.add(next);
        }
        return false;
    }
}
