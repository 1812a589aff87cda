package org.duskloom.engine.meter.light;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.meter.Meter;

/**
 * Measures what eyes get of a show: flashes of every pixel, prop and of the whole, and how much of the display is used.
 * At the end the start is looked at once more, as it follows on the last frame when the show starts over. Keeps one
 * second of frames.
 */
public final class LightMeter implements Meter {
    /**
     * What is kept of a pixel beside its second. Measured as used memory after collections, of 20,000 and of 60,000
     * pixels: 277, and 3 for the frame that is read at the joint; where an area is measured, 48 more.
     */
    private static final int BYTES_OF_PIXEL = 280;

    private final Supplier<FlashField> field;
    private final OptionalDouble seenFromMetres;
    private SignalLayout layout;
    private long firstFrame;
    private long frameCount;
    private int framesOfSecond;
    private boolean isWholeShow;
    private PastColors past;
    private FlashCounter counter;
    private PixelGroups groups;
    private UseTally use;
    private int place;

    /** Of each prop: luminance and R - G - B in the units of {@link CodeLight}, the sums over its pixels. */
    private long[][] propSums;

    private final long[] wholeSums = new long[2];

    private LightMeter(Supplier<FlashField> field, OptionalDouble seenFromMetres) {
        this.field = field;
        this.seenFromMetres = seenFromMetres;
    }

    /** A meter of a display of which nobody says from how far it is seen. */
    public static LightMeter ofAnyArea() {
        return new LightMeter(() -> FlashField.UNKNOWN, OptionalDouble.empty());
    }

    /**
     * A meter of a display that is seen from a distance.
     *
     * @param stage where the pixels hang
     * @param metresPerUnit how long a unit of these places is
     * @param metres the distance, above 0
     */
    public static LightMeter seenFrom(Positions stage, double metresPerUnit, double metres) {
        return new LightMeter(() -> new TenDegreeField(stage, metresPerUnit, metres), OptionalDouble.of(metres));
    }

    /** About how much memory it takes for a run, most of it for a second of frames and the changes within. */
    public static long bytes(RunInfo run) {
        long frames = framesOfSecond(run);
        long countsBytes = 5 * Long.BYTES * ((frames + Long.SIZE - 1) / Long.SIZE);
        return run.pixelCount() * (3 * frames + countsBytes + BYTES_OF_PIXEL);
    }

    private static int framesOfSecond(RunInfo run) {
        return (run.rate().numerator() + run.rate().denominator() - 1)
                / run.rate().denominator();
    }

    /** @throws IllegalArgumentException if the run leaves out frames between its first and its last */
    @Override
    public void begin(RunInfo run) {
        if (!run.frames().isSpan()) {
            throw new IllegalArgumentException(
                    "a second can only be told of frames that follow each other: " + run.frames());
        }
        layout = SignalLayout.of(run.pixels());
        frameCount = run.frames().count();
        firstFrame = frameCount == 0 ? 0 : run.frames().first();
        isWholeShow = frameCount == run.showFrames();
        framesOfSecond = framesOfSecond(run);
        past = new PastColors(layout, framesOfSecond);
        counter = new FlashCounter(layout, past, framesOfSecond, field);
        groups = new PixelGroups(layout, past, counter);
        use = new UseTally(layout, frameCount, framesOfSecond);
        propSums = new long[layout.props().size()][2];
    }

    @Override
    public void frame(long frame, byte[] rgb, int offset) {
        look((int) (frame - firstFrame), rgb, offset);
        useProps();
        use.endFrame(rgb, offset);
    }

    private void look(int nextPlace, byte[] rgb, int offset) {
        place = nextPlace;
        past.keep(place, rgb, offset);
        groups.look(place, rgb, offset);
        boolean anyChange = place == 0;
        for (int prop = 0; prop < propSums.length; prop++) {
            if (groups.step(prop, place)) {
                anyChange = true;
                Arrays.fill(propSums[prop], 0);
                groups.addProp(prop, propSums[prop]);
                stepMean(layout.ofProp(prop), layout.props().get(prop).pixelCount(), propSums[prop]);
            }
        }
        if (anyChange) {
            stepWhole();
        }
        counter.endFrame(place);
    }

    private void stepWhole() {
        Arrays.fill(wholeSums, 0);
        for (long[] prop : propSums) {
            for (int i = 0; i < wholeSums.length; i++) {
                wholeSums[i] += prop[i];
            }
        }
        stepMean(layout.ofWhole(), layout.pixelCount(), wholeSums);
    }

    private void stepMean(int signal, int pixels, long[] sums) {
        int luminance = (int) (sums[0] / Math.max(1, pixels));
        int redExcess = (int) (sums[1] / Math.max(1, pixels));
        past.keepMean(place, signal, luminance, redExcess);
        counter.stepLight(signal, place, luminance);
        counter.stepRed(signal, place, luminance, redExcess);
    }

    private void useProps() {
        for (int prop = 0; prop < propSums.length; prop++) {
            double all = (double) CodeLight.ONE * layout.props().get(prop).pixelCount();
            use.prop(prop, propSums[prop][0] / all, propSums[prop][0] == 0);
        }
    }

    /**
     * Looks at the first second again, as what follows on the last frame. Seconds that straddle the joint end in it.
     * Later ones can only differ from those of the first round where the end has left a light in another state than
     * it had at the start. Of luminance and of chromaticity that makes one change more at most; of red by the older
     * rule it may make many. So where a second might have more than the six that are allowed, the show is looked at
     * once more until a second after the last of them.
     */
    @Override
    public void finish(FrameSource source) throws IOException {
        RunInfo run = source.info();
        if (!isWholeShow || run.showFrames() == 0) {
            return;
        }
        counter.beginJoint();
        try (FrameReader reader = source.reader()) {
            byte[] rgb = new byte[run.frameBytes()];
            long frames = framesOfSecond;
            for (long i = 0; i < frames; i++) {
                if (Thread.currentThread().isInterrupted()) {
                    throw new InterruptedIOException("the run has ended");
                }
                reader.read(i % run.showFrames(), rgb, 0);
                look(place + 1, rgb, 0);
                if (i + 1 == framesOfSecond) {
                    frames += framesAfterJoint();
                }
            }
        }
    }

    /** How many more to look at, behind the first second. */
    private int framesAfterJoint() {
        int last = counter.lastLimit(place, seenFromMetres.isPresent());
        return last < 0 ? 0 : Math.max(framesOfSecond, last + 1);
    }

    /** How often it flashes; to be asked when the run has finished. */
    public FlashFigures flashes() {
        int whole = layout.props().size();
        List<FlashFigures.PropFlashes> props = new ArrayList<>();
        for (int prop = 0; prop < whole; prop++) {
            props.add(new FlashFigures.PropFlashes(
                    layout.props().get(prop).name(), count(FlashRule.GENERAL, prop), count(FlashRule.RED, prop)));
        }
        return new FlashFigures(seenFromMetres, count(FlashRule.GENERAL, whole), count(FlashRule.RED, whole), props);
    }

    private FlashCount count(FlashRule rule, int group) {
        return counter.tally(rule).count(rule, group, Math.max(1, frameCount), firstFrame);
    }

    /** How much is used. */
    public UseFigures use() {
        return use.figures(groups.everLit());
    }
}
