package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page of the documentation, taken apart.
 *
 * @param name of its file, from the root of the project
 * @param text the whole page
 */
record Guide(String name, String text) {
    private static final Pattern FENCED = Pattern.compile("^```(\\w+)\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    /**
     * A fenced block.
     *
     * @param language as the fence says
     * @param before the prose between the block before and this one
     * @param text what it holds
     */
    record Block(String language, String before, String text) {
        /** The first file of that kind that is named in the prose before. */
        String fileName(String otherwise) {
            Matcher named = Pattern.compile("`((?:[\\w-]+/)*[\\w-]+\\." + language + ")`")
                    .matcher(before);
            return named.find() ? named.group(1) : otherwise;
        }
    }

    static Guide of(String name) throws IOException {
        return new Guide(name, Files.readString(Project.file(name)));
    }

    List<Block> blocks(String language) {
        return blocks().stream()
                .filter(block -> block.language.equals(language))
                .toList();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        Matcher fenced = FENCED.matcher(text);
        int end = 0;
        while (fenced.find()) {
            blocks.add(new Block(fenced.group(1), text.substring(end, fenced.start()), fenced.group(2)));
            end = fenced.end();
        }
        return blocks;
    }

    /** All lines to be typed into a shell. */
    List<String> shellLines() {
        return blocks("sh").stream()
                .flatMap(block -> block.text().lines())
                .filter(line -> !line.isBlank())
                .toList();
    }

    /** Everything to be typed that begins with the name of the build tool, fenced or not. */
    List<String> mavenLines() {
        return Stream.concat(shellLines().stream().filter(line -> line.startsWith("mvn")), inLine("mvn").stream())
                .toList();
    }

    /** Every command in the prose that begins with a word: between backticks, in one line. */
    List<String> inLine(String word) {
        return Pattern.compile("`(" + Pattern.quote(word) + " [^`\n]+)`")
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
