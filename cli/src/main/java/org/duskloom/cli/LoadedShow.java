package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.output.FrameManifest;
import org.duskloom.engine.output.OutputRefusedException;
import org.duskloom.engine.output.PropSpan;
import org.duskloom.engine.output.StagedFile;
import org.duskloom.engine.plan.InputFile;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.plan.Show;
import org.duskloom.engine.plan.ShowReader;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.problem.Problems;

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
        PixelMap map = show.map();
        double[] x = new double[map.pixelCount()];
        double[] y = new double[map.pixelCount()];
        for (int pixel = 0; pixel < x.length; pixel++) {
            x[pixel] = map.stage().x(pixel);
            y[pixel] = map.stage().y(pixel);
        }
        return new PreviewScene(title(), x, y, propSpans(), plan.rate()::secondsOf);
    }

    /** The timeline's title; its file's name if it has none. */
    String title() {
        String title = show.timeline().title();
        return title.isBlank() ? file.getFileName().toString() : title;
    }

    List<PropSpan> propSpans() {
        return show.map().props().stream()
                .map(prop -> new PropSpan(prop.name(), prop.firstPixel(), prop.pixelCount()))
                .toList();
    }

    /**
     * Refuses an output that would replace a file of the show, under whatever name or link.
     *
     * @throws OutputRefusedException if it would
     * @throws IOException if the files cannot be compared
     */
    void refuseAsOutput(Path target) throws IOException {
        StagedFile.refuseInput(
                target, show.files().inputs().stream().map(InputFile::path).toList());
    }

    /** The inputs for a manifest: named as seen from the timeline's folder, so that a manifest does not tell where that is. */
    List<FrameManifest.InputFile> manifestInputs() {
        Path home = file.toAbsolutePath().normalize().getParent();
        return show.files().inputs().stream()
                .map(input -> new FrameManifest.InputFile(nameFrom(home, input.path()), input.sha256Hex()))
                .toList();
    }

    private static String nameFrom(Path home, Path input) {
        Path whole = input.toAbsolutePath().normalize();
        if (!whole.getRoot().equals(home.getRoot())) {
            return whole.toString();
        }
        StringJoiner name = new StringJoiner("/");
        home.relativize(whole).forEach(step -> name.add(step.toString()));
        return name.toString();
    }
}
