package org.duskloom.engine.shard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.format.Origin;
import org.duskloom.engine.format.OutputRegistry;
import org.duskloom.engine.format.Seam;
import org.duskloom.engine.format.WrittenFile;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.time.FrameSpan;

/**
 * Shards that make a whole show: all of one rendering, each frame in exactly one of them, the same files in all.
 *
 * @param shards in the order of their frames, at least one
 */
public record Shards(List<Shard> shards) {
    public Shards {
        shards = List.copyOf(shards);
    }

    /**
     * Puts shards in order, and adds an error for everything that keeps them from being a whole.
     *
     * @param given in any order, at least one
     * @param kinds know the files, and the words by which they are asked for
     * @return nothing if an error was added
     */
    public static Optional<Shards> of(List<Shard> given, OutputRegistry kinds, Problems problems) {
        int errorsBefore = problems.errorCount();
        List<Shard> sorted = new ArrayList<>(given);
        sorted.sort(Comparator.comparingLong(shard -> shard.frames().first()));
        Shards shards = new Shards(sorted);
        given.forEach(shard -> compare(given.get(0), shard, kinds, problems));
        if (problems.errorCount() == errorsBefore) {
            shards.requireJoinable(kinds, problems);
            shards.requireEveryFrameOnce(kinds, problems);
        }
        return problems.errorCount() == errorsBefore ? Optional.of(shards) : Optional.empty();
    }

    private FrameManifest first() {
        return shards.get(0).manifest();
    }

    /** The show as one run. */
    RunInfo whole() {
        RunInfo run = first().run();
        return run.only(FrameList.of(new FrameSpan(0, run.showFrames())));
    }

    /** What all of them were made by and from. */
    Origin origin() {
        return first().origin();
    }

    /** The names of the files that each of them has, in their order. */
    List<String> files() {
        return first().files().stream().map(WrittenFile::file).toList();
    }

    /** How many frames the whole show has. */
    public long frameCount() {
        return first().run().showFrames();
    }

    /** How many bytes all files of all shards have. */
    public long bytes() {
        return shards.stream()
                .flatMap(shard -> shard.manifest().files().stream())
                .mapToLong(WrittenFile::bytes)
                .sum();
    }

    private static void compare(Shard first, Shard other, OutputRegistry kinds, Problems problems) {
        Foreign foreign = new Foreign(first, other, problems);
        RunInfo run = first.manifest().run();
        RunInfo found = other.manifest().run();
        foreign.unlessSame(
                "the version of duskloom",
                first.manifest().origin().version(),
                other.manifest().origin().version());
        foreign.unlessSame("the title", Quoted.of(run.title()), Quoted.of(found.title()));
        foreign.unlessSame("the rate", run.rate(), found.rate());
        foreign.unlessSame("the number of frames of the show", run.showFrames(), found.showFrames());
        foreign.unlessSame("the number of pixels", run.pixelCount(), found.pixelCount());
        if (!run.pixels().props().equals(found.pixels().props())) {
            foreign.tell("the props are others");
        }
        compareInputs(first, other, foreign);
        compareFiles(first, other, kinds, problems);
    }

    private static void compareFiles(Shard first, Shard other, OutputRegistry kinds, Problems problems) {
        List<String> words = kinds.wordsOf(first.manifest().files());
        List<String> otherWords = kinds.wordsOf(other.manifest().files());
        if (!names(first).equals(names(other))) {
            problems.error(
                    other.location(),
                    "it lists " + String.join(", ", names(other)) + ", and " + first.folder() + " has "
                            + String.join(", ", names(first)),
                    words.equals(otherWords)
                            ? "all shards have the same files"
                            : "render all shards with the same --as: here it was " + String.join(",", otherWords)
                                    + ", there " + String.join(",", words));
            return;
        }
        List<String> options = first.options(kinds);
        List<String> otherOptions = other.options(kinds);
        if (!options.equals(otherOptions)) {
            problems.error(
                    other.location(),
                    "it was rendered " + with(otherOptions, options) + ", and " + first.folder() + " "
                            + with(options, otherOptions),
                    "render all shards alike");
        }
    }

    private static String with(List<String> options, List<String> others) {
        return options.isEmpty() ? "without " + String.join(" ", others) : "with " + String.join(" ", options);
    }

