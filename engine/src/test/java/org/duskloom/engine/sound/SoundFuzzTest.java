package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as sounds, and as label tracks. */
class SoundFuzzTest {
    private static final int BLOCK = 512;

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({
        "RIFF", "WAVE", "fmt ", "data", "RF64", "RIFX", "FORM", "AIFF", "AIFC", "COMM", "SSND", ".snd", "sowt", "LIST"
    })
    void sound(byte[] input) throws IOException {
        Problems problems = new Problems();
        Optional<SoundStream> opened = SoundStream.open(new ByteArrayInputStream(input), "song.wav", problems);
        assertThat(opened.isPresent() || problems.hasErrors()).isTrue();
        if (opened.isPresent()) {
            try (SoundStream sound = opened.get()) {
                double[][] channels = new double[sound.format().channels()][BLOCK];
                while (sound.read(channels) > 0) {
                    assertThat(sound.framesRead()).isLessThanOrEqualTo(8L * input.length);
                }
            }
        }
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"\\x09beat\\x0a", "\\x09bar\\x0a", "0.5\\x09", "1e9", "\\x5c\\x09", "\\x0d\\x0a", "\\x0d", "-1"
    })
    void labels(byte[] input) {
        Problems problems = new Problems();
        Optional<LabelTrack> track =
                SourceText.of(input, "song.txt", problems).flatMap(source -> LabelTrack.read(source, problems));
        assertThat(track.isPresent() || problems.hasErrors()).isTrue();
    }
}
