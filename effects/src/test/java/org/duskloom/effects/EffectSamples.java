package org.duskloom.effects;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.preview.ContactStrip;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;

/**
 * Draws contact strips of cues, to look at: whether they please, no assertion can say. Arguments: a pixel map, a file
 * with lines of "name frames-between-moments cue", and the folder for the pictures.
 */
final class EffectSamples {
    private static final int MOMENTS = 8;

    private EffectSamples() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of(arguments[2]));
        for (String line : Files.readAllLines(Path.of(arguments[1]))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split(" ", 3);
                draw(Path.of(arguments[0]), parts[0], Integer.parseInt(parts[1]), parts[2], folder);
            }
        }
    }

    private static void draw(Path map, String name, int step, String cue, Path folder)
            throws IOException, InterruptedException {
        Path timeline = Files.writeString(folder.resolve(name + ".json"), """
                {"duskloom": "timeline/1", "map": "%s", "rate": 40, "length": "60s",
                 "layers": [{"name": "only", "cues": [{"at": "0s", "for": "60s", %s}]}]}
                """.formatted(map.toAbsolutePath(), cue));
        Problems problems = new Problems();
        Show show = ShowReader.read(timeline, problems)
                .orElseThrow(() -> new IOException(problems.inFileOrder().toString()));
        Plan plan = PlanCompiler.compile(show, EffectRegistry.installed(), problems)
                .orElseThrow(() -> new IOException(problems.inFileOrder().toString()));
        long[] frames = LongStream.range(0, MOMENTS).map(i -> i * step).toArray();
        StagedFile file = StagedFile.open(folder.resolve(name + ".png"), IfExists.REPLACE);
        StripOptions options = new StripOptions(OptionalInt.of(4), OptionalInt.of(380), false);
        try (ContactStrip strip = new ContactStrip(file, scene(cue, show), frames, options)) {
            new FrameRun(new FrameRenderer(plan), FrameList.of(frames), 1).into(strip, Progress.SILENT);
        }
    }

    private static PreviewScene scene(String title, Show show) {
        PixelMap map = show.map();
        List<PropSpan> props = map.props().stream()
                .map(prop -> new PropSpan(prop.name(), prop.firstPixel(), prop.pixelCount()))
                .toList();
        return new PreviewScene(
                title,
                IntStream.range(0, map.pixelCount()).mapToDouble(map.stage()::x).toArray(),
                IntStream.range(0, map.pixelCount()).mapToDouble(map.stage()::y).toArray(),
                props,
                frame -> frame / 40.0);
    }
}
