package org.duskloom.engine.render;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.group.Member;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/**
 * Renders some frames of every cue, and warns of what stays dark: cues that paint nothing or are never seen, members
 * that a cue never lights, pixels that no cue lights. Of each cue at least {@value CueExam#LEAST} frames are looked at,
 * if it has as many and not everything is known earlier. Before something is called dark all are looked at, up to
 * {@value CueExam#MOST}, fewer on a stage of many pixels. Of cues among hundreds of others on the same pixels not all
 * are asked whether they are hidden, which is said: see {@link HiddenCues}.
 */
public final class DarkSearch {
    private static final String SEVERAL = "the cues over it";

    private static final int MOST_THREADS = 4;

    private final Plan plan;
    private final Problems problems;
    private final int threads;
    private final HiddenCues hiddenCues;
    private final CueLight light = new CueLight();
    private final List<CueExam> exams = new ArrayList<>();

    private DarkSearch(Plan plan, Problems problems, long mostWork, int threads) {
        this.plan = plan;
        this.problems = problems;
        this.threads = threads;
        this.hiddenCues = new HiddenCues(plan, mostWork);
    }

    /**
     * Looks through a show.
     *
     * @param map its pixels
     * @param mapLocation where the show names them: pixels that stay dark are told of there
     * @param problems where the warnings go
     * @param progress is told of the frames that are looked at at least
     */
    public static void warn(Plan plan, PixelMap map, Location mapLocation, Problems problems, Progress progress) {
        int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        warn(plan, map, mapLocation, problems, progress, HiddenCues.MOST_WORK, threads);
    }

    /** The same with so much of {@link FramePainter#work} for cues that others hide, on so many threads. */
    static void warn(
            Plan plan,
            PixelMap map,
            Location mapLocation,
            Problems problems,
            Progress progress,
            long mostWork,
            int threads) {
        DarkSearch search = new DarkSearch(plan, problems, mostWork, threads);
        search.lookAtCues(progress);
        search.exams.forEach(search::warnOf);
        boolean complete = search.lookForDarkPixels();
        BitSet played = new BitSet();
        search.exams.forEach(exam -> exam.addPixelsTo(played));
        new DarkPixels(map, search.light.lit(), played).warn(mapLocation, complete, problems);
    }

    private void lookAtCues(Progress progress) {
        PlayedPixels pixels = new PlayedPixels();
        new CueRoles(plan).plays().forEach(each -> exams.add(new CueExam(each, pixels.of(each))));
        try (ExamTeam team = new ExamTeam(exams, light, hiddenCues, threads)) {
            team.look(progress);
            List<CueExam> passedOver = team.passedOver();
            passedOver.stream().findFirst().ifPresent(first -> warnOfHaste(first, passedOver.size()));
        }
    }

    private void warnOfHaste(CueExam first, int count) {
        String others = count == 1 ? "" : ", nor of " + Counted.of(count - 1, "other cue");
        problems.warn(
                first.plays().get(0).cue().cue().location(),
                "so many cues play at once that it was not found out whether this one is hidden" + others,
                "it is no error; look at a strip of these moments");
    }

    /** Looks longer at cues that may light what is dark so far; whether there is nothing more to be looked at. */
    private boolean lookForDarkPixels() {
        boolean complete = true;
        BitSet dark = new BitSet();
        dark.set(0, plan.pixelCount());
        dark.andNot(light.lit());
        for (CueExam exam : exams) {
            if (!exam.plays().get(0).isMask() && exam.hasOneOf(dark)) {
                exam.lookFor(light);
                complete &= exam.lookedAt() == exam.frameCount();
                dark.andNot(light.lit());
            }
        }
        return complete;
    }

    private void warnOf(CueExam exam) {
        Location place = exam.plays().get(0).cue().cue().location();
        if (!exam.touchesAnything()) {
            problems.warn(
                    place,
                    "the cue paints nothing in " + frames(exam),
                    "look at its opacity, its fades and the alpha of its colours");
            return;
        }
        List<Member> dark = exam.darkMembers();
        if (!dark.isEmpty()) {
            problems.warn(
                    place,
                    dark.size() + " of the " + Counted.of(exam.memberCount(), "member") + " get no light in "
                            + frames(exam) + ": "
                            + Quoted.few(dark.stream().map(Member::name).toList()),
                    "leave them out of \"on\", or change what the effect leaves dark");
        }
        if (!exam.isSeen()) {
            warnOfUnseen(exam, place);
        }
    }

    private void warnOfUnseen(CueExam exam, Location place) {
        CueExam.Sight sight = exam.firstTouch();
        if (hiddenCues.isSeenUncovered(sight.play(), sight.frame())) {
            problems.warn(
                    place,
                    "the cue is hidden by " + cover(exam) + " in " + frames(exam),
                    "move it over that, or give that one a \"blend\" such as \"screen\"");
        } else {
            problems.warn(
                    place,
                    "the cue changes nothing in " + frames(exam),
                    "it paints black where it is dark, or what is there without it");
        }
    }

    /** What hides it wherever that was looked for, if it is one cue. */
    private String cover(CueExam exam) {
        Set<Optional<Location>> covers = exam.samples().stream()
                .filter(sight -> hiddenCues.isSeenUncovered(sight.play(), sight.frame()))
                .map(sight -> hiddenCues
                        .coveredBy(sight.play(), sight.frame())
                        .map(cue -> cue.cue().location()))
                .collect(Collectors.toSet());
        return covers.size() == 1
                ? covers.iterator().next().map(place -> "the cue at " + place).orElse(SEVERAL)
                : SEVERAL;
    }

    private static String frames(CueExam exam) {
        return exam.lookedAt() == exam.frameCount()
                ? "all of its " + Counted.of(exam.frameCount(), "frame")
                : "all " + exam.lookedAt() + " frames looked at, of its " + exam.frameCount();
    }
}
