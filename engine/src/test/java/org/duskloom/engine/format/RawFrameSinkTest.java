package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Random;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RawFrameSinkTest {
    @TempDir
    private Path folder;

    /** Raw rgb24 has no header and no padding: the bytes 00 to 0B are two frames of 2 by 1 pixels (ffmpeg's rawvideo). */
    @Test
    void writesFrameAfterFrameWithoutAnythingElse() throws IOException {
        Path target = folder.resolve("frames.rgb");
        try (RawFrameSink sink = new RawFrameSink(StagedFile.open(target, IfExists.REFUSE), 40, 2)) {
            sink.frame(40, new byte[] {0, 1, 2, 3, 4, 5});
            sink.frame(41, new byte[] {6, 7, 8, 9, 10, 11});
            sink.finish();
            assertThat(sink.frames()).isEqualTo(2);
        }
        assertThat(target).hasBinaryContent(new byte[] {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11});
    }

    /** FIPS 180-2, appendix B.1 (from memory): the SHA-256 of "abc", which makes one pixel. */
    @Test
    void hashesAsPublished() throws IOException {
        try (RawFrameSink sink = new RawFrameSink(open(), 0, 1)) {
            sink.frame(0, "abc".getBytes(StandardCharsets.US_ASCII));
            assertThatThrownBy(sink::sha256Hex).isInstanceOf(IllegalStateException.class);
            sink.finish();
            assertThat(sink.sha256Hex()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        }
    }

    /** The SHA-256 of no bytes at all: NIST's algorithm validation vectors, length 0 (from memory). */
    @Test
    void hashesNothingAsPublished() throws IOException {
        try (RawFrameSink sink = new RawFrameSink(open(), 0, 1)) {
            sink.finish();
            assertThat(sink.sha256Hex()).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
        }
    }

    @Test
    void hashesWhatIsInTheFile() throws Exception {
        Path target = folder.resolve("frames.rgb");
        Random random = new Random(7);
        String hash;
        try (RawFrameSink sink = new RawFrameSink(StagedFile.open(target, IfExists.REFUSE), 0, 854)) {
            byte[] frame = new byte[3 * 854];
            for (long n = 0; n < 300; n++) {
                random.nextBytes(frame);
                sink.frame(n, frame);
            }
            sink.finish();
            hash = sink.sha256Hex();
        }
        byte[] whole = Files.readAllBytes(target);
        assertThat(whole).hasSize(300 * 3 * 854);
        assertThat(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(whole)))
                .isEqualTo(hash);
    }

    @Test
    void refusesFramesThatDoNotFollow() throws IOException {
        try (RawFrameSink sink = new RawFrameSink(open(), 10, 1)) {
            byte[] frame = new byte[3];
            assertThatThrownBy(() -> sink.frame(0, frame)).isInstanceOf(IllegalArgumentException.class);
            sink.frame(10, frame);
            assertThatThrownBy(() -> sink.frame(12, frame)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> sink.frame(11, new byte[6])).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    private StagedFile open() throws IOException {
        return StagedFile.open(folder.resolve("frames.rgb"), IfExists.REFUSE);
    }
}
