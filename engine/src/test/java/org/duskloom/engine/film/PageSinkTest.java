package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page holds, read by rules of its own. */
class PageSinkTest {
    private static final int FRAMES = 100;
    private static final int PIXELS = 4;
    private static final PageText PAGE =
            new PageText("head<!-- policy --><!-- end of policy -->" + "<!-- film -->small<!-- end of film -->foot");
    private static final Pattern PIECE = Pattern.compile(
            "<script type=\"text/plain\" class=\"piece\" data-first=\"(\\d+)\" data-frames=\"(\\d+)\" data-crc=\"(\\d+)\">"
                    + "([^<]*)</script>");

    @TempDir
    private Path folder;

    private Show show;

    @BeforeEach
    void read() throws IOException {
        Files.writeString(folder.resolve("display.json"), """
                {"duskloom": "display/1", "units": "cm",
                 "shapes": {"post": {"build": [{"line": {"from": [0, 0], "to": [0, 10], "count": 2}}],
                                     "parts": {"top": "2"}}},
                 "props": [{"name": "left", "shape": "post", "at": [-30, 0]}, {"name": "right", "shape": "post", "at": [50, 4]}],
                 "ports": [{"name": "shed", "chain": ["right", {"skip": 1}, "left/top"], "universe": 7, "slot": 11}]}
                """);
        Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "title": "Dusk", "display": "display.json", "rate": 40, "length": "2500ms",
                 "layers": [{"name": "ground", "cues": [
                   {"at": "500ms", "for": "1s", "on": "left", "effect": "wash", "name": "first"},
                   {"at": "1s", "on": "right", "effect": "wash"}]}]}
                """);
        show = ShowReader.read(folder.resolve("show.json"), new Problems()).orElseThrow();
    }

    @Test
    void theFramesAreThoseOfTheRun() throws Exception {
        String page = page(new FrameSpan(0, FRAMES), PageKind.MOST_BYTES);
        List<MatchResult> pieces = PIECE.matcher(page).results().toList();
        assertThat(pieces).hasSizeGreaterThan(2);
        int next = 0;
        for (MatchResult piece : pieces) {
            int frames = Integer.parseInt(piece.group(2));
            assertThat(Integer.parseInt(piece.group(1))).isEqualTo(next);
            byte[] series = inflated(piece.group(4));
            CRC32 crc = new CRC32();
            crc.update(series);
            assertThat(crc.getValue()).isEqualTo(Long.parseLong(piece.group(3)));
            for (int frame = 0; frame < frames; frame++) {
                for (int value = 0; value < 3 * PIXELS; value++) {
                    int row = (value % 3 * PIXELS + value / 3) * frames;
                    int sum = IntStream.rangeClosed(0, frame)
                            .map(i -> series[row + i])
                            .sum();
                    assertThat((byte) sum).isEqualTo(code(next + frame, value));
                }
            }
            next += frames;
        }
        assertThat(next).isEqualTo(FRAMES);
        assertThat(page)
                .startsWith("head<meta http-equiv=\"Content-Security-Policy\"")
                .endsWith("foot");
    }

    /** Also of films with few frames, which threads share among them. */
    @Test
    void howManyThreadsThereWereCannotBeSeen() throws Exception {
        for (int frames : new int[] {1, 5, 40, FRAMES}) {
            Set<String> pages = new HashSet<>();
            for (int threads = 1; threads <= 8; threads++) {
                FrameList span = FrameList.of(new FrameSpan(0, frames));
                Path page = Films.made(kind(PageKind.MOST_BYTES), source(), span, threads, folder);
                pages.add(Files.readString(page, StandardCharsets.UTF_8));
            }
            assertThat(pages).as("%d frames", frames).hasSize(1);
        }
    }

    @Test
    void theFactsAreThoseOfTheShow() throws Exception {
        String page = page(new FrameSpan(8, FRAMES), PageKind.MOST_BYTES);
        assertThat(page)
                .contains("\"title\": \"Dusk\"")
                .contains("\"rate\": [40, 1]")
                .contains("\"firstFrame\": 8,")
                .contains("\"frames\": 92,")
                .contains("\"units\": \"cm\"")
                .contains("{\"name\": \"first\", \"from\": 20, \"to\": 60}")
                .contains("{\"name\": \"wash\", \"from\": 40, \"to\": 100}")
                .contains("{\"path\": \"top\", \"runs\": [2, 1]}")
                .contains("\"ports\": [\"shed\"]")
                .contains("\"centre\": [10.0, 7.0, 0.0]");
    }

    /** Columns of four bytes: from the middle, prop, number, port, universe, slot. */
    @Test
    void theTableSaysWhatIsKnownOfEachPixel() throws Exception {
        String page = page(new FrameSpan(0, 1), PageKind.MOST_BYTES);
        String packed = page.replaceAll("(?s).*id=\"table\">([^<]*)<.*", "$1");
        ByteBuffer table = ByteBuffer.wrap(inflated(packed)).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(floats(table)).containsExactly(-40f, -40f, 40f, 40f);
        assertThat(floats(table)).containsExactly(-7f, 3f, -3f, 7f);
        assertThat(floats(table)).containsOnly(0f);
        assertThat(ints(table)).containsExactly(0, 0, 1, 1);
        assertThat(ints(table)).containsExactly(1, 2, 1, 2);
        assertThat(ints(table)).containsExactly(-1, 0, 0, 0);
        assertThat(ints(table)).containsExactly(0, 7, 7, 7);
        // The first two pixels and the one that stays dark take three slots each.
        assertThat(ints(table)).containsExactly(0, 20, 11, 14);
        assertThat(table.hasRemaining()).isFalse();
    }

    @Test
    void aFilmThatIsTooLongLeavesNothing() throws Exception {
        long whole = page(new FrameSpan(0, FRAMES), PageKind.MOST_BYTES).length();
        Files.delete(folder.resolve("film.html"));
        assertThatThrownBy(() -> page(new FrameSpan(0, FRAMES), whole - 10))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageMatching("a page holds at most 0 MB, and this film would take more: about [12] s of it fit;"
                        + " take a part with --from and --to, fewer pixels with --on, or --every 2");
        assertThat(folder.resolve("film.html")).doesNotExist();
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("display.json", "show.json");
    }

    /** Found out from some of its frames, before anything is written; a film that just fits is not refused. */
    @Test
    void aFilmThatIsFarTooLongIsNotBegun() throws Exception {
        FrameList all = FrameList.of(new FrameSpan(0, FRAMES));
        long pieces = PIECE.matcher(page(new FrameSpan(0, FRAMES), PageKind.MOST_BYTES))
                .results()
                .mapToLong(piece -> piece.group(4).length())
                .sum();
        PageEstimate.requireFits(source(), all, kind(pieces));
        assertThatThrownBy(() -> PageEstimate.requireFits(source(), all, kind(pieces / 2)))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessageMatching("a page holds at most 0 MB, and this film would take more: about [01] s of it fit;"
                        + " take a part with --from and --to, fewer pixels with --on, or --every 2");
        PageKind withSound = new PageKind(
                PAGE,
                new PageFacts(show, new int[] {0, 1, 2, 3}),
                Optional.of(new PageSound("audio/wav", new byte[2000], 0)),
                2600);
        assertThatThrownBy(() -> PageEstimate.requireFits(source(), all, withSound))
                .hasMessageContaining("the sound alone takes more");
    }

    private PageKind kind(long mostBytes) {
        return new PageKind(PAGE, new PageFacts(show, new int[] {0, 1, 2, 3}), Optional.empty(), mostBytes);
    }

    private String page(FrameSpan span, long mostBytes) throws Exception {
        return Files.readString(
                Films.made(kind(mostBytes), source(), FrameList.of(span), folder), StandardCharsets.UTF_8);
    }

    private FrameSource source() {
        RunInfo info = RunInfo.ofWhole("Dusk", show.timeline().rate(), FRAMES, FramePixels.of(show.map()));
        return new FrameSource() {
            @Override
            public RunInfo info() {
                return info;
            }

            @Override
            public FrameReader reader() {
                return (frame, rgb, offset) -> {
                    for (int value = 0; value < 3 * PIXELS; value++) {
                        rgb[offset + value] = code(frame, value);
                    }
                };
            }
        };
    }

    private static byte code(long frame, int value) {
        return (byte) (frame * frame * 7 + 31L * value * (frame % 5));
    }

    private static byte[] inflated(String base64) throws IOException {
        ByteArrayInputStream in = new ByteArrayInputStream(Base64.getDecoder().decode(base64));
        try (InflaterInputStream bytes = new InflaterInputStream(in, new Inflater(true))) {
            return bytes.readAllBytes();
        }
    }

    private static List<Float> floats(ByteBuffer table) {
        List<Float> column = new ArrayList<>();
        for (int i = 0; i < PIXELS; i++) {
            column.add(table.getFloat());
        }
        return column;
    }

    private static List<Integer> ints(ByteBuffer table) {
        List<Integer> column = new ArrayList<>();
        for (int i = 0; i < PIXELS; i++) {
            column.add(table.getInt());
        }
        return column;
    }
}
