package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoundStreamTest {
    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    /** AIFF 1.3 keeps the rate as an extended number: 44100 is 400E AC44 0000 0000 0000. */
    @ParameterizedTest
    @CsvSource({
        "AIFF, '', 16, 8000 0000 4000, 16-bit integers",
        "AIFF, '', 8, 80 00 40, 8-bit integers",
        "AIFF, '', 12, 8000 0000 4000, 16-bit integers",
        "AIFF, '', 24, 800000 000000 400000, 24-bit integers",
        "AIFC, NONE, 16, 8000 0000 4000, 16-bit integers",
        "AIFC, twos, 16, 8000 0000 4000, 16-bit integers",
        "AIFC, sowt, 16, 0080 0000 0040, 16-bit integers",
        "AIFC, in24, 24, 800000 000000 400000, 24-bit integers",
        "AIFC, in32, 32, 80000000 00000000 40000000, 32-bit integers",
        "AIFC, fl32, 32, bf800000 00000000 3f000000, 32-bit floating point",
        "AIFC, FL32, 32, bf800000 00000000 3f000000, 32-bit floating point",
        "AIFC, fl64, 64, bff0000000000000 0000000000000000 3fe0000000000000, 64-bit floating point"
    })
    void readsAiff(String form, String compression, int bits, String hex, String coding) throws IOException {
        byte[] data = hex(hex);
        Samples read = Samples.of(aiff(form, compression, bits, data.length + 8, data));
        assertThat(read.format().container()).isEqualTo("AIFF");
        assertThat(read.format().coding()).isEqualTo(coding);
        assertThat(read.format().rateHz()).isEqualTo(44_100);
        assertThat(read.channel(0)).containsExactly(-1, 0, 0.5);
        assertThat(read.said()).isEmpty();
        assertThat(Samples.of(aiff(form, compression, bits, 0, data)).channel(0))
                .containsExactly(-1, 0, 0.5);
    }

    @ParameterizedTest
    @CsvSource({
        "2, 80 00 40",
        "3, 8000 0000 4000",
        "4, 800000 000000 400000",
        "5, 80000000 00000000 40000000",
        "6, bf800000 00000000 3f000000",
        "7, bff0000000000000 0000000000000000 3fe0000000000000"
    })
    void readsAu(int coding, String hex) throws IOException {
        byte[] data = hex(hex);
        for (int length : new int[] {data.length, -1, 0}) {
            Samples read = Samples.of(au(coding, 48_000, 1, length, data));
            assertThat(read.format().container()).isEqualTo("AU");
            assertThat(read.channel(0)).containsExactly(-1, 0, 0.5);
            assertThat(read.said()).isEmpty();
        }
    }

    @Test
    void refusesOtherCodings() throws IOException {
        assertThat(Samples.of(aiff("AIFC", "ima4", 16, 8, new byte[0])).said())
                .containsExactly("song.wav: error: at byte 38: the samples are of the kind \"ima4\", not plain numbers;"
                        + " save it anew as a WAV of 16 or 24 bits");
        assertThat(Samples.of(au(1, 8_000, 1, 4, new byte[4])).said())
                .containsExactly("song.wav: error: at byte 12: the samples are mu-law, not plain numbers;"
                        + " save it anew as a WAV of 16 or 24 bits");
        assertThat(Samples.of(au(3, 4_000, 1, 4, new byte[4])).said())
                .containsExactly("song.wav: error: at byte 16: the header says 4000 samples a second;"
                        + " 8000 to 192000 are read");
        assertThat(Samples.of(au(3, 8_000, 12, 4, new byte[4])).said())
                .containsExactly("song.wav: error: at byte 20: the header says 12 channels; 1 to 8 are read");
    }

    /** First bytes as the specifications of these files give them. */
    @ParameterizedTest
    @CsvSource({
        "494433, an MP3",
        "fffb90, an MP3",
        "fff150, an AAC",
        "4f67675300020000, an OGG",
        "664c6143, a FLAC",
        "00000020667479704d344120, an M4A",
        "000000206674797069736f6d, an MP4",
        "1a45dfa3, a WebM or Matroska",
        "52494646000000004156492000, an AVI"
    })
    void namesTheCommandForOtherKinds(String hex, String kind) throws IOException {
        assertThat(Samples.of(hex(hex), "our songs/one.two.mp3", 8).said())
                .containsExactly("our songs/one.two.mp3: error: is " + kind + " file; WAV, AIFF and AU are read;"
                        + " this makes a WAV of it: ffmpeg -i \"our songs/one.two.mp3\" \"our songs/one.two.wav\"");
    }

    @Test
    void neverNamesACommandThatWritesOverTheSong() throws IOException {
        assertThat(Samples.of(hex("fffb90"), "song.wav", 8).said())
                .containsExactly("song.wav: error: is an MP3 file; WAV, AIFF and AU are read;"
                        + " this makes a WAV of it: ffmpeg -i song.wav song-plain.wav");
    }

    /** Whoever has the sound in several forms shall not be led to write over one of them. */
    @Test
    void neverNamesACommandThatWritesOverAnotherFile() throws IOException {
        Path song = Files.write(folder.resolve("song.mp3"), hex("fffb90"));
        Files.createFile(folder.resolve("song.wav"));
        assertThat(SoundStream.open(song, "songs/song.mp3", problems)).isEmpty();
        Files.createFile(folder.resolve("song-plain.wav"));
        Files.createFile(folder.resolve("song-plain-2.wav"));
        assertThat(SoundStream.open(song, "songs/song.mp3", problems)).isEmpty();
        assertThat(problems.inFileOrder())
                .extracting(Problem::hint)
                .containsExactly(
                        "this makes a WAV of it: ffmpeg -i songs/song.mp3 songs/song-plain.wav",
                        "this makes a WAV of it: ffmpeg -i songs/song.mp3 songs/song-plain-3.wav");
    }

    @Test
    void refusesWhatIsNoSoundAtAll() throws IOException {
        assertThat(Samples.of(new byte[0]).said())
                .containsExactly("song.wav: error: the file is empty; save the song once more");
        assertThat(Samples.of("{\"duskloom\": 1}".getBytes(StandardCharsets.US_ASCII), "show.json", 8)
                        .said())
                .containsExactly(
                        "show.json: error: is JSON, not a sound; name the song itself: WAV, AIFF and AU are read");
        assertThat(Samples.of("duskloom".getBytes(StandardCharsets.US_ASCII), "show.txt", 8)
                        .said())
                .containsExactly("show.txt: error: is no sound that is known here; WAV, AIFF and AU are read;"
                        + " this makes a WAV of it: ffmpeg -i show.txt show.wav");
        assertThat(Samples.of("MThd".getBytes(StandardCharsets.US_ASCII)).said())
                .containsExactly(
                        "song.wav: error: is MIDI: notes, and not yet a sound; let a program play it into a WAV");
    }

    @Test
    void saysWhyThereIsNoFile() throws IOException {
        Files.write(folder.resolve("evening.wav"), new byte[1]);
        assertThat(opened(folder)).containsExactly("is a folder, not a sound; name the file inside it");
        assertThat(opened(folder.resolve("evenign.wav")))
                .containsExactly("there is no such file; did you mean \"evening.wav\"?");
        if (Files.exists(Path.of("/dev/null"))) {
            assertThat(opened(Path.of("/dev/null")))
                    .containsExactly("is a pipe or a device, not a file; save what it gives and name that file");
        }
    }

    @Test
    void readsAFile() throws IOException {
        Path file = Files.write(folder.resolve("a.wav"), WavBytes.of(8_000, 2, 1, t -> 0.5));
        try (SoundStream sound = SoundStream.open(file, "a.wav", problems).orElseThrow()) {
            assertThat(sound.format().declaredFrames()).hasValue(8_000);
            assertThat(sound.read(new double[2][10_000])).isEqualTo(8_000);
        }
        assertThat(problems.errorCount() + problems.warningCount()).isZero();
    }

    /** Pipes give what they have, often less than was asked for. */
    @Test
    void blocksAreFullHoweverTheBytesCome() throws IOException {
        byte[] file = WavBytes.of(8_000, 1, 0.1, t -> t);
        InputStream drops = new ByteArrayInputStream(file) {
            @Override
            public synchronized int read(byte[] into, int from, int count) {
                return super.read(into, from, Math.min(count, 7));
            }
        };
        try (SoundStream sound = SoundStream.open(drops, "-", problems).orElseThrow()) {
            assertThat(sound.read(new double[1][500])).isEqualTo(500);
            assertThat(sound.read(new double[1][500])).isEqualTo(300);
        }
    }

    @Test
    void tellsWhereReadingFailed() throws IOException {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("Input/output error");
            }
        };
        byte[] file = WavBytes.of(8_000, 1, 0.1, t -> t);
        InputStream half = new SequenceInputStream(new ByteArrayInputStream(Arrays.copyOf(file, 444)), broken);
        try (SoundStream sound = SoundStream.open(half, "song.wav", problems).orElseThrow()) {
            double[][] block = new double[1][100];
            while (sound.read(block) > 0) {
                assertThat(sound.failed()).isFalse();
            }
            assertThat(sound.failed()).isTrue();
        }
        assertThat(problems.inFileOrder())
                .extracting(Problem::toString)
                .containsExactly("song.wav: error: cannot be read on from byte 444: Input/output error");
    }

    private List<String> opened(Path file) {
        Problems said = new Problems();
        assertThat(SoundStream.open(file, "x.wav", said)).isEmpty();
        return said.inFileOrder().stream()
                .map(problem -> problem.message() + "; " + problem.hint())
                .toList();
    }

    private static byte[] aiff(String form, String compression, int bits, int samplesLength, byte[] data) {
        int extra = compression.isEmpty() ? 0 : 6;
        ByteBuffer file = ByteBuffer.allocate(12 + 8 + 18 + extra + 16 + data.length);
        file.put("FORM".getBytes(StandardCharsets.US_ASCII)).putInt(file.capacity() - 8);
        file.put(form.getBytes(StandardCharsets.US_ASCII));
        file.put("COMM".getBytes(StandardCharsets.US_ASCII)).putInt(18 + extra);
        file.putShort((short) 1).putInt(3).putShort((short) bits).put(hex("400eac44000000000000"));
        if (extra > 0) {
            file.put(compression.getBytes(StandardCharsets.US_ASCII)).putShort((short) 0);
        }
        file.put("SSND".getBytes(StandardCharsets.US_ASCII)).putInt(samplesLength);
        return file.putLong(0).put(data).array();
    }

    private static byte[] au(int coding, int rate, int channels, int length, byte[] data) {
        ByteBuffer file = ByteBuffer.allocate(28 + data.length);
        file.put(".snd".getBytes(StandardCharsets.US_ASCII)).putInt(28).putInt(length);
        return file.putInt(coding)
                .putInt(rate)
                .putInt(channels)
                .putInt(0)
                .put(data)
                .array();
    }

    private static byte[] hex(String digits) {
        return HexFormat.of().parseHex(digits.replace(" ", ""));
    }

    /** A hole of a file is as long as a song of 26 hours, and takes no room. */
    @Test
    void refusesALongerSoundThanAShowBeforeItIsRead() throws IOException {
        Path song = folder.resolve("day.wav");
        byte[] start = new WavBytes()
                .format(1, 1, 8_000, 8)
                .chunk("data", hours(26), new byte[0])
                .bytes();
        Files.write(song, start);
        assertThat(SoundStream.open(song, "day.wav", problems))
                .as("a header that lies")
                .isPresent();
        try (RandomAccessFile file = new RandomAccessFile(song.toFile(), "rw")) {
            file.setLength(start.length + hours(26));
        }
        assertThat(SoundStream.open(song, "day.wav", problems)).isEmpty();
        assertThat(problems.inFileOrder())
                .extracting(Problem::toString)
                .containsExactly(
                        "day.wav: error: the sound is longer than 25 hours; up to 25 hours are read; cut out what"
                                + " belongs to the show");
    }

    /** A pipe does not tell its length. */
    @Test
    void stopsInASoundThatDoesNotEnd() throws IOException {
        byte[] start = new WavBytes()
                .format(1, 1, 8_000, 8)
                .chunk("data", -1, new byte[0])
                .bytes();
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 0x80;
            }

            @Override
            public int read(byte[] into, int offset, int length) {
                return length;
            }
        };
        try (SoundStream sound = SoundStream.open(
                        new SequenceInputStream(new ByteArrayInputStream(start), endless), "standard input", problems)
                .orElseThrow()) {
            double[][] block = new double[1][1 << 16];
            long frames = 0;
            for (int count = sound.read(block); count > 0; count = sound.read(block)) {
                frames += count;
            }
            assertThat(sound.failed()).isTrue();
            assertThat(frames).isBetween(hours(25) - (1L << 16), (long) hours(25));
        }
        assertThat(problems.inFileOrder())
                .extracting(Problem::toString)
                .containsExactly(
                        "standard input: error: the sound is longer than 25 hours; up to 25 hours are read; cut"
                                + " out what belongs to the show");
    }

    private static int hours(int count) {
        return count * 3_600 * 8_000;
    }
}
