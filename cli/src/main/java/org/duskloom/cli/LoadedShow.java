package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.film.PageSound;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.plan.KernelShelf;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowFiles;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.timeline.SoundSource;

/**
 * A show that was read and compiled without errors.
 *
 * @param file the timeline, as the user named it
 * @param show as read
 * @param plan as compiled
 */
record LoadedShow(Path file, Show show, Plan plan) {
    /** Reads and compiles; nothing if an error was added to the problems. */
    static Optional<LoadedShow> load(Path file, Problems problems) {
        return load(file, ShowFiles.beside(file), KernelShelf.unused(), problems);
    }

    /**
     * The same, for who reads it again and again, and wants to know which files were looked for even if nothing comes
     * of it.
     */
    static Optional<LoadedShow> load(Path file, ShowFiles files, KernelShelf shelf, Problems problems) {
        return ShowReader.read(file, files, problems).flatMap(show -> compile(file, show, shelf, problems));
    }

    /** Compiles what was read. */
    static Optional<LoadedShow> compile(Path file, Show show, KernelShelf shelf, Problems problems) {
        Optional<LoadedShow> loaded = PlanCompiler.compile(show, EffectRegistry.installed(), shelf, problems)
                .map(plan -> new LoadedShow(file, show, plan));
        loaded.filter(found -> found.show().timeline().layers().isEmpty())
                .ifPresent(dark -> problems.warn(
                        Location.ofFile(file.toString()),
                        "the timeline has no layers, so all its frames are dark",
                        "\"layers\" hold the cues"));
        return loaded;
    }

    /** Its frames, rendered when they are asked for. */
    FrameSource frames() {
        return new FrameRenderer(plan, title(), FramePixels.of(show.map()));
    }

    /** Its cues, for pictures of moments. */
    SeenCues cues() {
        return new SeenCues(show.timeline(), plan);
    }

    /** The timeline's title; its file's name if it has none. */
    String title() {
        String title = show.timeline().title();
        return title.isBlank() ? file.getFileName().toString() : title;
    }

    /**
     * The sound that it is played to, for a page.
     *
     * @param fromSeconds from which time of the show on it is wanted
     * @param toSeconds up to which
     * @return nothing if it has none, or none is heard in that part
     * @throws IOException if it cannot be read any more
     */
    Optional<PageSound> sound(double fromSeconds, double toSeconds) throws IOException {
        Optional<SoundSource> source = show.timeline().sound();
        Optional<Path> path = source.flatMap(sound -> show.files().remembered(sound.file()));
        if (path.isEmpty()) {
            return Optional.empty();
        }
        return PageSound.read(
                path.get(),
                show.files().shown(source.get().file().value()),
                source.get().starts().seconds(),
                fromSeconds,
                toSeconds);
    }

    /** What hangs on which port. */
    WiredPixels wired() {
        String pixels = show.files().shown(show.timeline().pixels().file().value());
        return WiredPixels.of(show.display(), Location.ofFile(pixels), plan.rate());
    }

    /**
     * Who sends its packets, with the usual priority and without synchronization: the same for the same input files.
     */
    StreamSource streamSource() {
        String identity = InputNames.identity(show.files().inputs());
        return new StreamSource(StreamSource.cidOf(identity), title(), StreamSource.USUAL_PRIORITY, 0);
    }

    /**
     * Refuses an output that would replace a file of the show.
     *
     * @throws MisuseException if it would
     * @throws IOException if the files cannot be compared
     */
    void refuseAsOutput(Path target) throws IOException {
        InputNames.refuseAsOutput(target, show.files().inputs());
    }

    /** What its frames are made from. */
    Origin origin() throws IOException {
        return InputNames.origin(file, show.files().inputs());
    }
}
