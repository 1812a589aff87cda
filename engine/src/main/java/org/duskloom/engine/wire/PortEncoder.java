package org.duskloom.engine.wire;

import java.util.List;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.random.StableHash;

/**
 * Makes a port's bytes of a frame. Everything that does not change from frame to frame lies in flat arrays; encoding
 * allocates nothing, and keeps nothing from one frame to the next, so frames may come in any order and several threads
 * may share an encoder.
 *
 * <p>Dither: with x the exact level in bytes, e a start in [0, 1) hashed of prop, pixel and colour, the byte of frame n
 * is {@code floor((n + 1) x + e) - floor(n x + e)}. It is the closed form of first-order error feedback, so that over
 * any N frames of one level the mean is off by less than 1/N, and no byte is off by 1 or more.
 */
public final class PortEncoder {
    private static final int BELOW_STEP = (1 << SentLevels.STEP_BITS) - 1;
    private static final long DITHER_KEY = StableHash.ofName("dither");

    private final int byteCount;
    private final boolean wide;
    private final boolean white;
    private final int bytesPerPixel;

    /** For each pixel that is lit: where its red stands in a frame, and its first byte in the port. */
    private final int[] source;

    private final int[] target;
    private final Color[] colors;

    /**
     * One colour of all pixels.
     *
     * @param channel where in a frame's pixel it stands: 0 red, 1 green, 2 blue; 3 for white
     * @param levels by least code and code; see {@link SentLevels}
     * @param start the dither's start of each lit pixel; below one step
     */
    private record Color(int channel, int[] levels, int[] start) {}

    /** An encoder of one port on that map. */
    public PortEncoder(Port port, PixelMap map) {
        this(port, map, new SentLevels());
    }

    /** The same, with tables that other ports use too. */
    PortEncoder(Port port, PixelMap map, SentLevels levels) {
        int[] pixels = port.pixels();
        Signal signal = port.signal();
        this.byteCount = port.byteCount();
        this.bytesPerPixel = signal.bytesPerPixel();
        this.wide = signal.bits() == 16;
        this.white = signal.colors().hasWhite();
        int lit = 0;
        int[] litPixels = new int[pixels.length];
        this.target = new int[pixels.length];
        for (int place = 0; place < pixels.length; place++) {
            if (pixels[place] != Link.DARK) {
                litPixels[lit] = pixels[place];
                target[lit++] = place * bytesPerPixel;
            }
        }
        this.source = new int[lit];
        for (int i = 0; i < lit; i++) {
            source[i] = 3 * litPixels[i];
        }
        List<Channel> channels = signal.colors().channels();
        this.colors = new Color[channels.size()];
        for (int i = 0; i < colors.length; i++) {
            Channel channel = channels.get(i);
            colors[i] = new Color(channel.ordinal(), levels.of(signal, channel), starts(litPixels, lit, channel, map));
        }
    }

    private static int[] starts(int[] pixels, int count, Channel channel, PixelMap map) {
        int[] starts = new int[count];
        for (int i = 0; i < count; i++) {
            Prop prop = map.props().get(map.propIndexOf(pixels[i]));
            long propKey = StableHash.combine(DITHER_KEY, StableHash.ofName(prop.name()));
            int pixelKey = StableHash.pixelKey(propKey, pixels[i] - prop.firstPixel() + 1);
            starts[i] = StableHash.draw(pixelKey, channel.ordinal()) & BELOW_STEP;
        }
        return starts;
    }

    /** How many bytes a frame takes. */
    public int byteCount() {
        return byteCount;
    }

    /**
     * Encodes one frame. Bytes of pixels that stay dark are not touched: they have to be 0 in the array.
     *
     * @param frame its number in the timeline
     * @param rgb holds sRGB codes of all pixels of the map in wiring order
     * @param rgbOffset where they start
     * @param bytes receives {@link #byteCount()} bytes
     * @param offset where the first of them goes
     */
    public void encode(long frame, byte[] rgb, int rgbOffset, byte[] bytes, int offset) {
        for (int i = 0; i < colors.length; i++) {
            if (wide) {
                encodeWide(colors[i], rgb, rgbOffset, bytes, offset + 2 * i);
            } else {
                encode(colors[i], (int) frame, rgb, rgbOffset, bytes, offset + i);
            }
        }
    }

    private void encode(Color color, int frame, byte[] rgb, int rgbOffset, byte[] bytes, int offset) {
        int[] levels = color.levels;
        int[] start = color.start;
        for (int i = 0; i < source.length; i++) {
            int level = levels[place(color.channel, rgb, rgbOffset + source[i])];
            // The low bits of the product are right though the product does not fit.
            int phase = frame * level + start[i] & BELOW_STEP;
            bytes[offset + target[i]] = (byte) (phase + level >>> SentLevels.STEP_BITS);
        }
    }

    private void encodeWide(Color color, byte[] rgb, int rgbOffset, byte[] bytes, int offset) {
        for (int i = 0; i < source.length; i++) {
            int level = color.levels[place(color.channel, rgb, rgbOffset + source[i])];
            bytes[offset + target[i]] = (byte) (level >>> 8);
            bytes[offset + target[i] + 1] = (byte) level;
        }
    }

    /** Where the level of a pixel's colour stands in a table of {@link SentLevels}. */
    private int place(int channel, byte[] rgb, int at) {
        if (!white) {
            return rgb[at + channel] & 0xFF;
        }
        int least = Math.min(Math.min(rgb[at] & 0xFF, rgb[at + 1] & 0xFF), rgb[at + 2] & 0xFF);
        return channel == Channel.WHITE.ordinal() ? least : least << 8 | rgb[at + channel] & 0xFF;
    }
}