    private static List<String> names(Shard shard) {
        return shard.manifest().files().stream().map(WrittenFile::file).toList();
    }

    private static void compareInputs(Shard first, Shard other, Foreign foreign) {
        Map<String, String> expected = digests(first);
        Map<String, String> found = digests(other);
        TreeSet<String> all = new TreeSet<>(expected.keySet());
        all.addAll(found.keySet());
        for (String file : all) {
            if (!Objects.equals(expected.get(file), found.get(file))) {
                boolean both = expected.containsKey(file) && found.containsKey(file);
                foreign.tell(Quoted.of(file) + (both ? " had other bytes" : " was read for one of them only"));
            }
        }
    }

    private static Map<String, String> digests(Shard shard) {
        Map<String, String> digests = new TreeMap<>();
        shard.manifest().origin().inputs().forEach(input -> digests.put(input.file(), input.sha256Hex()));
        return digests;
    }

    /** Says in which way a shard is of another rendering than the first. */
    private record Foreign(Shard first, Shard other, Problems problems) {
        void unlessSame(String what, Object expected, Object found) {
            if (!expected.equals(found)) {
                tell(what + " is " + found + " here and " + expected + " there");
            }
        }

        void tell(String difference) {
            problems.error(
                    other.location(),
                    "this is a shard of another rendering than " + first.folder() + ": " + difference,
                    "leave it out, or render it again");
        }
    }

    /** The digest of a manifest is one of the frames themselves: no other bytes tell it. */
    private void requireJoinable(OutputRegistry kinds, Problems problems) {
        Location place = shards.get(0).location();
        boolean plain = false;
        for (String file : files()) {
            Optional<Seam> seam = kinds.seam(file);
            if (seam.isEmpty()) {
                problems.error(place, Quoted.of(file) + " is nothing that can be put together from shards");
            }
            plain |= seam.orElse(null) instanceof Seam.Singles
                    || seam.orElse(null) instanceof Seam.Bodies bodies && bodies.plain();
        }
        if (!plain) {
            problems.error(
                    place,
                    "the shards hold no frames as they are, which the checksum in " + FrameManifest.FILE + " needs",
                    "render them with rgb, npy or singles too: --as rgb,"
                            + String.join(",", kinds.wordsOf(first().files())));
        }
    }

    private void requireEveryFrameOnce(OutputRegistry kinds, Problems problems) {
        Shard furthest = null;
        long next = 0;
        for (Shard shard : shards) {
            FrameList frames = shard.frames();
            if (frames.first() > next) {
                tellMissing(new FrameSpan(next, frames.first()), kinds, problems);
            } else if (furthest != null && frames.first() < next) {
                long end = Math.min(next, frames.last() + 1);
                boolean twice = shard.folder().equals(furthest.folder());
                problems.error(
                        shard.location(),
                        twice
                                ? "this shard is given twice"
                                : "frames " + new FrameSpan(frames.first(), end) + " are in " + furthest.folder()
                                        + " too",
                        "leave one of the two out, or render it with other --frames");
            }
            if (furthest == null || frames.last() + 1 > next) {
                next = frames.last() + 1;
                furthest = shard;
            }
        }
        if (next < frameCount()) {
            tellMissing(new FrameSpan(next, frameCount()), kinds, problems);
        }
    }

    private void tellMissing(FrameSpan missing, OutputRegistry kinds, Problems problems) {
        String show =
                origin().inputs().stream().findFirst().map(Origin.Input::file).orElse("SHOW.json");
        String taken = shards.stream().map(shard -> shard.folder().toString()).collect(Collectors.joining(" "));
        String folder = "shard-" + missing.firstFrame();
        problems.error(
                Location.ofFile(show),
                "frames " + missing + " are in no shard: " + (taken.length() > 200 ? shards.size() + " shards" : taken),
                "where that file is, this makes them: duskloom render " + typed(show) + " -o " + folder + " --frames "
                        + missing + " --as " + String.join(",", kinds.wordsOf(first().files()))
                        + shards.get(0).options(kinds).stream()
                                .map(option -> " " + option)
                                .collect(Collectors.joining()));
    }

    /** As a shell takes it for one word. */
    private static String typed(String file) {
        return file.matches("[\\w./-]+") ? file : Quoted.of(file);
    }
}
