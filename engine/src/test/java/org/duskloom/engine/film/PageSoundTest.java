package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sounds as the JDK writes them, and what becomes of them, as the JDK reads it. */
class PageSoundTest {
    private static final int RATE = 8000;
    private static final int FRAMES = 40_000;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"WAVE, 16, 1", "WAVE, 16, 2", "AIFF, 16, 2", "AU, 16, 2", "WAVE, 24, 2", "AIFF, 24, 1", "WAVE, 16, 6"})
    void isTheSameSoundInSixteenBits(String kind, int bits, int channels) throws Exception {
        Path file = written(kind, bits, channels);
        PageSound sound = read(file, 0.5, 0, 100).orElseThrow();
        assertThat(sound.mediaType()).isEqualTo("audio/wav");
        assertThat(sound.startSeconds()).isEqualTo(0.5);
        try (AudioInputStream in = AudioSystem.getAudioInputStream(new ByteArrayInputStream(sound.bytes()))) {
            assertThat(in.getFormat().getSampleRate()).isEqualTo(RATE);
            assertThat(in.getFormat().getChannels()).isEqualTo(channels);
            assertThat(in.getFormat().getSampleSizeInBits()).isEqualTo(16);
            assertThat(in.getFrameLength()).isEqualTo(FRAMES);
            assertThat(in.readAllBytes()).isEqualTo(samples(16, channels, false));
        }
    }

    /** From a second after its start to two seconds after it. */
    @Test
    void ofAPartOfTheShowItIsAPart() throws Exception {
        PageSound part = read(written("WAVE", 16, 1), 1, 2, 3).orElseThrow();
        assertThat(part.startSeconds()).isEqualTo(2);
        byte[] all = samples(16, 1, false);
        assertThat(Arrays.copyOfRange(part.bytes(), 44, part.bytes().length))
                .isEqualTo(Arrays.copyOfRange(all, 2 * RATE, 4 * RATE));
        // It had begun before the show.
        PageSound late = read(written("WAVE", 16, 1), -3, 0, 60).orElseThrow();
        assertThat(late.startSeconds()).isZero();
        assertThat(late.bytes()).hasSize(44 + 2 * (FRAMES - 3 * RATE));
    }

    @Test
    void whereItIsNotHeardThereIsNone() throws Exception {
        Path file = written("WAVE", 16, 1);
        assertThat(read(file, 4, 0, 4)).isEmpty();
        assertThat(read(file, 0, 5, 6)).isEmpty();
    }

    @Test
    void whatIsNoSoundAnyMoreIsAFault() throws IOException {
        Path text = Files.writeString(folder.resolve("song.wav"), "no sound at all, but long enough to be looked into");
        assertThatThrownBy(() -> read(text, 0, 0, 9))
                .isInstanceOf(IOException.class)
                .hasMessage("song is not the sound any more that it was when the show was read");
    }

    private Optional<PageSound> read(Path file, double starts, double from, double to) throws IOException {
        return PageSound.read(file, "song", starts, from, to);
    }

    private Path written(String kind, int bits, int channels) throws IOException {
        boolean isBigEndian = !kind.equals("WAVE");
        AudioFormat format = new AudioFormat(RATE, bits, channels, true, isBigEndian);
        byte[] bytes = samples(bits, channels, isBigEndian);
        Path file = folder.resolve("song");
        AudioFileFormat.Type type = kind.equals("WAVE")
                ? AudioFileFormat.Type.WAVE
                : kind.equals("AIFF") ? AudioFileFormat.Type.AIFF : AudioFileFormat.Type.AU;
        AudioSystem.write(new AudioInputStream(new ByteArrayInputStream(bytes), format, FRAMES), type, file.toFile());
        return file;
    }

    /** The same values in any number of bits: those that 16 bits can hold, with the extremes. */
    private static byte[] samples(int bits, int channels, boolean isBigEndian) {
        int width = bits / 8;
        byte[] bytes = new byte[FRAMES * channels * width];
        for (int i = 0; i < FRAMES * channels; i++) {
            short value = i == 0 ? Short.MIN_VALUE : i == 1 ? Short.MAX_VALUE : (short) (i * 7919);
            for (int k = 0; k < 2; k++) {
                byte part = (byte) (value >> 8 * k);
                int place = width - 2 + k;
                bytes[i * width + (isBigEndian ? width - 1 - place : place)] = part;
            }
        }
        return bytes;
    }
}
