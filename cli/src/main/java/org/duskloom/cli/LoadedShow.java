package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FrameRenderer;
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

    /** Its frames, rendered when they are asked for. */
    FrameSource frames() {
        return new FrameRenderer(plan, title(), FramePixels.of(show.map()));
    }

    /** The timeline's title; its file's name if it has none. */
    String title() {
        String title = show.timeline().title();
        return title.isBlank() ? file.getFileName().toString() : title;
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
