package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The folder of somebody who does what a guide says, from its beginning to its end: the demos are in it already. */
final class ReadersFolder {
    private static final Pattern WHOLE_FILE = Pattern.compile("\"duskloom\": \"(timeline|display)/1\"");
    private static final List<String> OUTPUTS = List.of("-o", "--output", "--gallery", "--json", "--csv");

    private final Path folder;
    private final Set<String> written = new TreeSet<>();
    private int commands;

    ReadersFolder(Path folder) throws IOException {
        this.folder = folder;
        Project.copy("demos", folder);
    }

    Path resolve(String name) {
        return folder.resolve(name);
    }

    /** The names of all files that were copied from a guide. */
    Set<String> written() {
        return written;
    }

    /** How many commands were typed. */
    int commands() {
        return commands;
    }

    /**
     * Writes every whole file of the guide, puts every piece with fields into the file that is named before it, and
     * types every command, all in the order of the page.
     *
     * @return what of the guide is neither, such as a piece that only shows how something looks
     */
    List<String> follow(Guide guide) throws IOException {
        List<String> others = new ArrayList<>();
        for (Guide.Block block : guide.blocks()) {
            boolean isWhole = WHOLE_FILE.matcher(block.text()).find();
            if (block.language().equals("csv")) {
                write(block.fileName("map.csv"), block.text());
            } else if (block.language().equals("json") && isWhole) {
                write(block.fileName("display.json"), block.text());
                check(block.fileName("display.json"));
            } else if (block.language().equals("json") && !put(block)) {
                others.add(block.text());
            } else if (block.language().equals("sh")) {
                block.text().lines().forEach(this::type);
            }
        }
        return others;
    }

    private void write(String name, String text) throws IOException {
        assertThat(written.add(name)).as("%s is written once", name).isTrue();
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    /** Warnings count too: who copies a snippet shall not be told that something is wrong with it. */
    private void check(String name) {
        Ran ran = Ran.with("check", folder.resolve(name));
        assertThat(ran.err()).as(name).isEmpty();
        assertThat(ran.code()).isZero();
    }

    /** Puts fields behind the last one of the file that is named before them. */
    private boolean put(Guide.Block fields) throws IOException {
        Path file = folder.resolve(fields.fileName("nothing"));
        if (!fields.text().startsWith("\"") || !Files.exists(file)) {
            return false;
        }
        String before = Files.readString(file).stripTrailing();
        Files.writeString(file, before.substring(0, before.length() - 1) + "," + fields.text() + "}");
        return true;
    }

    /** Runs a line that calls the program alone. Pipes are those of PlayItTest, Maven's those of DeveloperGuideTest. */
    void type(String line) {
        if (!line.startsWith("cli/duskloom ") || line.contains(" | ")) {
            return;
        }
        Object[] words = arguments(line);
        Ran ran = words[0].equals("watch") ? Ran.into(endOfThis(), TerminalTraits.PLAIN, words) : Ran.with(words);
        assertThat(ran.code()).as("%s%n%s", line, ran.err()).isZero();
        assertThat(ran.err()).as(line).doesNotContain("warning");
        commands++;
    }

    /** What watches goes on until it is ended: as soon as it says where. */
    private static OutputStream endOfThis() {
        Thread thread = Thread.currentThread();
        return new OutputStream() {
            @Override
            public void write(int value) {
                thread.interrupt();
            }
        };
    }

    /** The words after the program's name; those that name outputs or files that exist, as seen from the folder. */
    Object[] arguments(String line) {
        String[] words = line.split(" +");
        Object[] arguments = new Object[words.length - 1];
        for (int i = 1; i < words.length; i++) {
            boolean isOutput = OUTPUTS.contains(words[i - 1]) && !words[i].equals("-");
            boolean isNew = i == 2 && words[1].equals("new");
            boolean isPath = isOutput || isNew || i > 1 && Files.exists(folder.resolve(words[i]));
            arguments[i - 1] = isPath ? folder.resolve(words[i]) : words[i];
        }
        return arguments;
    }
}
