package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.film.PageFacts;
import org.duskloom.engine.film.PageKind;
import org.duskloom.engine.film.PageSound;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameRun;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clock of the page and the sound that it follows. */
class FilmSoundTest {
    /** {@code -Dfilm.sound.seconds=60} measures longer. */
    private static final int SECONDS = Integer.getInteger("film.sound.seconds", 6);

    @TempDir
    private Path folder;

    /**
     * Light and sound that are 40 ms apart pass for together: of ITU-R BT.1359-1, which finds 45 ms of sound before the
     * picture just noticed.
     */
    @Test
    void theShowStaysInStepWithItsSound() throws Exception {
        try (Browser browser = Browser.open()) {
            browser.show(film(0.5));
            assertThat(browser.value("document.getElementById('mute').hidden")).isEqualTo(false);
            browser.press(" ");
            Object measured = browser.await(
                    "const [seconds] = given; let most = 0; let count = 0; const begun = performance.now();"
                            + " while (performance.now() - begun < 1000 * (seconds + 1)) {"
                            + "  await new Promise(requestAnimationFrame);"
                            + "  const shown = player.clock.now();"
                            + "  if (player.clock.aheadOfSound() === null || shown < 1) continue;"
                            + "  most = Math.max(most, Math.abs(shown - document.getElementById('sound').currentTime - 0.5));"
                            + "  count++; }"
                            + " return [most, count, player.clock.now()];",
                    SECONDS);
            List<?> figures = (List<?>) measured;
            System.err.println("sound: at most " + figures.get(0) + " s apart in " + figures.get(1) + " frames");
            assertThat(((Number) figures.get(1)).intValue()).isGreaterThan(10 * (SECONDS - 2));
            assertThat(((Number) figures.get(0)).doubleValue()).isLessThan(0.040);
            assertThat(((Number) figures.get(2)).doubleValue()).isBetween(SECONDS - 0.5, SECONDS + 2.0);

            browser.press(" ");
            assertThat(browser.value("document.getElementById('sound').paused")).isEqualTo(true);
            browser.await("player.seekFrame(80);");
            assertThat(browser.number("document.getElementById('sound').currentTime"))
                    .isEqualTo(1.5);
            browser.press("m");
            assertThat(browser.value("document.getElementById('sound').muted")).isEqualTo(true);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private Path film(double soundStarts) throws IOException, InterruptedException {
        int length = SECONDS + 3;
        Path show = Garden.in(folder, length + "s");
        LoadedShow loaded = LoadedShow.load(show, new Problems()).orElseThrow();
        int[] all = new PixelChoice().pixels(loaded.show().groups());
        PageSound sound = new PageSound("audio/wav", tone(length), soundStarts);
        PageKind kind = new PageKind(
                PlayerPage.text(), new PageFacts(loaded.show(), all), Optional.of(sound), PageKind.MOST_BYTES);
        Path target = folder.resolve("film.html");
        try (FrameSink sink = kind.into(StagedFile.open(target, IfExists.REFUSE))) {
            FrameSpan span = new FrameSpan(0, loaded.frames().info().showFrames());
            new FrameRun(loaded.frames(), FrameList.of(span), 2).into(sink, Progress.SILENT);
        }
        return target;
    }

    /** RIFF WAVE, 16 bits, one channel, 8 kHz: a tone of 220 Hz. */
    private static byte[] tone(int seconds) {
        int samples = 8000 * seconds;
        ByteBuffer wav = ByteBuffer.allocate(44 + 2 * samples).order(ByteOrder.LITTLE_ENDIAN);
        wav.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 2 * samples);
        wav.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        wav.putShort((short) 1).putShort((short) 1).putInt(8000).putInt(16000);
        wav.putShort((short) 2).putShort((short) 16);
        wav.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * samples);
        for (int i = 0; i < samples; i++) {
            wav.putShort((short) (3000 * StrictMath.sin(2 * Math.PI * 220 * i / 8000)));
        }
        return wav.array();
    }
}
