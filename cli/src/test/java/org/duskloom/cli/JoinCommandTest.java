package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code render --shard} and {@code join}: 80 frames, two universes. */
class JoinCommandTest {
    private static final String ALL = "rgb,npy,singles,ports,packets";
    private static final int FRAMES = 80;

    @TempDir
    private Path folder;

    private Path show;

    @BeforeEach
    void writeShow() throws IOException {
        show = WiredGarden.show(folder.resolve("garden"), 200, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
    }

    private void render(String name, String kinds, Object... more) {
        List<Object> arguments = new ArrayList<>(List.of("render", show, "-o", folder.resolve(name), "--as", kinds));
        arguments.addAll(List.of(more));
        Ran ran = Ran.with(arguments.toArray());
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    private Ran join(String whole, String... shards) {
        List<Object> arguments = new ArrayList<>(List.of("join", "-o", folder.resolve(whole)));
        Stream.of(shards).map(folder::resolve).forEach(arguments::add);
        return Ran.with(arguments.toArray()).without(folder);
    }

    /** All files of a folder by their names, their bytes as text of one byte a character. */
    private Map<String, String> contents(String name) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(
                        folder.resolve(name).relativize(file).toString(),
                        Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    /** Cut anywhere, given in any order: the same files as of one run, with the same bytes, the manifest too. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void randomShardsMakeTheWhole(long seed) throws IOException {
        render("whole", ALL);
        Random random = new Random(seed);
        TreeSet<Integer> cuts = new TreeSet<>(List.of(0, FRAMES));
        for (int i = random.nextInt(6); i >= 0; i--) {
            cuts.add(1 + random.nextInt(FRAMES - 1));
        }
        List<String> shards = new ArrayList<>();
        for (int from : cuts.headSet(FRAMES)) {
            shards.add("shard-" + from);
            render("shard-" + from, ALL, "--frames", from + ".." + cuts.higher(from));
        }
        Collections.shuffle(shards, random);
        Ran ran = join("joined", shards.toArray(String[]::new));
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("joined: " + shards.size() + " shards, 80 frames, ");
        assertThat(contents("joined")).hasSize(FRAMES + 6).isEqualTo(contents("whole"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rgb", "npy", "singles"})
    void everyKindOfFramesIsJoinedByItself(String kind) throws IOException {
        render("whole", kind);
        for (int i = 1; i <= 3; i++) {
            render("s" + i, kind, "--shard", i + "/3");
        }
        assertThat(join("joined", "s1", "s2", "s3").code()).isZero();
        assertThat(contents("joined")).isEqualTo(contents("whole"));
    }

    @Test
    void missingFoldersAreMade() throws IOException {
        render("shard", "rgb");
        Ran ran = join("new/and/deep/whole", "shard");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(contents("new/and/deep/whole")).isEqualTo(contents("shard"));
    }

    @Test
    void aSingleShardMayBeTheWhole() throws IOException {
        render("whole", ALL, "--shard", "1/1");
        assertThat(join("joined", "whole").err()).startsWith("joined: 1 shard, 80 frames, ");
        assertThat(contents("joined")).isEqualTo(contents("whole"));
    }

    @Test
    void picturesAreNotJoinedAndThatIsTold() {
        render("s1", "rgb", "--shard", "1/2", "--strip", "--tiles");
        render("s2", "rgb", "--shard", "2/2");
        Ran ran = join("joined", "s1", "s2");
        assertThat(ran.code()).isZero();
        assertThat(ran.err())
                .contains("strip.png is a picture of one shard, and is not joined; 'duskloom strip' draws the whole")
                .contains("time/ has pictures of one shard, which are not joined; 'duskloom render --tiles' draws the"
                        + " whole\n");
        assertThat(folder.resolve("joined/strip.png")).doesNotExist();
    }

    /** The command that is told makes what is missing. */
    @Test
    void whatIsMissingIsNamedAndMade() throws IOException {
        render("whole", "rgb,npy");
        render("s1", "rgb,npy", "--shard", "1/4");
        render("s3", "rgb,npy", "--shard", "3/4");
        Ran ran = join("joined", "s3", "s1");
        assertRefused(ran, """
                show.json: error: frames 20..40 are in no shard: s1 s3; where that file is, this makes them: duskloom render show.json -o shard-20 \
                --frames 20..40 --as rgb,npy
                show.json: error: frames 60..80 are in no shard: s1 s3; where that file is, this makes them: duskloom render show.json -o shard-60 \
                --frames 60..80 --as rgb,npy
                2 errors
                """);
        render("shard-20", "rgb,npy", "--frames", "20..40");
        render("shard-60", "rgb,npy", "--frames", "60..80");
        assertThat(join("joined", "s3", "s1", "shard-20", "shard-60").code()).isZero();
        assertThat(contents("joined")).isEqualTo(contents("whole"));
    }

    @Test
    void aNameWithSpacesIsOneWordOfTheCommand() throws IOException {
        show = Files.move(show, show.resolveSibling("long show.json"));
        render("s1", "rgb", "--shard", "1/2");
        assertThat(join("joined", "s1").err()).contains(": duskloom render \"long show.json\" -o shard-40 ");
    }

    /** Together they have the same bytes as before. */
    @Test
    void bytesThatWentFromOneFrameToTheNextAreFound() throws IOException {
        render("s1", "singles", "--shard", "1/1");
        Path first = folder.resolve("s1/frames/00000000.rgb");
        Path second = folder.resolve("s1/frames/00000001.rgb");
        byte[] bytes = Files.readAllBytes(second);
        Files.write(first, Arrays.copyOf(bytes, 3), StandardOpenOption.APPEND);
        Files.write(second, Arrays.copyOfRange(bytes, 3, bytes.length));
        Ran ran = join("joined", "s1");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("00000000.rgb: error: it has 603 bytes, and a frame has 600");
        assertNothingWritten(ran);
    }

    @Test
    void overlapsAreNamed() {
        render("a", "rgb", "--frames", "0..50");
        render("b", "rgb", "--frames", "10..30");
        render("c", "rgb", "--frames", "49..80");
        assertRefused(join("joined", "c", "a", "b", "b"), """
                b/frames.json: error: frames 10..30 are in a too; leave one of the two out, or render it with other --frames
                c/frames.json: error: frames 49..50 are in a too; leave one of the two out, or render it with other --frames
                2 errors
                """);
    }

    @Test
    void aShardGivenTwiceIsNamed() {
        render("a", "rgb", "--frames", "0..50");
        render("b", "rgb", "--frames", "50..80");
        Ran ran = join("joined", "a", "b", "b");
        assertRefused(ran, """
                b/frames.json: error: this shard is given twice; leave one of the two out, or render it with other --frames
                1 error
                """);
    }

    /** One byte of an input is enough. */
    @ParameterizedTest
    @CsvSource({
        "garden/show.json, '\"rate\"', ' \"rate\"', 'shard of another rendering than a: \"show.json\" had other bytes'",
        "garden/display.json, '\"props\"', ' \"props\"', '\"display.json\" had other bytes'",
        "garden/show.json, '\"title\": \"Fence\"', '\"title\": \"Pond\"', 'the title is \"Pond\" here and \"Fence\" there'",
        "garden/show.json, '\"rate\": 40', '\"rate\": 50', 'the rate is 50 here and 40 there'",
        "b/frames.json, '\"version\": \"', '\"version\": \"9', 'the version of duskloom is 9'",
        "b/frames.json, '\"name\": \"fence\"', '\"name\": \"hedge\"', 'the props are others'"
    })
    void shardsOfAnotherRenderingAreRefused(String file, String before, String after, String told) throws IOException {
        render("a", "rgb", "--frames", "0..40");
        boolean isInput = file.startsWith("garden");
        if (!isInput) {
            render("b", "rgb", "--frames", "40..80");
        }
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(before);
        Files.writeString(folder.resolve(file), text.replace(before, after));
        if (isInput) {
            render("b", "rgb", "--frames", "40..80");
        }
        Ran ran = join("joined", "a", "b");
        assertThat(ran.err()).startsWith("b/frames.json: error: ").contains(told);
        assertNothingWritten(ran);
    }

    @Test
    void allShardsHaveTheSameFiles() {
        render("a", "rgb,npy", "--shard", "1/2");
        render("b", "rgb", "--shard", "2/2");
        assertRefused(join("joined", "a", "b"), """
                b/frames.json: error: it lists frames.rgb, and a has frames.npy, frames.rgb; render all shards with the same --as: \
                here it was rgb, there rgb,npy
                1 error
                """);
    }

    /** Whoever gives the files instead of their folders is told so, for each. */
    @Test
    void shardsAreFolders() throws IOException {
        render("a", "rgb", "--shard", "1/2");
        Files.writeString(folder.resolve("loose.rgb"), "");
        assertRefused(join("joined", "a/frames.rgb", "a/frames.json", "loose.rgb"), """
                a/frames.json: error: this is a file, not a folder with frames.json; give the folder in which it lies
                a/frames.rgb: error: this is a file, not a folder with frames.json; give the folder in which it lies
                loose.rgb: error: this is a file, not a folder with frames.json
                3 errors
                """);
    }

    @Test
    void portsAndPacketsNeedFramesBesideThem() {
        render("a", "ports,packets", "--shard", "1/2");
        render("b", "ports,packets", "--shard", "2/2");
        assertRefused(join("joined", "a", "b"), """
                a/frames.json: error: the shards hold no frames as they are, which the checksum in frames.json needs; render them \
                with rgb, npy or singles too: --as rgb,ports,packets
                1 error
                """);
    }

    /** A byte that changed on the way is found, wherever the frames stand; for files of ports there is no checksum. */
    @ParameterizedTest
    @ValueSource(strings = {"frames.rgb", "frames.npy", "frames/00000050.rgb", "patch.csv"})
    void changedBytesAreFound(String file) throws IOException {
        render("a", ALL, "--shard", "1/2");
        render("b", ALL, "--shard", "2/2");
        Path changed = folder.resolve("b").resolve(file);
        byte[] bytes = Files.readAllBytes(changed);
        bytes[bytes.length - 7] ^= 1;
        Files.write(changed, bytes);
        Ran ran = join("joined", "a", "b");
        String named = file.endsWith("50.rgb") ? "frames" : file;
        assertThat(ran.err())
                .startsWith("b/" + named + ": error: it is not ")
                .contains("; it was changed; render this shard again");
        assertNothingWritten(ran);
    }

    @ParameterizedTest
    @ValueSource(strings = {"frames.rgb", "packets.pcap", "ports/left.bin", "frames/00000050.rgb"})
    void filesThatWereCutShortOrLostAreFound(String file) throws IOException {
        render("a", ALL, "--shard", "1/2");
        render("b", ALL, "--shard", "2/2");
        Path damaged = folder.resolve("b").resolve(file);
        byte[] bytes = Files.readAllBytes(damaged);
        Files.write(damaged, Arrays.copyOf(bytes, bytes.length - 1));
        String named = file.startsWith("frames/") ? "b/frames" : "b/" + file;
        Ran cut = join("joined", "a", "b");
        assertThat(cut.err()).startsWith(named + ": error: it has ").contains("render this shard again");
        assertNothingWritten(cut);
        Files.delete(damaged);
        Ran lost = join("joined", "a", "b");
        assertThat(lost.err()).startsWith(named + ": error: ");
        assertNothingWritten(lost);
    }

    @Test
    void whatIsNoShardIsRefused() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        Ran ran = join("joined", "empty", "gone");
        assertThat(ran.err()).contains("empty/frames.json: error: ", "gone/frames.json: error: ", "2 errors");
        assertNothingWritten(ran);
    }

    @Test
    void shardsAreNotWrittenOver() throws IOException {
        render("a", "rgb", "--shard", "1/2");
        render("b", "rgb", "--shard", "2/2");
        Map<String, String> before = contents("a");
        Ran ran = Ran.with("join", folder.resolve("a"), folder.resolve("b"), "-o", folder.resolve("a"), "--force");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("is an input");
        assertThat(contents("a")).isEqualTo(before);
    }

    @Test
    void whatStandsThereStaysUnlessForced() throws IOException {
        render("a", "rgb", "--shard", "1/2");
        render("b", "rgb", "--shard", "2/2");
        Files.createDirectory(folder.resolve("joined"));
        Files.writeString(folder.resolve("joined/frames.rgb"), "old");
        assertThat(join("joined", "a", "b").err()).contains("--force");
        assertThat(folder.resolve("joined/frames.rgb")).hasContent("old");
        Ran ran = Ran.with("join", folder.resolve("a"), folder.resolve("b"), "-o", folder.resolve("joined"), "--force");
        assertThat(ran.code()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "--shard 0/2, write I/N",
        "--shard 3/2, write I/N",
        "--shard 1/81, the show has 80 frames",
        "--shard 1/2 --frames 0..3, both say which frames"
    })
    void shardsThatThereAreNotAreMisuse(String options, String told) {
        List<Object> arguments = new ArrayList<>(List.of("render", show, "-o", folder.resolve("out")));
        arguments.addAll(List.of(options.split(" ")));
        Ran ran = Ran.with(arguments.toArray());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(told);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    private void assertRefused(Ran ran, String err) {
        assertThat(ran.err()).isEqualTo(err);
        assertNothingWritten(ran);
    }

    private void assertNothingWritten(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(folder.resolve("joined")).doesNotExist();
    }

    @Test
    void aShardMayBeALinkThatLeadsNowhere() throws IOException {
        Links.symbolic(folder.resolve("lost"), folder.resolve("gone"));
        assertThat(join("whole", "lost").err())
                .contains("lost/")
                .contains("error: there is no such file; \"lost\" is a link that leads nowhere");
    }
}
