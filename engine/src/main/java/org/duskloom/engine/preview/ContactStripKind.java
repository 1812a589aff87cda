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
    private final Function<RunInfo, long[][]> even;
    private final Function<FrameList, List<ShownMoment>> captioned;

    private ContactStripKind(
            StripOptions options, Function<RunInfo, long[][]> even, Function<FrameList, List<ShownMoment>> captioned) {
        this.options = options;
        this.even = even;
        this.captioned = Objects.requireNonNull(captioned, "captioned");
    }

    /**
     * Moments without captions, all of which come.
     *
     * @param options how panels are laid out
     * @param moments numbers of frames, rising, at least one
     */
    public static ContactStripKind of(StripOptions options, long[] moments) {
        return of(options, ShownFrames.eachAlone(moments));
    }

    /**
     * Moments without captions, picked so that they look different.
     *
     * @param options how panels are laid out
     * @param candidates for each panel the frames of which it may show one, as {@link ShownFrames#evenly} gives them;
     *     all of them come
     */
    public static ContactStripKind of(StripOptions options, long[][] candidates) {
        return new ContactStripKind(options, run -> candidates, frames -> List.of());
    }

    /**
     * Moments with captions.
     *
     * @param options how panels are laid out
     * @param moments rising, at least one; all of them come
     */
    public static ContactStripKind of(StripOptions options, List<ShownMoment> moments) {
        return new ContactStripKind(options, run -> new long[0][], frames -> moments);
    }

    /**
     * As large as suits a screen, of any frames.
     *
     * @param captioned chooses moments of the frames that come, rising; none for moments at even distances
     */
    public static ContactStripKind standard(Function<FrameList, List<ShownMoment>> captioned) {
        return new ContactStripKind(
                StripOptions.standard(),
                run -> ShownFrames.evenly(run.frames(), run.rate(), ShownFrames.USUAL_PANELS, run.pixelCount()),
                captioned);
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
            return new ContactStrip(file, PreviewScene.of(run), even.apply(run), options);
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
