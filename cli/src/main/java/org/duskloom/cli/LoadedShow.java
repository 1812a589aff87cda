package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;

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
        return ShowReader.read(file, problems)
                .flatMap(show -> PlanCompiler.compile(show, EffectRegistry.installed(), problems)
                        .map(plan -> new LoadedShow(file, show, plan)));
    }

    /** What previews draw. */
    PreviewScene scene() {
        return PixelViews.scene(title(), show.map(), plan.rate()::secondsOf, Optional.empty());
    }

    /** The timeline's title; its file's name if it has none. */
    String title() {
        String title = show.timeline().title();
        return title.isBlank() ? file.getFileName().toString() : title;
    }

    List<PropSpan> propSpans() {
        return PixelViews.propSpans(show.map());
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

    /** The inputs for a manifest. */
    List<FrameManifest.InputFile> manifestInputs() {
        return InputNames.asSeenFrom(file, show.files().inputs());
    }
}
