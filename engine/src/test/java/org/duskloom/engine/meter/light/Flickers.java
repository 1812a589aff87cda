package org.duskloom.engine.meter.light;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;

/** Shows of few pixels for meters of light. */
final class Flickers {
    static final int WHITE = 0xFFFFFF;

    private Flickers() {}

    /** What a meter finds of one pixel with these colours, one a frame. */
    static FlashFigures ofOne(int framesPerSecond, List<Integer> colors) throws IOException {
        List<int[]> frames = colors.stream().map(color -> new int[] {color}).toList();
        return play(LightMeter.ofAnyArea(), framesPerSecond, FramePixels.unnamed(1), frames);
    }

    /** Shows frames to a meter, each with a colour for every pixel; gives what it finds. */
    static FlashFigures play(LightMeter meter, int framesPerSecond, FramePixels pixels, List<int[]> frames)
            throws IOException {
        return play(meter, framesPerSecond, pixels, frames, frame -> {});
    }

    /** The same; tells which frames are looked at. */
    static FlashFigures play(
            LightMeter meter, int framesPerSecond, FramePixels pixels, List<int[]> frames, IntConsumer looked)
            throws IOException {
        FrameSource source = source(framesPerSecond, pixels, frames, looked);
        meter.begin(source.info());
        byte[] rgb = new byte[3 * pixels.count() + 5];
        try (FrameReader reader = source.reader()) {
            for (int frame = 0; frame < frames.size(); frame++) {
                reader.read(frame, rgb, 5);
                meter.frame(frame, rgb, 5);
            }
        }
        meter.finish(source);
        return meter.flashes();
    }

    /** A show of these frames. */
    static FrameSource source(int framesPerSecond, FramePixels pixels, List<int[]> frames, IntConsumer looked) {
        RunInfo info = RunInfo.ofWhole("test", FrameRate.of(framesPerSecond), frames.size(), pixels);
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {
                    looked.accept((int) frame);
                    write(frames.get((int) frame), rgb, offset);
                };
            }
        };
    }

    private static void write(int[] colors, byte[] rgb, int offset) {
        for (int i = 0; i < colors.length; i++) {
            rgb[offset + 3 * i] = (byte) (colors[i] >> 16);
            rgb[offset + 3 * i + 1] = (byte) (colors[i] >> 8);
            rgb[offset + 3 * i + 2] = (byte) colors[i];
        }
    }

    /** Two colours in turn, the first one first, each for so many frames. */
    static List<Integer> inTurn(int one, int other, int... lengths) {
        List<Integer> colors = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            for (int k = 0; k < lengths[i]; k++) {
                colors.add(i % 2 == 0 ? one : other);
            }
        }
        return colors;
    }

    /** A square wave of so many seconds with so many halves of a period a second. */
    static List<Integer> square(int one, int other, int framesPerSecond, double changesPerSecond, int seconds) {
        List<Integer> colors = new ArrayList<>();
        for (int frame = 0; frame < seconds * framesPerSecond; frame++) {
            boolean first = (int) Math.floor(frame * changesPerSecond / framesPerSecond + 1e-9) % 2 == 0;
            colors.add(first ? one : other);
        }
        return colors;
    }

    static int grey(int code) {
        return code << 16 | code << 8 | code;
    }

    /** Props of these numbers of pixels, one after the other. */
    static FramePixels props(int... counts) {
        List<PropSpan> spans = new ArrayList<>();
        int first = 0;
        for (int count : counts) {
            spans.add(new PropSpan("prop-" + (spans.size() + 1), first, count));
            first += count;
        }
        return new FramePixels(first, spans, Optional.empty());
    }
}
