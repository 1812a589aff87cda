package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SinglesKindTest {
    @TempDir
    private Path folder;

    @Test
    void everyFrameIsAFile() throws IOException {
        write(IfExists.REFUSE, 8, 11);
        assertThat(namesIn(folder)).containsExactly("frames");
        assertThat(namesIn(folder.resolve("frames"))).containsExactly("00000008.rgb", "00000009.rgb", "00000010.rgb");
        assertThat(folder.resolve("frames/00000009.rgb")).hasBinaryContent(new byte[] {9, 1, 2});
    }

    /** Frames of a longer run that stood there do not stay among the new ones. */
    @Test
    void aShorterRunReplacesALongerOne() throws IOException {
        write(IfExists.REFUSE, 0, 40);
        write(IfExists.REPLACE, 0, 2);
        assertThat(namesIn(folder.resolve("frames"))).containsExactly("00000000.rgb", "00000001.rgb");
    }

    /** Whatever else somebody keeps in a folder of that name would be lost. */
    @Test
    void aFolderOfOtherThingsIsNotReplaced() throws IOException {
        Path diary = Files.writeString(
                Files.createDirectory(folder.resolve("frames")).resolve("diary.txt"), "midsummer");
        assertThatThrownBy(() -> write(IfExists.REPLACE, 0, 2)).isInstanceOf(IOException.class);
        assertThat(diary).hasContent("midsummer");
    }

    @Test
    void aRunThatFailsLeavesNothing() throws IOException {
        OutputFolder out = new OutputFolder(folder, IfExists.REFUSE, target -> {});
        try (out;
                FrameSink sink = new SinglesKind().open(out)) {
            sink.begin(run(0, 3));
            sink.frame(0, new byte[3]);
            assertThatThrownBy(sink::finish).isInstanceOf(IllegalStateException.class);
        }
        assertThat(namesIn(folder)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 00000000.rgb", "99999999, 99999999.rgb", "100000000, 100000000.rgb", "68719476735, 68719476735.rgb"
    })
    void namesHaveEightDigitsOrMore(long frame, String name) {
        assertThat(SinglesSink.fileName(frame)).isEqualTo(name);
    }

    private void write(IfExists ifExists, long first, long end) throws IOException {
        OutputFolder out = new OutputFolder(folder, ifExists, target -> {});
        try (out;
                FrameSink sink = new SinglesKind().open(out)) {
            sink.begin(run(first, end));
            for (long frame = first; frame < end; frame++) {
                sink.frame(frame, new byte[] {(byte) frame, 1, 2});
            }
            sink.finish();
            assertThat(((RecordedSink) sink).written()).containsExactly(new WrittenFile("frames/", 3 * (end - first)));
            out.publish();
        }
    }

    private static RunInfo run(long first, long end) {
        return RunInfo.ofWhole("", FrameRate.of(40), end, FramePixels.unnamed(1))
                .only(FrameList.of(new FrameSpan(first, end)));
    }
}
