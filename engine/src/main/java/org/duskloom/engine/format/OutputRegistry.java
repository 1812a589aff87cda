package org.duskloom.engine.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/** The kinds of output that there are, by their words. Immutable. */
public final class OutputRegistry {
    private final Map<String, OutputKind> byWord = new LinkedHashMap<>();

    /**
     * A registry.
     *
     * @param kinds in the order in which they are listed
     * @throws IllegalArgumentException if two have the same word
     */
    public OutputRegistry(List<? extends OutputKind> kinds) {
        for (OutputKind kind : kinds) {
            if (byWord.put(kind.word(), kind) != null) {
                throw new IllegalArgumentException("two kinds of output are called " + kind.word());
            }
        }
    }

    /** All kinds. */
    public List<OutputKind> kinds() {
        return List.copyOf(byWord.values());
    }

    /**
     * The kind of a word that the program itself uses.
     *
     * @throws IllegalArgumentException if there is none
     */
    public OutputKind kind(String word) {
        OutputKind kind = byWord.get(word);
        if (kind == null) {
            throw new IllegalArgumentException("no kind of output is called " + word);
        }
        return kind;
    }

    /** The words of the kinds that hold frames: those that a user can ask for. */
    public List<String> frameWords() {
        return byWord.values().stream()
                .filter(OutputKind::holdsFrames)
                .map(OutputKind::word)
                .toList();
    }

    /** How a file is put together from those of shards; nothing if no kind knows it: see {@link OutputKind#seam}. */
    public Optional<Seam> seam(String file) {
        return byWord.values().stream()
                .flatMap(kind -> kind.seam(file).stream())
                .findFirst();
    }

    /** The words by which files are asked for that a manifest lists; of files that no kind can put together none. */
    public List<String> wordsOf(List<WrittenFile> files) {
        return byWord.values().stream()
                .filter(kind -> files.stream()
                        .anyMatch(written -> kind.seam(written.file()).isPresent()))
                .map(OutputKind::word)
                .toList();
    }

    /**
     * Reads a list of words with commas between them, such as {@code rgb,npy}.
     *
     * @return the kinds in the order of the words
     * @throws TextFormatException if a word is none of {@link #frameWords}, or stands twice
     */
    public List<OutputKind> parse(String words) throws TextFormatException {
        List<OutputKind> kinds = new ArrayList<>();
        for (String written : words.split(",", -1)) {
            String word = written.strip();
            if (!frameWords().contains(word)) {
                throw new TextFormatException(Quoted.of(word) + " is no kind of output", hint(word));
            }
            if (kinds.contains(byWord.get(word))) {
                throw new TextFormatException(Quoted.of(word) + " stands twice", "");
            }
            kinds.add(byWord.get(word));
        }
        return List.copyOf(kinds);
    }

    private String hint(String word) {
        String allowed = "allowed: " + String.join(", ", frameWords());
        return NearestName.of(word, frameWords())
                .map(near -> "did you mean " + Quoted.of(near) + "? " + allowed)
                .orElse(allowed);
    }
}
