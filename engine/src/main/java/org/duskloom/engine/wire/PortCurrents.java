package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.duskloom.engine.color.Srgb;

/**
 * What the pixels of a port draw while they show a frame: what is idle, and of each colour its full current times its
 * duty. Duty is linear light after {@code white} and {@code cap}, and with a gamma what that makes of it; never the
 * dithered byte, whose mean it is. Everything that does not change from frame to frame lies in flat tables. Safe for
 * use by several threads.
 */
public final class PortCurrents {
    private static final int CODES = 256;
    private static final double MILLI = 1e-3;

    /** Linear light by code. Compilers know how long it is, so that no index is checked. */
    private static final double[] LIGHT = new double[CODES];

    static {
        for (int code = 0; code < CODES; code++) {
            LIGHT[code] = Srgb.decode(code / 255.0);
        }
    }

    private final int pixelCount;
    private final double idleAmps;
    private final double fullAmps;

    /** The pixels that are lit. */
    private final Run[] runs;

    /** Whether red, green and blue draw in proportion to their light, without a white light; by how much then. */
    private final boolean isPlain;

    private final double redAmps;
    private final double greenAmps;
    private final double blueAmps;

    /** Amperes by code of red, green and blue; by least code and code where a white light makes that differ. */
    private final double[] red;

    private final double[] green;
    private final double[] blue;

    /** Amperes by least code, with what the others draw less for it; empty without a white light. */
    private final double[] white;

    /**
     * Pixels of the line that lie evenly in a frame: loops over them are twice as fast as over pixels one by one.
     *
     * @param place the first of them, from 0 in the chain
     * @param count how many
     * @param source where the red of the first stands in a frame
     * @param step how far the next is from there
     */
    private record Run(int place, int count, int source, int step) {
        int end() {
            return place + count;
        }

