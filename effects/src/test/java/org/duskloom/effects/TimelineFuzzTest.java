package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.MapReader;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowFiles;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.timeline.TimelineReader;

/** Any bytes at all as timelines, compiled and painted with all effects on two small props. */
class TimelineFuzzTest {
    private static final GroupTree GROUPS = groups();
    private static final EffectRegistry EFFECTS = EffectRegistry.installed();
    private static final Path NOWHERE = Path.of("/nowhere/show.json");
    private static final long LAST_FRAME = 1_000;

    private static GroupTree groups() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 1; pixel <= 4; pixel++) {
            csv.append("daisy,")
                    .append(pixel)
                    .append(',')
                    .append(pixel % 2)
                    .append(',')
                    .append(pixel / 2)
                    .append('\n');
            csv.append("fence,").append(pixel).append(',').append(9 * pixel).append(",9\n");
        }
        Problems problems = new Problems();
        return GroupTree.of(text(csv.toString(), problems)
                .flatMap(source -> MapReader.read(source, problems))
                .orElseThrow());
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({
        "at",
        "for",
        "until",
        "on",
        "effect",
        "with",
        "fade",
        "layers",
        "cues",
        "palette",
        "repeat",
        "scenes",
        "scene",
        "music",
        "looks",
        "look",
        "keys",
        "ease",
        "spread",
        "order",
        "mask",
        "blend",
        "opacity",
        "sweep",
        "chase",
        "twinkle",
        "drift",
        "festoon",
        "gauge",
        "lettering",
        "morph",
        "pile",
        "radiate",
        "shower",
        "spin",
        "swell",
        "wash",
        "follow",
        "hits",
        "4beats",
        "2bars",
        "1e308",
        "-1",
        "0",
        "*",
        "daisy",
        "fence/1"
    })
    void timeline(byte[] input) throws IOException {
        Problems problems = new Problems();
        Optional<Plan> plan = text(new String(input, StandardCharsets.UTF_8), problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> TimelineReader.read(root, file -> track(problems), problems))
                .map(read -> new Show(read, GROUPS, Optional.empty(), ShowFiles.beside(NOWHERE)))
                .flatMap(show -> PlanCompiler.compile(show, EFFECTS, problems));
        assertThat(plan.isPresent() || problems.hasErrors()).isTrue();
        if (plan.isPresent() && !problems.hasErrors()) {
            paint(new FrameRenderer(plan.get()));
        }
    }

    private static void paint(FrameRenderer renderer) throws IOException {
        long frames = renderer.info().showFrames();
        byte[] rgb = new byte[3 * 8];
        try (FrameReader reader = renderer.reader()) {
            reader.read(0, rgb, 0);
            reader.read(Math.min(frames - 1, LAST_FRAME), rgb, 0);
            reader.read(frames / 2, rgb, 0);
        }
    }

    private static Optional<LabelTrack> track(Problems problems) {
        return text("0\t0\tbar\n0.5\t0.5\tbeat\n1\t1\tbeat\n1.6\t1.6\tbar\n2\t2\tverse\n", problems)
                .flatMap(source -> LabelTrack.read(source, problems));
    }

    private static Optional<SourceText> text(String text, Problems problems) {
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "show.json", problems);
    }
}
