package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command that writes files, of two versions of what it reads.
 *
 * @param line its words; IN stands for the folder of a version, OUT for the one that is written to
 */
record WritingCase(String line) {
    /** Every kind of output that the program has. */
    static final List<WritingCase> ALL = Stream.of(
                    "render IN/show.json -o OUT --as rgb,npy,singles,ports,packets --strip",
                    "join IN/shard-1 IN/shard-2 -o OUT",
                    "proof IN/display.json -o OUT",
                    "sheet IN/display.json -o OUT",
                    "report IN/show.json -o OUT/report.html --json OUT/report.json --csv OUT/tables",
                    "listen IN/song.wav -o OUT/song.txt",
                    "film IN/show.json -o OUT/film.html",
                    "film IN/show.json -o OUT/film.png",
                    "film IN/show.json -o OUT/film.y4m",
                    "strip IN/show.json -o OUT/strip.png",
                    "map IN/display.json -o OUT/map.csv",
                    "effects --gallery OUT")
            .map(WritingCase::new)
            .toList();

    /** What is written into files or into a pipe, by the standard output. */
    static final List<WritingCase> STREAMS = Stream.of(
                    "render IN/show.json -o - --as rgb",
                    "render IN/show.json -o - --as npy",
                    "render IN/show.json -o - --as packets",
                    "report IN/show.json",
                    "report IN/show.json --json -",
                    "listen IN/song.wav -o -",
                    "film IN/show.json -o -",
                    "strip IN/show.json -o -",
                    "map IN/display.json -o -",
                    "check IN/show.json",
                    "survey IN/display.json IN/measured.csv",
                    "diff IN/shard-1 IN/shard-2",
                    "effects --json")
            .map(WritingCase::new)
            .toList();

    /** Those in which the regular expression {@code -Dfaults.of} is found; usually all. */
    static List<WritingCase> chosen() {
        Predicate<String> asked =
                Pattern.compile(System.getProperty("faults.of", "")).asPredicate();
        return ALL.stream().filter(writing -> asked.test(writing.line)).toList();
    }

    /** The words, for a version of the inputs and a folder to write to. */
    List<String> words(Path in, Path out, String... more) {
        List<String> words = new ArrayList<>();
        for (String word : line.split(" ")) {
            words.add(word.replace("IN", in.toString()).replace("OUT", out.toString()));
        }
        words.addAll(List.of(more));
        return words;
    }

    /** All files that have their names, by their paths within a folder, with their bytes, each a character. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (Path file : filesIn(folder)) {
            String name = folder.relativize(file).toString();
            if (!isOfARun(name)) {
                contents.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    /** What runs keep aside while they write, or have left. */
    static List<String> leftovers(Path folder) throws IOException {
        try (Stream<Path> entries = Files.exists(folder) ? Files.walk(folder) : Stream.empty()) {
            return entries.map(entry -> folder.relativize(entry).toString())
                    .filter(WritingCase::isOfARun)
                    .toList();
        }
    }

    /** Makes a folder hold just that. */
    static void put(Map<String, String> contents, Path folder) throws IOException {
        remove(folder);
        for (Map.Entry<String, String> file : contents.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue(), StandardCharsets.ISO_8859_1);
        }
    }

    /** Removes a folder with all that is in it. */
    static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> entries = Files.walk(folder)) {
                for (Path entry : entries.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(entry);
                }
            }
        }
    }

    @Override
    public String toString() {
        return line;
    }

    private static boolean isOfARun(String name) {
        return name.startsWith(".") || name.contains("/.");
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}
