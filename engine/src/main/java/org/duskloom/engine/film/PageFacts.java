package org.duskloom.engine.film;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.SceneDrawing;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.time.FrameSpan;
import org.duskloom.engine.timeline.Cue;
import org.duskloom.engine.timeline.Layer;
import org.duskloom.engine.wire.Port;

/**
 * What a page says of a show beside its frames.
 *
 * @param show as read
 * @param seen the global indices of the pixels that are seen, rising
 */
public record PageFacts(Show show, int[] seen) {
    /**
     * As JSON on some lines: {@code title}, {@code rate} [frames, seconds], {@code firstFrame} of the show, {@code
     * step} from frame to frame, {@code frames}, {@code pixels}, {@code spacing} of the pixels and {@code centre} in
     * {@code units}, {@code layers} with cues from a frame to a frame of the show, {@code props} with their parts,
     * {@code ports}. Runs of a part are pairs: the number of a pixel in the prop, from 1, and how many follow each
     * other from there.
     */
    public String json(RunInfo run) {
        JsonText json = new JsonText();
        json.field("title", run.title());
        json.field(
                "rate",
                new JsonText.Inline(
                        "[" + run.rate().numerator() + ", " + run.rate().denominator() + "]"));
        json.field("firstFrame", run.frames().first());
        json.field("step", FrameStep.frames(run.frames()));
        json.field("frames", run.frames().count());
        json.field("pixels", run.pixelCount());
        Positions places = run.pixels().places().orElseThrow();
        json.field("spacing", SceneDrawing.spacing(PreviewScene.of(run)));
        json.field(
                "centre", list(Arrays.stream(PixelTable.centre(places)).boxed().toList()));
        json.field(
                "units", show.display().map(display -> display.units().word()).orElse(""));
        json.field("layers", show.timeline().layers().stream().map(this::layer).toList());
        json.field("props", props(run));
        json.field("ports", list(portNames()));
        return json.end();
    }

    /** What is known of each pixel: see the page's own reader. */
    public byte[] table(RunInfo run) {
        return PixelTable.of(show, run, seen);
    }

    private JsonText.Inline layer(Layer layer) {
        List<JsonText.Inline> cues = layer.cues().stream().map(this::cue).toList();
        return JsonText.object("name", layer.name(), "cues", list(cues));
    }

    private JsonText.Inline cue(Cue cue) {
        FrameSpan span = FrameSpan.of(show.timeline().rate(), cue.at(), cue.seenUntil());
        String name = cue.name().isEmpty() ? cue.effect().value() : cue.name();
        return JsonText.object("name", name, "from", span.firstFrame(), "to", span.endFrameExclusive());
    }

    private List<JsonText.Inline> props(RunInfo run) {
        List<JsonText.Inline> props = new ArrayList<>();
        for (PropSpan span : run.pixels().props()) {
            Prop prop = show.map().prop(span.name()).orElseThrow();
            List<JsonText.Inline> parts = prop.partPaths().stream()
                    .map(path -> JsonText.object("path", path, "runs", runs(prop, path)))
                    .toList();
            props.add(JsonText.object("name", prop.name(), "parts", list(parts)));
        }
        return props;
    }

    private static JsonText.Inline runs(Prop prop, String path) {
        int[] pixels =
                Arrays.stream(prop.part(path).orElseThrow().pixels()).sorted().toArray();
        List<Integer> runs = new ArrayList<>();
        for (int i = 0; i < pixels.length; ) {
            int end = i + 1;
            while (end < pixels.length && pixels[end] == pixels[end - 1] + 1) {
                end++;
            }
            runs.add(pixels[i] + 1);
            runs.add(end - i);
            i = end;
        }
        return list(runs);
    }

    private List<String> portNames() {
        return show.display().stream()
                .flatMap(display -> display.ports().ports().stream())
                .map(Port::name)
                .toList();
    }

    private static JsonText.Inline list(List<?> items) {
        return JsonText.list(items.toArray());
    }
}
