package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.RawFrameSink;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.TeeSink;
import org.duskloom.engine.preview.ContactStrip;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.preview.TimeStrip;
import org.duskloom.engine.time.FrameSpan;

/** The files of one rendering, all begun before the first frame, so that what cannot be written is known by then. */
final class RenderOutputs implements AutoCloseable {
    /** The names of the pictures. */
    static final List<String> PICTURES = List.of("strip.png", "time.png");

    private final LoadedShow show;
    private final FrameSpan frames;
    private final OutputGroup group;
    private final List<FrameSink> sinks = new ArrayList<>();
    private final TeeSink all;
    private final RawFrameSink raw;
    private final StagedFile manifest;

    /**
     * @param show what is rendered
     * @param frames which frames will come
     * @param folder where the files stand, with fixed names
     * @param strips whether pictures are wanted too
     * @param ifExists what to do about files that stand there
     */
    RenderOutputs(LoadedShow show, FrameSpan frames, Path folder, boolean strips, IfExists ifExists)
            throws IOException {
        this.show = show;
        this.frames = frames;
        this.group = new OutputGroup(ifExists);
        try {
            StagedFile frameFile = open(folder.resolve("frames.rgb"));
            this.manifest = open(folder.resolve("frames.json"));
            refuseWithoutSpace(frameFile);
            this.raw =
                    new RawFrameSink(frameFile, frames.firstFrame(), show.plan().pixelCount());
            sinks.add(raw);
            if (strips) {
                addStrips(folder, show.scene());
            }
            this.all = new TeeSink(sinks);
        } catch (IOException | RuntimeException refused) {
            group.close();
            throw refused;
        }
    }

    /** Takes all frames. */
    FrameSink sink() {
        return all;
    }

    /** All frames have come: makes the files final. */
    void publish() throws IOException {
        all.finish();
        new FrameManifest(
                        show.plan().rate(),
                        raw.frames(),
                        show.plan().pixelCount(),
                        raw.sha256Hex(),
                        frames.firstFrame(),
                        show.propSpans(),
                        show.manifestInputs())
                .writeTo(manifest);
        group.publish();
    }

    /** Abandons what is not final. */
    @Override
    public void close() throws IOException {
        all.close();
        group.close();
    }

    private StagedFile open(Path target) throws IOException {
        show.refuseAsOutput(target);
        return group.open(target);
    }

    private void addStrips(Path folder, PreviewScene scene) throws IOException {
        StagedFile contact = open(folder.resolve(PICTURES.get(0)));
        StagedFile time = open(folder.resolve(PICTURES.get(1)));
        long[] moments = Moments.evenly(frames, Moments.USUAL_PANELS);
        sinks.add(new ContactStrip(contact, scene, moments, StripOptions.standard()));
        long framesPerColumn = Moments.framesPerColumn(scene, frames, Moments.USUAL_COLUMNS);
        sinks.add(new TimeStrip(
                time, scene, frames.firstFrame(), frames.endFrameExclusive(), framesPerColumn, OptionalInt.empty()));
    }

    /** A disk that is too small is found out now, not after hours. What is free may change: writing can fail all the same. */
    private void refuseWithoutSpace(StagedFile frameFile) throws IOException {
        Path target = frameFile.target();
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            return;
        }
        long needed = Math.multiplyExact(frames.count(), 3L * show.plan().pixelCount());
        Path folder = target.toAbsolutePath().getParent();
        long free = Files.getFileStore(folder).getUsableSpace();
        if (free < needed) {
            throw new IOException("cannot write " + target + ": it needs " + Words.bytes(needed) + ", and "
                    + Words.bytes(free) + " are free; render fewer --frames, or somewhere else");
        }
    }
}
