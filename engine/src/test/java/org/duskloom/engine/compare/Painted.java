package org.duskloom.engine.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;

/** Frames by a formula: byte i of frame n. Counts the readers that are open. */
final class Painted implements FrameSource {
    /** What a byte is. */
    @FunctionalInterface
    interface Light {
        int at(long frame, int index);
    }

    private final RunInfo info;
    private final Light light;
    private int open;

    Painted(long frames, Light light, PropSpan... props) {
        this.info = run(40, frames, props);
        this.light = light;
    }

    /** A run of props that follow each other or not; as many pixels as the last of them ends at. */
    static RunInfo run(int rate, long frames, PropSpan... props) {
        int pixels = 0;
        for (PropSpan prop : props) {
            pixels = Math.max(pixels, prop.firstPixel() + prop.pixelCount());
        }
        FramePixels named = new FramePixels(pixels, List.of(props), Optional.empty());
        return RunInfo.ofWhole("painted", FrameRate.of(rate), frames, named);
    }

    static List<String> words(List<Comparison.Contrast> contrasts) {
        List<String> words = new ArrayList<>();
        contrasts.forEach(contrast -> words.add(contrast.what() + ": " + contrast.first() + " / " + contrast.second()));
        return words;
    }

    int open() {
        return open;
    }

    @Override
    public RunInfo info() {
        return info;
    }

    @Override
    public FrameReader reader() throws IOException {
        open++;
        return new FrameReader() {
            @Override
            public void read(long frame, byte[] rgb, int offset) {
                for (int i = 0; i < info.frameBytes(); i++) {
                    rgb[offset + i] = (byte) light.at(frame, i);
                }
            }

            @Override
            public void close() {
                open--;
            }
        };
    }
}
