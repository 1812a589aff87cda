package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Frames as other programs read them. Each test is left out where its program is not installed. */
class OutsideReadersTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void render() throws IOException {
        Ran ran = Ran.with("render", Garden.in(folder), "-o", folder.resolve("out"), "--as", "rgb,npy");
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    /** ffmpeg's rawvideo demuxer takes rgb24 as it is: read and written again, the bytes are the same. */
    @Test
    void ffmpegReadsRawFrames() throws Exception {
        Installed.require("ffmpeg", "-version");
        Path again = folder.resolve("again.rgb");
        run(
                "ffmpeg",
                "-v",
                "error",
                "-f",
                "rawvideo",
                "-pixel_format",
                "rgb24",
                "-video_size",
                Garden.PIXELS + "x1",
                "-framerate",
                "40",
                "-i",
                folder.resolve("out/frames.rgb").toString(),
                "-f",
                "rawvideo",
                "-pix_fmt",
                "rgb24",
                again.toString());
        assertThat(again).hasSameBinaryContentAs(folder.resolve("out/frames.rgb"));
    }

    /** NumPy finds type, shape and order in the header, and the bytes of the raw frames behind it. */
    @Test
    void numPyReadsArrays() throws Exception {
        Installed.require("python3", "-c", "import numpy");
        Path again = folder.resolve("again.rgb");
        String script = """
                import sys, numpy
                frames = numpy.load(sys.argv[1])
                assert frames.dtype == numpy.uint8 and frames.flags['C_CONTIGUOUS'], frames.dtype
                assert frames.shape == (%d, %d, 3), frames.shape
                frames.tofile(sys.argv[2])
                """.formatted(Garden.FRAMES, Garden.PIXELS);
        run("python3", "-c", script, folder.resolve("out/frames.npy").toString(), again.toString());
        assertThat(again).hasSameBinaryContentAs(folder.resolve("out/frames.rgb"));
    }

    private void run(String... command) throws Exception {
        File said = folder.resolve("said").toFile();
        Process process = new ProcessBuilder(List.of(command))
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(said.toPath())).isZero();
    }
}
