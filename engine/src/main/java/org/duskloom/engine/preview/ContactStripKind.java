package org.duskloom.engine.preview;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.frame.RunStep;

/** {@code strip.png}: a {@link ContactStrip} of moments from a run, or of its steps where it has some. */
public final class ContactStripKind implements StreamKind {
    /** A strip with more panels of steps than this has no room for them. */
    private static final int MOST_STEPS = 120;

    /** Wide enough for a caption. */
    private static final int STEP_DOTS = 300;

    private final StripOptions options;
    private final int mostPanels;
    private final Function<FrameList, List<ShownMoment>> captioned;

    /**
     * A kind of strip.
     *
     * @param options how panels of moments are laid out
     * @param mostPanels how many moments there are at most
     */
    public ContactStripKind(StripOptions options, int mostPanels) {
        this(options, mostPanels, frames -> List.of());
    }

    /**
     * A kind of strip of chosen moments.
     *
     * @param mostPanels how many moments there are at most where none is chosen
     * @param captioned chooses moments of the frames that come, rising; none for moments at even distances
     */
    public ContactStripKind(StripOptions options, int mostPanels, Function<FrameList, List<ShownMoment>> captioned) {
        this.options = options;
        this.mostPanels = mostPanels;
        this.captioned = Objects.requireNonNull(captioned, "captioned");
    }

    /**
     * As large as suits a screen.
     *
     * @param captioned chooses moments of the frames that come, rising; none for moments at even distances
     */
    public static ContactStripKind standard(Function<FrameList, List<ShownMoment>> captioned) {
        return new ContactStripKind(StripOptions.standard(), ShownFrames.USUAL_PANELS, captioned);
    }

    @Override
    public String word() {
        return "strip";
    }

    @Override
    public String help() {
        return "a picture of moments side by side";
    }

    @Override
    public String file() {
        return "strip.png";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new BegunLater(file, run -> run.steps().isEmpty() ? ofMoments(file, run) : ofSteps(file, run));
    }

    private ContactStrip ofMoments(StagedFile file, RunInfo run) throws OutputRefusedException {
        List<ShownMoment> chosen = captioned.apply(run.frames());
        if (chosen.isEmpty()) {
            long[] evenly = ShownFrames.evenly(run.frames(), run.rate(), mostPanels);
            return new ContactStrip(file, PreviewScene.of(run), evenly, options);
        }
        Map<Long, String> captions =
                chosen.stream().collect(Collectors.toMap(ShownMoment::frame, ShownMoment::caption));
        PreviewScene scene = PreviewScene.of(run, run.rate()::secondsOf, Optional.of(captions::get));
        long[] moments = chosen.stream().mapToLong(ShownMoment::frame).toArray();
        return new ContactStrip(file, scene, moments, options);
    }

    /**
     * One panel for each step: a moment in its middle, by which a movement has come half of its way. The time that
     * stands under it is the one at which the step begins.
     */
    private ContactStrip ofSteps(StagedFile file, RunInfo run) throws OutputRefusedException {
        List<RunStep> shown =
                run.steps().subList(0, Math.min(MOST_STEPS, run.steps().size()));
        Map<Long, RunStep> byMoment = new HashMap<>();
        shown.forEach(step -> byMoment.put(step.middleFrame(), step));
        PreviewScene scene = PreviewScene.of(
                run,
                moment -> run.rate().secondsOf(byMoment.get(moment).firstFrame()),
                Optional.of(moment -> byMoment.get(moment).caption()));
        long[] moments = shown.stream().mapToLong(RunStep::middleFrame).toArray();
        StripOptions wide = new StripOptions(OptionalInt.empty(), OptionalInt.of(STEP_DOTS), false);
        return new ContactStrip(file, scene, moments, wide);
    }
}
