package org.duskloom.engine.meter.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.meter.Meter;

/**
 * Measures what eyes get of a show: flashes of every pixel, prop and of the whole, and how much of the display is used.
 * Only pixels that have another colour than in the frame before are looked at; the light of props is kept as exact sums
 * of whole numbers, to which the differences are added. At the end the first second is looked at once more, as it
 * follows on the last frame when the show starts over: so it keeps one second of frames.
 */
public final class LightMeter implements Meter {
    private static final int CODES = 256;
    private static final int CODE = 0xFF;
    private static final int UNKNOWN = -1;

    /** The light of a code as a whole number, so that sums stay exact. */
    private static final double UNITS = 1 << 24;

    private static final float[] LIGHT = new float[CODES];
    private static final long[] LIGHT_UNITS = new long[CODES];

    static {
        for (int code = 0; code < CODES; code++) {
            LIGHT[code] = Srgb.decode(code);
            LIGHT_UNITS[code] = Math.round(Srgb.decode(code / 255.0) * UNITS);
        }
    }

    private final Supplier<FlashField> field;
    private final OptionalDouble seenFromMetres;
    private SignalLayout layout;
    private long firstFrame;
    private int framesOfSecond;
    private boolean isWholeShow;
    private FlashCounter counter;
    private UseTally use;
    private byte[] firstSecond = {};
    private int keptFrames;
    private int place;
    private boolean joined;

    /** Of each pixel: its codes in the frame before. */
    private int[] codes;

    private boolean[] everLit;

    /**
     * Of red, green and blue of each prop, and at last of the whole: the sum now, and the means in the frame
     * before.
     */
    private long[] sums;

    private float[] means;

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

    @Override
    public void begin(RunInfo run) {
        layout = SignalLayout.of(run.pixels());
        firstFrame = run.frames().count() == 0 ? 0 : run.frames().first();
        isWholeShow = run.frames().count() == run.showFrames();
        framesOfSecond = (run.rate().numerator() + run.rate().denominator() - 1)
                / run.rate().denominator();
        counter = new FlashCounter(layout, framesOfSecond, field);
        use = new UseTally(layout, run.frames().count(), framesOfSecond);
        if (isWholeShow) {
            int kept = (int) Math.min(framesOfSecond, run.frames().count());
            firstSecond = new byte[Math.multiplyExact(kept, run.frameBytes())];
        }
        codes = new int[layout.pixelCount()];
        Arrays.fill(codes, UNKNOWN);
        everLit = new boolean[codes.length];
        sums = new long[3 * (layout.props().size() + 1)];
        means = new float[sums.length];
    }

    @Override
    public void frame(long frame, byte[] rgb, int offset) {
        int frameBytes = 3 * layout.pixelCount();
        if (frameBytes > 0 && (keptFrames + 1) * frameBytes <= firstSecond.length) {
            System.arraycopy(rgb, offset, firstSecond, keptFrames++ * frameBytes, frameBytes);
        }
        look((int) (frame - firstFrame), rgb, offset);
        useProps();
        use.endFrame(rgb, offset);
    }

    private void look(int nextPlace, byte[] rgb, int offset) {
        boolean first = nextPlace == 0;
        place = nextPlace;
        List<PropSpan> props = layout.props();
        int whole = 3 * props.size();
        boolean anyChange = first;
        for (int prop = 0; prop < props.size(); prop++) {
            if (lookAtProp(prop, rgb, offset) || first) {
                anyChange = true;
                stepMean(layout.ofProp(prop), 3 * prop, props.get(prop).pixelCount(), first);
            }
        }
        if (anyChange) {
            for (int channel = 0; channel < 3; channel++) {
                sums[whole + channel] = 0;
                for (int i = channel; i < whole; i += 3) {
                    sums[whole + channel] += sums[i];
                }
            }
            stepMean(layout.ofWhole(), whole, layout.pixelCount(), first);
        }
        counter.endFrame(place);
    }

