package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinds of output by their words, and frames that must come one after the other. */
class OutputRegistryTest {
    private static final OutputRegistry KINDS =
            new OutputRegistry(List.of(new RgbKind(), new NpyKind(), new SinglesKind()));

    private static String words(String text) throws TextFormatException {
        return String.join(" ", KINDS.parse(text).stream().map(OutputKind::word).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rgb           | rgb
            npy,rgb       | npy rgb
            ' rgb , npy ' | rgb npy
            singles,rgb,npy | singles rgb npy
            """)
    void readsWordsInTheirOrder(String text, String words) throws TextFormatException {
        assertThat(words(text)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rgbb     | "rgbb" is no kind of output | did you mean "rgb"? allowed: rgb, npy, singles
            RGB      | "RGB" is no kind of output  | did you mean "rgb"?
            rgb,,npy | "" is no kind of output     | allowed: rgb, npy, singles
            mp4      | "mp4" is no kind of output  | allowed: rgb, npy, singles
            npy,npy  | "npy" stands twice          | ''
            """)
    void refusesOthers(String text, String message, String hint) {
        assertThatThrownBy(() -> words(text)).isInstanceOfSatisfying(TextFormatException.class, fault -> {
            assertThat(fault).hasMessage(message);
            assertThat(fault.hint()).startsWith(hint);
        });
    }

    @Test
    void hasEachWordOnce() {
        List<RgbKind> twins = List.of(new RgbKind(), new RgbKind());
        assertThatThrownBy(() -> new OutputRegistry(twins)).hasMessage("two kinds of output are called rgb");
        assertThat(KINDS.kind("npy")).isInstanceOf(NpyKind.class);
        assertThatThrownBy(() -> KINDS.kind("mp4")).isInstanceOf(IllegalArgumentException.class);
    }

    /** What joins shards asks which kind a file is of. */
    @Test
    void knowsHowFilesArePutTogether() {
        assertThat(KINDS.seam("frames.rgb")).containsInstanceOf(Seam.Bodies.class);
        assertThat(KINDS.seam("frames/")).containsInstanceOf(Seam.Singles.class);
        assertThat(KINDS.seam("strip.png")).isEmpty();
        assertThat(KINDS.wordsOf(List.of(
                        new WrittenFile("frames.npy", 1),
                        new WrittenFile("strip.png", 1),
                        new WrittenFile("frames.rgb", 1))))
                .containsExactly("rgb", "npy");
    }

    private static RunInfo run(long first, long end) {
        return RunInfo.ofWhole("show", FrameRate.of(40), 100, FramePixels.unnamed(2))
                .only(FrameList.of(new FrameSpan(first, end)));
    }

    @Test
    void framesComeOneAfterTheOther() {
        Continuity continuity = new Continuity(run(5, 8));
        continuity.check(FrameBatch.of(5, new byte[6]));
        continuity.check(FrameBatch.of(6, new byte[6]));
        assertThatThrownBy(() -> continuity.check(FrameBatch.of(8, new byte[6])))
                .hasMessage("frame 8 of 6 bytes, expected 7 of 6");
        assertThatThrownBy(() -> continuity.check(FrameBatch.of(6, new byte[6])))
                .hasMessage("frame 6 of 6 bytes, expected 7 of 6");
        assertThatThrownBy(continuity::checkComplete).hasMessage("2 frames of 3");
        continuity.check(FrameBatch.of(7, new byte[6]));
        continuity.checkComplete();
    }

    /** A batch of several frames is all of them. */
    @Test
    void countsEveryFrameOfABatch() throws Exception {
        Continuity continuity = new Continuity(run(5, 8));
        continuity.check(FrameBatch.of(FrameList.of(5, 6), 6, (frame, rgb, offset) -> {}));
        assertThatThrownBy(continuity::checkComplete).hasMessage("2 frames of 3");
        continuity.check(FrameBatch.of(7, new byte[6]));
        continuity.checkComplete();
    }

    @Test
    void framesHaveTheSizeOfTheRun() {
        Continuity continuity = new Continuity(run(0, 3));
        assertThatThrownBy(() -> continuity.check(FrameBatch.of(0, new byte[3])))
                .hasMessage("frame 0 of 3 bytes, expected 0 of 6");
    }

    /** Who reads plain bytes could not know which frames are left out. */
    @Test
    void noFramesAreLeftOut() {
        RunInfo some = RunInfo.ofWhole("show", FrameRate.of(40), 100, FramePixels.unnamed(2))
                .only(FrameList.of(1, 2, 4));
        assertThatThrownBy(() -> new Continuity(some)).isInstanceOf(IllegalArgumentException.class);
    }

    /** NIST, FIPS 180-2, appendix B.1: the SHA-256 of "abc". */
    @Test
    void digestsAllFrames() throws Exception {
        DigestSink digest = new DigestSink();
        assertThatThrownBy(digest::sha256Hex).isInstanceOf(IllegalStateException.class);
        digest.take(FrameBatch.of(0, new byte[] {'a', 'b', 'c'}));
        digest.finish();
        assertThat(digest.sha256Hex()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    /** NumPy Enhancement Proposal 1: magic, version 1.0, the length of what follows, a line end at a multiple of 64. */
    @ParameterizedTest
    @CsvSource({"1, 128", "99, 128"})
    void headersAreAligned(long frames, int bytes) {
        byte[] header = NpyHeader.of(run(0, frames));
        assertThat(header)
                .hasSize(bytes)
                .startsWith(0x93, 'N', 'U', 'M', 'P', 'Y', 1, 0)
                .endsWith('\n');
        assertThat((header[8] & 255) | (header[9] & 255) << 8).isEqualTo(bytes - 10);
        assertThat(new String(header, StandardCharsets.US_ASCII)).contains("'shape': (" + frames + ", 2, 3)");
        assertThat(header.length % 64).isZero();
    }
}
