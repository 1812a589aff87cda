package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.RawFrameSink;
import org.duskloom.engine.frame.TeeSink;
import org.duskloom.engine.preview.ContactStrip;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.proof.Proof;
import org.duskloom.engine.proof.ProofStep;

/** The files of a proof, all begun before the first frame. */
final class ProofOutputs implements AutoCloseable {
    /** A strip with more panels than this has no room for them; later steps are in the text and the frames only. */
    private static final int MOST_PANELS = 120;

    private static final int PANEL_DOTS = 300;

    private final LoadedDisplay display;
    private final Proof proof;
    private final OutputGroup group;
    private final RawFrameSink raw;
    private final StagedFile manifest;
    private final StagedFile text;
    private final TeeSink all;

    ProofOutputs(LoadedDisplay display, Proof proof, Path folder, IfExists ifExists) throws IOException {
        this.display = display;
        this.proof = proof;
        this.group = new OutputGroup(ifExists);
        try {
            this.raw = new RawFrameSink(
                    open(folder.resolve("frames.rgb")), 0, display.map().pixelCount());
            this.text = open(folder.resolve("steps.txt"));
            ContactStrip strip = strip(open(folder.resolve("strip.png")));
            this.manifest = open(folder.resolve("frames.json"));
            this.all = new TeeSink(List.of(raw, strip));
        } catch (IOException | RuntimeException refused) {
            group.close();
            throw refused;
        }
    }

    /** Paints all steps and makes the files final. */
    void render() throws IOException {
        byte[] rgb = new byte[3 * display.map().pixelCount()];
        long frame = 0;
        for (ProofStep step : proof.steps()) {
            for (int i = 0; i < step.frames(); i++) {
                step.paint(i, rgb);
                all.frame(frame++, rgb);
            }
        }
        all.finish();
        byte[] lines = steps().getBytes(StandardCharsets.UTF_8);
        text.write(lines, 0, lines.length);
        text.finish();
        new FrameManifest(
                        Proof.RATE,
                        raw.frames(),
                        display.map().pixelCount(),
                        raw.sha256Hex(),
                        0,
                        PixelViews.propSpans(display.map()),
                        display.manifestInputs())
                .writeTo(manifest);
        group.publish();
    }

    @Override
    public void close() throws IOException {
        all.close();
        group.close();
    }

    private StagedFile open(Path target) throws IOException {
        display.refuseAsOutput(target);
        return group.open(target);
    }

    /**
     * One panel for each step: a moment in its middle, by which a run has come half of its way. The time that stands under
     * it is the one at which the step begins, as in the text.
     */
    private ContactStrip strip(StagedFile file) throws IOException {
        int panels = Math.min(MOST_PANELS, proof.steps().size());
        long[] moments = new long[panels];
        long[] starts = new long[panels];
        List<String> captions = new ArrayList<>();
        long first = 0;
        for (int i = 0; i < panels; i++) {
            ProofStep step = proof.steps().get(i);
            moments[i] = first + step.frames() / 2;
            starts[i] = first;
            first += step.frames();
            captions.add(step.caption());
        }
        PreviewScene scene = PixelViews.scene(
                "Proof of " + display.file().getFileName(),
                display.map(),
                frame -> Proof.RATE.secondsOf(starts[indexOf(moments, frame)]),
                Optional.of(frame -> captions.get(indexOf(moments, frame))));
        return new ContactStrip(
                file, scene, moments, new StripOptions(OptionalInt.empty(), OptionalInt.of(PANEL_DOTS), false));
    }

    private static int indexOf(long[] moments, long frame) {
        int index = 0;
        while (moments[index] != frame) {
            index++;
        }
        return index;
    }

    private String steps() {
        StringBuilder lines = new StringBuilder(
                "What the proof shows, at " + Proof.RATE + " frames a second.\n"
                        + "The times are those at which the steps begin, here and in strip.png, which shows the middle of each.\n\n");
        long first = 0;
        for (ProofStep step : proof.steps()) {
            String time = TimeLabel.of(Proof.RATE.secondsOf(first));
            lines.append(String.format(Locale.ROOT, "%8s  %-30s %s%n", time, step.caption(), step.sight()));
            first += step.frames();
        }
        return lines.toString();
    }
}
