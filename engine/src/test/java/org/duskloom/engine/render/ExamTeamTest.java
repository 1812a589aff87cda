package org.duskloom.engine.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.TestShow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several threads find of every cue what one alone does, which looks at them in their order. */
class ExamTeamTest {
    private static final long ENOUGH = Long.MAX_VALUE / 4;

    /** Six bows of five pixels, the last of which one cue lights that is among the last. */
    private static final PixelMap MAP = Maps.map("prop,pixel,x,y\n"
            + IntStream.range(0, 30)
                    .mapToObj(i -> "bow-" + i / 5 + "," + (i % 5 + 1) + "," + i + ",0\n")
                    .collect(Collectors.joining()));

    /** What was found of all cues, and of the pixels, and how much work that was. */
    private record Found(List<String> cues, List<Integer> passedOver, String lit, long spent) {}

    private static Plan plan(long seed) {
        Random random = new Random(seed);
        List<String> layers = new ArrayList<>();
        for (int layer = 0; layer < 3; layer++) {
            List<String> cues = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                cues.add(i == 170 ? cue(5, 5, "0.5", random) : cue(random, i < 140 ? 5 : 6));
            }
            String how = layer == 1 ? "\"mask\": true, " : "";
            layers.add("{" + how + "\"cues\": [\n" + String.join(",\n", cues) + "]}");
        }
        return TestShow.of(MAP, "\"layers\": [" + String.join(", ", layers) + "]")
                .plan();
    }

    private static String cue(Random random, int bows) {
        int one = random.nextInt(bows);
        int other = random.nextInt(bows);
        boolean dark = one == 5 || other == 5 || random.nextInt(4) == 0;
        return cue(one, other, dark ? "0" : "0.5", random);
    }

    private static String cue(int one, int other, String light, Random random) {
        return "{\"on\": [\"bow-" + one + "\", \"bow-" + other + "\"], \"effect\": \"light\", \"at\": \""
                + random.nextInt(9000) + "ms\", \"for\": \"" + (25 + random.nextInt(900)) + "ms\", \"with\": {\"r\": "
                + light + ", \"g\": " + light + ", \"b\": 0, \"a\": " + random.nextInt(2) + "}}";
    }

    private static Found found(Plan plan, long mostWork, int threads) {
        PlayedPixels pixels = new PlayedPixels();
        List<CueExam> exams = new ArrayList<>();
        new CueRoles(plan).plays().forEach(plays -> exams.add(new CueExam(plays, pixels.of(plays))));
        CueLight light = new CueLight();
        HiddenCues hiddenCues = new HiddenCues(plan, mostWork);
        try (ExamTeam team = new ExamTeam(exams, light, hiddenCues, threads)) {
            team.look(Progress.SILENT);
            return new Found(
                    exams.stream().map(ExamTeamTest::shown).toList(),
                    team.passedOver().stream().map(exams::indexOf).toList(),
                    light.lit().toString(),
                    hiddenCues.spent());
        }
    }

    private static String shown(CueExam exam) {
        return exam.touchesAnything() + " " + exam.isSeen() + " " + exam.lookedAt() + " " + exam.darkMembers() + " "
                + (exam.touchesAnything() ? exam.firstTouch().frame() : -1);
    }

    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83})
    void findsWhatOneThreadFinds(long seed) {
        Plan plan = plan(seed);
        Found alone = found(plan, ENOUGH, 1);
        assertThat(alone.cues()).hasSizeGreaterThan(500);
        assertThat(alone.cues().stream().filter(cue -> cue.startsWith("true false")))
                .hasSizeGreaterThan(30);
        assertThat(found(plan, ENOUGH, 2)).isEqualTo(alone);
        assertThat(found(plan, ENOUGH, 3)).isEqualTo(alone);
    }

    /** Work runs out before the first cue, and somewhere among those that are looked at together. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.8, 0.95, 1})
    void runsOutOfWorkAtTheSameCue(double share) {
        Plan plan = plan(84);
        long allowed = (long) (share * found(plan, ENOUGH, 1).spent());
        Found alone = found(plan, allowed, 1);
        assertThat(alone.passedOver()).isNotEmpty();
        assertThat(found(plan, allowed, 2)).isEqualTo(alone);
        assertThat(found(plan, allowed, 4)).isEqualTo(alone);
    }

    /** A program that ends in the midst of it must not wait for them. */
    @Test
    void keepsNoProgramFromEnding() {
        List<Thread> helpers = new CopyOnWriteArrayList<>();
        PlayedPixels pixels = new PlayedPixels();
        Plan plan = plan(1);
        List<CueExam> exams = new ArrayList<>();
        new CueRoles(plan).plays().forEach(plays -> exams.add(new CueExam(plays, pixels.of(plays))));
        try (ExamTeam team = new ExamTeam(exams, new CueLight(), new HiddenCues(plan, ENOUGH), 3)) {
            team.look((done, total) -> Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().equals("exam"))
                    .forEach(helpers::add));
        }
        assertThat(helpers).isNotEmpty().allMatch(Thread::isDaemon);
    }
}
