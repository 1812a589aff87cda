package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;

/**
 * What is read of a sound in a test.
 *
 * @param format what the header says; null where it was refused
 * @param frames one array for each sample of all channels
 * @param said problems as the user would see them
 */
record Samples(SoundFormat format, List<double[]> frames, List<String> said) {
    /** Reads in blocks of a size that fits nothing. */
    static Samples of(byte[] file) throws IOException {
        return of(file, "song.wav", 37);
    }

    static Samples of(byte[] file, String name, int block) throws IOException {
        Problems problems = new Problems();
        List<double[]> frames = new ArrayList<>();
        var opened = SoundStream.open(new ByteArrayInputStream(file), name, problems);
        SoundFormat format = null;
        if (opened.isPresent()) {
            try (SoundStream sound = opened.get()) {
                format = sound.format();
                double[][] channels = new double[format.channels()][block];
                for (int count = sound.read(channels); count > 0; count = sound.read(channels)) {
                    for (int i = 0; i < count; i++) {
                        double[] frame = new double[channels.length];
                        for (int k = 0; k < frame.length; k++) {
                            frame[k] = channels[k][i];
                        }
                        frames.add(frame);
                    }
                }
                assertThat(sound.framesRead()).isEqualTo(frames.size());
                assertThat(sound.failed()).isEqualTo(problems.hasErrors());
                assertThat(sound.read(channels)).isZero();
            }
        }
        return new Samples(
                format,
                frames,
                problems.inFileOrder().stream().map(Problem::toString).toList());
    }

    double[] channel(int index) {
        return frames.stream().mapToDouble(frame -> frame[index]).toArray();
    }
}
