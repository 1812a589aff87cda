package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clock of the page and the sound that it follows. */
class FilmSoundTest {
    /** {@code -Dfilm.sound.seconds=60} measures longer. */
    private static final int SECONDS = Integer.getInteger("film.sound.seconds", 6);

    /** Of the show and its sound: a busy machine takes its time. */
    private static final int LENGTH = SECONDS + 60;

    @TempDir
    private Path folder;

    /**
     * Light and sound that are 40 ms apart pass for together: of ITU-R BT.1359-1, which finds 45 ms of sound before the
     * picture just noticed.
     */
    @Test
    void theShowStaysInStepWithItsSound() throws Exception {
        try (Browser browser = Browser.open()) {
            Path film = folder.resolve("film.html");
            assertThat(Ran.with("film", show(), "-o", film).code()).isZero();
            browser.show(film);
            assertThat(browser.value("document.getElementById('mute').hidden")).isEqualTo(false);
            browser.press(" ");
            assertInStep(measured(browser, "document.getElementById('sound').currentTime + 0.5"));

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

    /** The same on a page that is served; the sound is replaced and moved while it plays. */
    @Test
    void theShowThatIsWatchedStaysInStepToo() throws Exception {
        Path show = show();
        try (Browser browser = Browser.open();
                Watching watching = Watching.of(show)) {
            browser.go(watching.address());
            browser.when("player.lastFilm && player.clock.sound && player.clock.sound.readyState > 2");
            assertThat(browser.value("document.getElementById('mute').hidden")).isEqualTo(false);
            browser.press(" ");
            assertInStep(measured(browser, "player.clock.sound.currentTime + 0.5"));

            String text = Files.readString(show);
            Files.writeString(show, text.replace("\"500ms\"", "\"1500ms\""));
            browser.when("player.clock.soundStarts === 1.5");
            assertThat(browser.number("live.soundNumber")).isEqualTo(1);
            browser.await("player.seekFrame(0); await new Promise((done) => setTimeout(done, 2500));");
            assertThat(browser.number("Math.abs(player.clock.now() - player.clock.sound.currentTime - 1.5)"))
                    .isLessThan(0.040);

            Files.write(folder.resolve("song.wav"), tone(330));
            browser.when("live.soundNumber === 3 && player.clock.sound && player.clock.sound.currentTime > 0");
            browser.await("await new Promise((done) => setTimeout(done, 500));");
            assertThat(browser.number("Math.abs(player.clock.now() - player.clock.sound.currentTime - 1.5)"))
                    .isLessThan(0.040);
            assertThat(browser.value("player.clock.running")).isEqualTo(true);

            Files.writeString(show, text.replaceFirst("\"sound\": \\{.*?},", ""));
            browser.when("player.clock.sound === null");
            assertThat(browser.value("document.getElementById('mute').hidden")).isEqualTo(true);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** The most that the show is from the sound, how often that was looked at, and how fast time went. */
    private static List<?> measured(Browser browser, String heard) {
        List<?> figures = (List<?>) browser.await(
                "const [seconds] = given; let most = 0; let count = 0; const begun = performance.now();"
                        + " const from = player.clock.now();"
                        + " while (performance.now() - begun < 1000 * (seconds + 1)) {"
                        + "  await new Promise(requestAnimationFrame);"
                        + "  const shown = player.clock.now();"
                        + "  if (player.clock.aheadOfSound() === null || shown < 1) continue;"
                        + "  most = Math.max(most, Math.abs(shown - (" + heard + ")));"
                        + "  count++; }"
                        + " return [most, count, (player.clock.now() - from) / (performance.now() - begun) * 1000];",
                SECONDS);
        System.err.println("sound: at most " + figures.get(0) + " s apart in " + figures.get(1) + " frames");
        return figures;
    }

    private static void assertInStep(List<?> figures) {
        assertThat(((Number) figures.get(1)).intValue()).isGreaterThan(10 * (SECONDS - 2));
        assertThat(((Number) figures.get(0)).doubleValue()).isLessThan(0.040);
        assertThat(((Number) figures.get(2)).doubleValue()).isBetween(0.9, 1.1);
    }

    /** Whose sound begins half a second after it. */
    private Path show() throws IOException {
        Path show = Garden.in(folder, LENGTH + "s");
        Files.write(folder.resolve("song.wav"), tone(220));
        String sound = "\"sound\": {\"file\": \"song.wav\", \"starts\": \"500ms\"}, ";
        return Files.writeString(show, Files.readString(show).replace("\"rate\"", sound + "\"rate\""));
    }

    private static byte[] tone(int hertz) {
        return WavFile.of(LENGTH, second -> 3000 * StrictMath.sin(2 * Math.PI * hertz * second));
    }
}