        boolean isSame(byte[] one, int oneOffset, byte[] other, int otherOffset) {
            if (Math.abs(step) == 3) {
                int low = source + Math.min(0, (count - 1) * step);
                int high = low + 3 * count;
                return Arrays.equals(
                        one, oneOffset + low, oneOffset + high, other, otherOffset + low, otherOffset + high);
            }
            for (int i = 0, at = source; i < count; i++, at += step) {
                if (!Arrays.equals(
                        one, oneOffset + at, oneOffset + at + 3, other, otherOffset + at, otherOffset + at + 3)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** The pixels of a port. */
    public PortCurrents(Port port) {
        int[] pixels = port.pixels();
        PixelKind kind = port.pixelKind();
        this.pixelCount = pixels.length;
        this.idleAmps = kind.idleMilliamps() * MILLI;
        this.fullAmps = kind.fullAmps();
        this.runs = runs(pixels);
        Signal signal = port.signal();
        this.isPlain = !signal.colors().hasWhite() && !(signal.curve() instanceof Curve.Gamma);
        this.red = table(signal, kind, Channel.RED);
        this.green = table(signal, kind, Channel.GREEN);
        this.blue = table(signal, kind, Channel.BLUE);
        this.redAmps = red[CODES - 1];
        this.greenAmps = green[CODES - 1];
        this.blueAmps = blue[CODES - 1];
        this.white = signal.colors().hasWhite() ? white(signal, kind) : new double[0];
    }

    private static Run[] runs(int[] pixels) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < pixels.length; ) {
            int start = i++;
            if (pixels[start] == Link.DARK) {
                continue;
            }
            int step = i < pixels.length && pixels[i] != Link.DARK ? pixels[i] - pixels[start] : 1;
            while (i < pixels.length && pixels[i] != Link.DARK && pixels[i] - pixels[i - 1] == step) {
                i++;
            }
            runs.add(new Run(start, i - start, 3 * pixels[start], 3 * step));
        }
        return runs.toArray(Run[]::new);
    }

    private static double[] table(Signal signal, PixelKind kind, Channel channel) {
        double amps = amps(signal, kind, channel);
        double[] table = new double[isTwofold(signal) ? CODES * CODES : CODES];
        for (int least = 0; least < table.length / CODES; least++) {
            for (int code = least; code < CODES; code++) {
                double light = LIGHT[code] - LIGHT[least];
                table[least * CODES + code] = amps * duty(signal, channel, light);
            }
        }
        return table;
    }

    /** What the white light draws; where duty is the light itself, less what the others leave to it. */
    private static double[] white(Signal signal, PixelKind kind) {
        double[] table = new double[CODES];
        for (int least = 0; least < CODES; least++) {
            double light = LIGHT[least];
            table[least] = amps(signal, kind, Channel.WHITE) * duty(signal, Channel.WHITE, light);
            for (Channel channel : isTwofold(signal) ? List.<Channel>of() : ColorOrder.RGB.channels()) {
                table[least] -= amps(signal, kind, channel) * duty(signal, channel, light);
            }
        }
        return table;
    }

    /** Whether what a colour draws depends on the white light in another way than by a difference. */
    private static boolean isTwofold(Signal signal) {
        return signal.colors().hasWhite() && signal.curve() instanceof Curve.Gamma;
    }

    private static double amps(Signal signal, PixelKind kind, Channel channel) {
        int index = signal.colors().channels().indexOf(channel);
        return index < 0 ? 0 : kind.milliamps().get(index) * MILLI;
    }

    /** For how much of the time a colour is on. A receiver of codes makes of them the light they stand for. */
    private static double duty(Signal signal, Channel channel, double light) {
        double dimmed = signal.brightness().factor(channel) * light;
        return signal.curve().meansDuty() ? signal.curve().sent(dimmed) : dimmed;
    }

    /** How many pixels are on the line, dark ones too. */
    public int pixelCount() {
        return pixelCount;
    }

    /** What all pixels of the line draw with every colour full on, whatever caps them, dark ones too. */
    public double fullAmps() {
        return pixelCount * fullAmps;
    }

    /** Fills in what each pixel of the line draws always; those that stay dark never draw more. */
    public void fillIdle(double[] amps) {
        Arrays.fill(amps, idleAmps);
    }

    /** Fills in what each pixel of the line draws with every colour full on, dark ones too. */
    public void fillFull(double[] amps) {
        Arrays.fill(amps, fullAmps);
    }

    /** Whether the pixels of the line have the same codes in two frames, which start at these offsets. */
    public boolean areSame(byte[] one, int oneOffset, byte[] other, int otherOffset) {
        for (Run run : runs) {
            if (!run.isSame(one, oneOffset, other, otherOffset)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Fills in what each pixel that is lit draws, in amperes.
     *
     * @param rgb holds sRGB codes of all pixels of the map in wiring order
     * @param offset where they start
     * @param amps one for each pixel of the line; those of dark pixels are left as they are
     */
    public void fill(byte[] rgb, int offset, double[] amps) {
        for (Run run : runs) {
            if (isPlain && run.step == 3) {
                fillForward(rgb, offset + run.source, run, amps);
            } else if (white.length == 0) {
                fillPlain(rgb, offset + run.source, run, amps);
            } else {
                fillWithWhite(rgb, offset + run.source, run, amps, red.length == CODES ? 0 : CODES);
            }
        }
    }

    /** The usual case: places in the frame are counted by a step that is known, so that they need not be checked. */
    private void fillForward(byte[] rgb, int first, Run run, double[] amps) {
        double idle = idleAmps;
        double ofRed = redAmps;
        double ofGreen = greenAmps;
        double ofBlue = blueAmps;
        int i = run.place;
        for (int at = first, end = first + 3 * run.count; at < end; at += 3) {
            amps[i++] = idle
                    + ofRed * LIGHT[rgb[at] & 0xFF]
                    + ofGreen * LIGHT[rgb[at + 1] & 0xFF]
                    + ofBlue * LIGHT[rgb[at + 2] & 0xFF];
        }
    }

    private void fillPlain(byte[] rgb, int first, Run run, double[] amps) {
        int at = first;
        int step = run.step;
        for (int i = run.place, end = run.end(); i < end; i++) {
            amps[i] = idleAmps + red[rgb[at] & 0xFF] + green[rgb[at + 1] & 0xFF] + blue[rgb[at + 2] & 0xFF];
            at += step;
        }
    }

    private void fillWithWhite(byte[] rgb, int first, Run run, double[] amps, int row) {
        int at = first;
        int step = run.step;
        for (int i = run.place, end = run.end(); i < end; i++) {
            int r = rgb[at] & 0xFF;
            int g = rgb[at + 1] & 0xFF;
            int b = rgb[at + 2] & 0xFF;
            int least = Math.min(Math.min(r, g), b);
            int start = row * least;
            amps[i] = idleAmps + red[start + r] + green[start + g] + blue[start + b] + white[least];
            at += step;
        }
    }
}
