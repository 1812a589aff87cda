package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.OptionalLong;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WavReadingTest {
    private static final byte[] TWO = {1, 2, 3, 4};

    /** Mono, 16 bits, 44.1 kHz: samples 0, 1, 32767, -32768, as Python's standard library writes them. */
    @Test
    void readsABookCase() throws IOException {
        byte[] file = HexFormat.of()
                .parseHex("524946462c00000057415645666d7420100000000100010044ac0000885801000200100064617461080000000000"
                        + "0100ff7f0080");
        Samples read = Samples.of(file);
        assertThat(read.format())
                .isEqualTo(new SoundFormat("WAV", 1, 44_100, "16-bit integers", 0, OptionalLong.of(4)));
        assertThat(read.channel(0)).containsExactly(0, 1 / 32768.0, 32767 / 32768.0, -1);
        assertThat(read.said()).isEmpty();
    }

    /** Least, greatest and middle value of each coding: two's complement, but unsigned at 8 bits (RIFF, 1991). */
    @ParameterizedTest
    @CsvSource({
        "1, 8, 00 80 ff, -1 0 0.9921875",
        "1, 16, 0080 0000 0040, -1 0 0.5",
        "1, 24, 000080 000000 000040, -1 0 0.5",
        "1, 32, 00000080 00000000 00000040, -1 0 0.5",
        "1, 12, 0080 0000 0040, -1 0 0.5",
        "1, 20, 000080 000000 000040, -1 0 0.5",
        "3, 32, 000080bf 00000000 0000003f, -1 0 0.5",
        "3, 64, 000000000000f0bf 0000000000000000 000000000000e03f, -1 0 0.5"
    })
    void readsEveryCoding(int tag, int bits, String hex, String values) throws IOException {
        byte[] data = HexFormat.of().parseHex(hex.replace(" ", ""));
        double[] expected = Arrays.stream(values.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(Samples.of(new WavBytes()
                                .format(tag, 1, 8_000, bits)
                                .chunk("data", data)
                                .bytes())
                        .channel(0))
                .containsExactly(expected);
        assertThat(Samples.of(new WavBytes()
                                .extensible(tag, 1, 192_000, bits, 4)
                                .chunk("data", data)
                                .bytes())
                        .channel(0))
                .containsExactly(expected);
    }

    /** The JDK's own reader is the judge: same rate, channels, and bytes in the same order. */
    @ParameterizedTest
    @CsvSource({"16, 1", "16, 2", "24, 2", "24, 6", "32, 8", "8, 3", "16, 7"})
    void agreesWithTheJdk(int bits, int channels) throws IOException, UnsupportedAudioFileException {
        byte[] data = new byte[bits / 8 * channels * 50];
        for (int i = 0; i < data.length; i++) {
            data[i] = (byte) (i * 89 + i / 7);
        }
        byte[] file = new WavBytes()
                .format(1, channels, 48_000, bits)
                .chunk("data", data)
                .bytes();
        Samples read = Samples.of(file);
        try (AudioInputStream judge = AudioSystem.getAudioInputStream(new ByteArrayInputStream(file))) {
            AudioFormat format = judge.getFormat();
            assertThat(read.format().rateHz()).isEqualTo(format.getSampleRate());
            assertThat(read.format().channels()).isEqualTo(format.getChannels());
            assertThat(read.frames()).hasSize((int) judge.getFrameLength());
            byte[] raw = judge.readAllBytes();
            for (int i = 0; i < read.frames().size() * channels; i++) {
                double expected = judged(raw, i, format);
                assertThat(read.frames().get(i / channels)[i % channels]).isEqualTo(expected);
            }
        }
    }

    private static double judged(byte[] raw, int index, AudioFormat format) {
        int bytes = format.getSampleSizeInBits() / 8;
        long value = 0;
        for (int k = 0; k < bytes; k++) {
            value |= (raw[index * bytes + k] & 0xFFL) << (8 * k);
        }
        int unused = 64 - 8 * bytes;
        boolean signed = format.getEncoding() == AudioFormat.Encoding.PCM_SIGNED;
        double whole = signed ? value << unused >> unused : value - 128;
        return whole / Math.pow(2, 8 * bytes - 1);
    }

    @Test
    void channelsKeepTheirOrder() throws IOException {
        byte[] data = new byte[] {0, 1, 0, 2, 0, 3, 0, 4, 0, 5, 0, 6, 0, 7, 0, 8};
        Samples read = Samples.of(new WavBytes()
                .extensible(1, 8, 96_000, 16, 0x63F)
                .chunk("data", data)
                .bytes());
        assertThat(read.frames()).hasSize(1);
        assertThat(read.frames().get(0))
                .containsExactly(Arrays.stream(new int[] {1, 2, 3, 4, 5, 6, 7, 8})
                        .mapToDouble(value -> value / 128.0)
                        .toArray());
        assertThat(read.format().speakers()).isEqualTo(0x63F);
    }

    /** Lengths that programs write into pipes, where they cannot go back to set them right. */
    @ParameterizedTest
    @ValueSource(longs = {0xFFFF_FFFFL, 0, 0x7FFF_F000L, 0x8000_0000L})
    void readsToTheEndOfAPipe(long length) throws IOException {
        Samples read = Samples.of(new WavBytes()
                .riffLength((int) length)
                .format(1, 2, 44_100, 16)
                .chunk("LIST", new byte[26])
                .chunk("data", length, new byte[400])
                .bytes());
        assertThat(read.frames()).hasSize(100);
        assertThat(read.format().declaredFrames()).isEmpty();
        assertThat(read.said()).isEmpty();
    }

    @Test
    void takesLengthsOf64Bits() throws IOException {
        byte[] lengths = ByteBuffer.allocate(28)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putLong(1L << 33)
                .putLong(4)
                .putLong(2)
                .putInt(0)
                .array();
        byte[] file = new WavBytes()
                .chunk("ds64", lengths)
                .format(1, 1, 44_100, 16)
                .chunk("data", 0xFFFF_FFFFL, new byte[] {1, 0, 2, 0})
                .chunk("LIST", new byte[] {9, 9, 9, 9})
                .bytes();
        file[1] = 'F';
        file[2] = '6';
        file[3] = '4';
        assertThat(Samples.of(file).channel(0)).containsExactly(1 / 32768.0, 2 / 32768.0);
    }

    @Test
    void warnsOfASoundThatWasCutOff() throws IOException {
        Samples read = Samples.of(new WavBytes()
                .format(1, 1, 8_000, 16)
                .chunk("data", 80_000, new byte[16_001])
                .bytes());
        assertThat(read.frames()).hasSize(8_000);
        assertThat(read.said())
                .containsExactly("song.wav: warning: the sound ends after 1.00 s, though its header speaks of 5.00 s;"
                        + " if the song is longer, it was not copied whole");
    }

    @Test
    void warnsOfALengthThatIsTooShort() throws IOException {
        Samples read = Samples.of(new WavBytes()
                .format(1, 1, 8_000, 16)
                .chunk("data", 8_000, new byte[16_000])
                .bytes());
        assertThat(read.frames()).hasSize(4_000);
        assertThat(read.said())
                .containsExactly("song.wav: warning: more follows after the 0.50 s of sound that the header speaks of;"
                        + " if the song is longer, its length in the header is wrong: save it anew");
    }

    /** Chunks of odd lengths have a byte more; those of careless writers have not. */
    @Test
    void findsItsWayPastOddChunks() throws IOException {
        byte[] odd = {5, 6, 7};
        byte[] padded = new WavBytes()
                .chunk("note", odd)
                .format(1, 1, 8_000, 8)
                .chunk("odd ", odd)
                .chunk("data", (byte) 1, (byte) 2, (byte) 3)
                .chunk("LIST", TWO)
                .bytes();
        byte[] careless = new WavBytes()
                .raw((byte) 'n', (byte) 'o', (byte) 't', (byte) 'e', (byte) 3, (byte) 0, (byte) 0, (byte) 0)
                .raw(odd)
                .format(1, 1, 8_000, 8)
                .chunk("data", (byte) 1, (byte) 2, (byte) 3)
                .bytes();
        for (byte[] file : new byte[][] {padded, careless}) {
            Samples read = Samples.of(file);
            assertThat(read.channel(0)).containsExactly(-127 / 128.0, -126 / 128.0, -125 / 128.0);
            assertThat(read.said()).isEmpty();
        }
    }

    @Test
    void takesWhatIsNoSoundAsSilence() throws IOException {
        ByteBuffer data = ByteBuffer.allocate(16).order(ByteOrder.LITTLE_ENDIAN);
        data.putFloat(Float.NaN)
                .putFloat(Float.NEGATIVE_INFINITY)
                .putFloat(1e30f)
                .putFloat(-1.5f);
        Samples read = Samples.of(new WavBytes()
                .format(3, 1, 8_000, 32)
                .chunk("data", data.array())
                .bytes());
        assertThat(read.channel(0)).containsExactly(0, 0, 0, -1.5);
        assertThat(read.said())
                .containsExactly("song.wav: warning: 3 samples of floating point are no sound (not a number, or huge);"
                        + " they are taken as silence");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1|0|44100|16|at byte 22: the header says 0 channels; 1 to 8 are read",
                "1|9|44100|16|at byte 22: the header says 9 channels; 1 to 8 are read",
                "1|2|7999|16|at byte 24: the header says 7999 samples a second; 8000 to 192000 are read",
                "1|2|192001|16|at byte 24: the header says 192001 samples a second; 8000 to 192000 are read",
                "1|2|44100|0|at byte 34: the header says 0 bits a sample; whole numbers of 1 to 32 bits are read",
                "1|2|44100|64|at byte 34: the header says 64 bits a sample; whole numbers of 1 to 32 bits are read",
                "3|2|44100|16|at byte 34: the header says 16 bits a sample of floating point; 32 and 64 are read",
                "2|2|44100|4|at byte 20: the samples are ADPCM, not plain numbers;"
                        + " save it anew as a WAV of 16 or 24 bits",
                "85|2|44100|0|at byte 20: the samples are MP3, not plain numbers;"
                        + " save it anew as a WAV of 16 or 24 bits",
                "999|1|44100|8|at byte 20: the samples are of the kind 999, not plain numbers;"
                        + " save it anew as a WAV of 16 or 24 bits"
            })
    void refusesWhatIsOutsideOfWhatIsRead(int tag, int channels, int rate, int bits, String said) throws IOException {
        byte[] file = new WavBytes()
                .format(tag, channels, rate, bits)
                .chunk("data", TWO)
                .bytes();
        assertThat(Samples.of(file).said()).containsExactly("song.wav: error: " + said);
    }

    @Test
    void refusesWhatIsDamaged() throws IOException {
        assertThat(Samples.of(new WavBytes().chunk("data", TWO).bytes()).said())
                .containsExactly("song.wav: error: at byte 12: the samples come before the chunk \"fmt \" that says how"
                        + " to read them; save it anew");
        assertThat(Samples.of(new WavBytes().bytes()).said())
                .containsExactly("song.wav: error: at byte 12: the file ends before the samples: there is no chunk"
                        + " \"fmt \"; it was not copied whole; copy or save it once more");
        assertThat(Samples.of(new WavBytes().format(1, 1, 8_000, 8).bytes()).said())
                .containsExactly("song.wav: error: at byte 36: the file ends before the samples: there is no chunk"
                        + " \"data\"; it was not copied whole; copy or save it once more");
        assertThat(Samples.of(new WavBytes().chunk("fmt ", TWO).bytes()).said())
                .containsExactly("song.wav: error: at byte 16: the chunk \"fmt \" is said to be 4 bytes long;"
                        + " 16, 18 or 40 are usual; the file is damaged");
        assertThat(Samples.of(new WavBytes().chunk("LI\u0007T", 5000, TWO).bytes())
                        .said())
                .containsExactly(
                        "song.wav: error: at byte 24: the file ends inside the chunk \"LI\\u0007T\", before the"
                                + " samples; it was not copied whole; copy or save it once more");
        assertThat(Samples.of(new WavBytes()
                                .format(1, 1, 8_000, 8)
                                .chunk("data")
                                .bytes())
                        .said())
                .containsExactly("song.wav: error: there is no sound in it: not one sample; save the song once more");
    }

    /** Whatever stands in a file, it is read or refused in words. */
    @Test
    void nothingInAFileIsAFaultOfTheProgram() throws IOException {
        byte[] good = new WavBytes()
                .extensible(1, 2, 44_100, 24, 3)
                .chunk("note", TWO)
                .chunk("data", new byte[60])
                .bytes();
        for (int at = 0; at < good.length - 60; at++) {
            for (int value : new int[] {0, 1, 0x7F, 0x80, 0xFF}) {
                byte[] bad = good.clone();
                bad[at] = (byte) value;
                Samples read = Samples.of(bad);
                assertThat(read.format() != null || !read.said().isEmpty()).isTrue();
            }
            Samples cut = Samples.of(Arrays.copyOf(good, at));
            assertThat(cut.said()).hasSize(1);
        }
    }
}