    private boolean lookAtProp(int prop, byte[] rgb, int offset) {
        PropSpan span = layout.props().get(prop);
        int end = span.firstPixel() + span.pixelCount();
        boolean changed = false;
        long red = 0;
        long green = 0;
        long blue = 0;
        for (int pixel = span.firstPixel(), at = offset + 3 * pixel; pixel < end; pixel++, at += 3) {
            int code = (rgb[at] & CODE) << 16 | (rgb[at + 1] & CODE) << 8 | rgb[at + 2] & CODE;
            int before = codes[pixel];
            if (code != before) {
                changed = true;
                codes[pixel] = code;
                red += LIGHT_UNITS[code >>> 16];
                green += LIGHT_UNITS[code >>> 8 & CODE];
                blue += LIGHT_UNITS[code & CODE];
                if (before != UNKNOWN) {
                    red -= LIGHT_UNITS[before >>> 16];
                    green -= LIGHT_UNITS[before >>> 8 & CODE];
                    blue -= LIGHT_UNITS[before & CODE];
                }
                step(pixel, code, before == UNKNOWN ? code : before);
            }
        }
        sums[3 * prop] += red;
        sums[3 * prop + 1] += green;
        sums[3 * prop + 2] += blue;
        return changed;
    }

    private void step(int pixel, int code, int before) {
        everLit[pixel] |= code != 0;
        float r = LIGHT[code >>> 16];
        float g = LIGHT[code >>> 8 & CODE];
        float b = LIGHT[code & CODE];
        if (!counter.step(pixel, place, r, g, b)) {
            float r0 = LIGHT[before >>> 16];
            counter.stepRed(pixel, place, r, g, b, r0, LIGHT[before >>> 8 & CODE], LIGHT[before & CODE]);
        }
    }

    private void stepMean(int signal, int sum, int pixels, boolean first) {
        double scale = 1 / (UNITS * pixels);
        float r = (float) (sums[sum] * scale);
        float g = (float) (sums[sum + 1] * scale);
        float b = (float) (sums[sum + 2] * scale);
        if (!counter.step(signal, place, r, g, b)) {
            float r0 = first ? r : means[sum];
            float g0 = first ? g : means[sum + 1];
            counter.stepRed(signal, place, r, g, b, r0, g0, first ? b : means[sum + 2]);
        }
        means[sum] = r;
        means[sum + 1] = g;
        means[sum + 2] = b;
    }

    private void useProps() {
        for (int prop = 0; prop < layout.props().size(); prop++) {
            int sum = 3 * prop;
            double luminance = 0.2126 * means[sum] + 0.7152 * means[sum + 1] + 0.0722 * means[sum + 2];
            use.prop(prop, luminance, (sums[sum] | sums[sum + 1] | sums[sum + 2]) == 0);
        }
    }

    /** Looks at the first second again, as what follows on the last frame. */
    private void lookAtJoint() {
        if (joined || keptFrames == 0) {
            return;
        }
        joined = true;
        counter.beginJoint();
        int after = place + 1;
        for (int i = 0; i < framesOfSecond; i++) {
            look(after + i, firstSecond, i % keptFrames * 3 * layout.pixelCount());
        }
    }

    /** How often it flashes; to be asked when all frames have been seen. */
    public FlashFigures flashes() {
        lookAtJoint();
        int whole = layout.props().size();
        List<FlashFigures.PropFlashes> props = new ArrayList<>();
        for (int prop = 0; prop < whole; prop++) {
            props.add(new FlashFigures.PropFlashes(
                    layout.props().get(prop).name(), count(FlashRule.GENERAL, prop), count(FlashRule.RED, prop)));
        }
        return new FlashFigures(seenFromMetres, count(FlashRule.GENERAL, whole), count(FlashRule.RED, whole), props);
    }

    private FlashCount count(FlashRule rule, int group) {
        return counter.tally(rule).count(rule, group, firstFrame);
    }

    /** How much is used. */
    public UseFigures use() {
        return use.figures(everLit);
    }
}
