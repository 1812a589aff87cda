package org.duskloom.engine.shard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.RgbKind;
import org.duskloom.engine.format.SinglesKind;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A folder whose manifest is written here by hand: four frames of two pixels, one file and one folder of frames. */
class ShardTest {
    private static final OutputRegistry KINDS = new OutputRegistry(List.of(new RgbKind(), new SinglesKind()));
    private static final String MANIFEST = """
            {
              "duskloom": "frames/1", "version": "9.9", "title": "dusk", "rate": {"num": 40, "den": 1},
              "frames": 4, "pixels": 2, "order": "RGB", "encoding": "srgb", "sha256": "%s",
              "firstFrame": 2, "showFrames": 9,
              "files": [{"file": "frames.rgb", "bytes": 24}, {"file": "frames/", "bytes": 24}],
              "props": [{"name": "fence", "first": 0, "count": 2}],
              "inputs": [{"file": "my show.json", "sha256": "%s"}]
            }
            """.formatted("ab".repeat(32), "cd".repeat(32));

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    @BeforeEach
    void writeFrames() throws IOException {
        write("a", MANIFEST);
    }

    private Path write(String name, String manifest) throws IOException {
        Path shard = Files.createDirectories(folder.resolve(name));
        Files.writeString(shard.resolve("frames.json"), manifest);
        Files.write(shard.resolve("frames.rgb"), new byte[24]);
        Files.createDirectories(shard.resolve("frames"));
        for (int frame = 2; frame < 6; frame++) {
            Files.write(shard.resolve("frames/" + frame + ".rgb"), new byte[6]);
        }
        return shard;
    }

    private Optional<Shard> read(String name) {
        return Shard.in(folder.resolve(name), problems);
    }

    private List<String> told() {
        return problems.inFileOrder().stream()
                .map(problem -> problem.toString().replace(folder + "/", ""))
                .toList();
    }

    @Test
    void holdsWhatItsManifestSays() {
        Shard shard = read("a").orElseThrow();
        assertThat(shard.frames().first()).isEqualTo(2);
        assertThat(shard.frames().last()).isEqualTo(5);
        assertThat(shard.bytes("frames.rgb")).isEqualTo(24);
        assertThat(shard.bytes("frames.npy")).isZero();
        assertThat(shard.path("frames.rgb")).exists();
        assertThat(shard.location()).hasToString(folder.resolve("a/frames.json").toString());
        assertThat(told()).isEmpty();
    }

    /** Whoever copied shards from machine to machine wants to know of all that came over badly, at once. */
    @Test
    void saysOfEachFileWhatIsWrong() throws IOException {
        Files.delete(folder.resolve("a/frames.rgb"));
        Files.write(folder.resolve("a/frames/3.rgb"), new byte[7]);
        assertThat(read("a")).isEmpty();
        assertThat(told())
                .containsExactly(
                        "a/frames: error: it has 25 bytes, and frames.json beside it says 24; it was changed or cut"
                                + " short; render this shard again",
                        "a/frames.rgb: error: there is no such file, and frames.json beside it speaks of it; render"
                                + " this shard again");
    }

    /** A name with a slash behind it is a folder, and one without is none. */
    @Test
    void tellsFilesAndFoldersApart() throws IOException {
        Path singles = folder.resolve("a/frames");
        for (int frame = 2; frame < 6; frame++) {
            Files.delete(singles.resolve(frame + ".rgb"));
        }
        Files.delete(singles);
        Files.write(singles, new byte[24]);
        Files.delete(folder.resolve("a/frames.rgb"));
        Files.createDirectory(folder.resolve("a/frames.rgb"));
        assertThat(read("a")).isEmpty();
        assertThat(told())
                .containsExactly(
                        "a/frames: error: it is a file, and frames.json beside it speaks of a folder; render this"
                                + " shard again",
                        "a/frames.rgb: error: it is a folder, and frames.json beside it speaks of a file; render this"
                                + " shard again");
    }

    /** Twice as many bytes as there are would be looked for. */
    @Test
    void aFileIsListedOnce() throws IOException {
        write("a", MANIFEST.replace("\"frames/\"", "\"frames.rgb\""));
        assertThat(read("a")).isEmpty();
        assertThat(told())
                .containsExactly("a/frames.json: error: \"frames.rgb\" is listed twice; render this shard again");
    }

    /** Each in one way only, and each told with what is here and what is there. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "num": 40        | "num": 25        | the rate is 25 here and 40 there
            "showFrames": 9  | "showFrames": 8  | the number of frames of the show is 8 here and 9 there
            "name": "fence"  | "name": "pond"   | the props are others
            "version": "9.9" | "version": "9.8" | the version of duskloom is 9.8 here and 9.9 there
            "title": "dusk"  | "title": "dawn"  | the title is "dawn" here and "dusk" there
            my show.json     | garden.json      | "garden.json" was read for one of them only
            cdcd             | cdce             | "my show.json" had other bytes
            """)
    void isToldFromAShardOfAnotherRendering(String written, String other, String difference) throws IOException {
        write("b", MANIFEST.replaceFirst(written, other).replace("\"firstFrame\": 2", "\"firstFrame\": 4"));
        List<Shard> both = List.of(read("a").orElseThrow(), read("b").orElseThrow());
        assertThat(Shards.of(both, KINDS, problems)).isEmpty();
        assertThat(told())
                .contains("b/frames.json: error: this is a shard of another rendering than a: " + difference
                        + "; leave it out, or render it again")
                .hasSize(difference.contains("one of them") ? 2 : 1);
    }

    /** The order is that of what is missing, and a shell takes a name with a blank for one word. */
    @Test
    void saysHowToMakeWhatIsMissing() {
        assertThat(Shards.of(List.of(read("a").orElseThrow()), KINDS, problems)).isEmpty();
        assertThat(told()).containsExactly(missing("0..2", "shard-0"), missing("6..9", "shard-6"));
    }

    private static String missing(String frames, String into) {
        return "my show.json: error: frames " + frames + " are in no shard: a; where that file is, this makes them:"
                + " duskloom render \"my show.json\" -o " + into + " --frames " + frames + " --as rgb,singles";
    }

    /** Forty folders are no help in a message; how many there are is. */
    @Test
    void countsShardsWhereTheirNamesAreTooMany() throws IOException {
        List<Shard> shards = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String name = "machine-in-the-shed-" + i;
            write(
                    name,
                    MANIFEST.replace(
                            "\"firstFrame\": 2, \"showFrames\": 9",
                            "\"firstFrame\": " + 4 * i + ", \"showFrames\": 161"));
            shards.add(read(name).orElseThrow());
        }
        assertThat(Shards.of(shards, KINDS, problems)).isEmpty();
        assertThat(told()).singleElement().asString().contains("frames 160..161 are in no shard: 40 shards; ");
    }
}
