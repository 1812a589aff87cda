package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * One run of a program that writes the same outputs as others: a file of frames, a picture, a folder of single frames
 * and a manifest that speaks of them, or one file alone. All have the run's word in them.
 */
final class TestRun {
    private static final List<String> FILES = List.of("frames.rgb", "strip.png");
    private static final List<String> SINGLES = List.of("singles/00.rgb", "singles/01.rgb", "singles/02.rgb");
    private static final String MANIFEST = "frames.json";

    private final Path folder;
    private final boolean alone;

    /** @param alone whether it writes one file only */
    TestRun(Path folder, boolean alone) {
        this.folder = folder;
        this.alone = alone;
    }

    /** The outputs of a run, by name. */
    TreeMap<String, String> outputsOf(String word) {
        TreeMap<String, String> outputs = new TreeMap<>();
        for (String name : names()) {
            outputs.put(name, word + " " + name);
        }
        return outputs;
    }

    private List<String> names() {
        if (alone) {
            return List.of("frames.rgb");
        }
        List<String> names = new ArrayList<>(FILES);
        names.addAll(SINGLES);
        names.add(MANIFEST);
        return names;
    }

    /** A process that may still be at work if its number is in the set. */
    static Staging process(long number, FileCalls calls, List<Long> running) {
        Owner owner = new Owner(number, 1, "garden", 0);
        return new Staging(calls, owner, other -> running.contains(other.process()));
    }

    void write(String word, IfExists ifExists, Staging process) throws IOException {
        try (OutputGroup group = new OutputGroup(ifExists, process, alone)) {
            if (alone) {
                write(group.open(folder.resolve("frames.rgb")), word + " frames.rgb");
                return;
            }
            StagedFile manifest = group.openManifest(folder.resolve(MANIFEST));
            StagedFolder singles = group.openFolder(folder.resolve("singles"), Pattern.compile("\\d+\\.rgb"));
            for (String name : FILES) {
                write(group.open(folder.resolve(name)), word + " " + name);
            }
            for (String name : SINGLES) {
                byte[] bytes = (word + " " + name).getBytes();
                singles.write(name.substring("singles/".length()), bytes, 0, bytes.length);
            }
            singles.finish();
            write(manifest, word + " " + MANIFEST);
            group.publish();
        }
    }

    private static void write(StagedFile file, String text) throws IOException {
        Folders.write(file, text);
        file.finish();
    }

    /** What stands under final names. */
    TreeMap<String, String> found() throws IOException {
        TreeMap<String, String> found = new TreeMap<>();
        for (String name : names()) {
            Path file = folder.resolve(name);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                found.put(name, Files.readString(file));
            }
        }
        return found;
    }

    /** What the folder holds beside them. */
    List<String> leftovers() throws IOException {
        return Folders.namesIn(folder).stream()
                .filter(name -> name.startsWith("."))
                .toList();
    }

    /** Everything that can be read anywhere below the folder. */
    List<String> everything() throws IOException {
        List<String> all = new ArrayList<>();
        try (var files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.add(Files.readString(file));
            }
        }
        return all;
    }

    /** Whether each file is whole, and the manifest, if one is there, is of the same run as all others. */
    static boolean isTrue(TreeMap<String, String> found) {
        String manifest = found.get(MANIFEST);
        for (var entry : found.entrySet()) {
            String word = entry.getValue().split(" ")[0];
            boolean whole = entry.getValue().equals(word + " " + entry.getKey());
            boolean spokenFor = manifest == null || manifest.equals(word + " " + MANIFEST);
            if (!whole || !spokenFor) {
                return false;
            }
        }
        return true;
    }
}
