package org.duskloom.engine.effect;

import java.util.List;
import java.util.function.Function;
import org.duskloom.engine.document.ValueKind;

/** One of a few words. */
public final class ChoiceSetting extends Setting<String> {
    private final List<String> words;

    private ChoiceSetting(String name, String meaning, List<String> words) {
        super(name, meaning);
        this.words = words;
    }

    /** A choice whose first word is the default. */
    public static ChoiceSetting of(String name, String meaning, String... words) {
        return new ChoiceSetting(name, meaning, List.of(words));
    }

    /** The words, the default first. */
    public List<String> words() {
        return words;
    }

    @Override
    public ValueKind<String> kind() {
        return ValueKind.Choice.of(words, Function.identity());
    }

    @Override
    public String unit() {
        return "word";
    }

    @Override
    public String range() {
        return String.join(", ", words);
    }

    @Override
    public String standardText() {
        return words.get(0);
    }

    @Override
    public String standard() {
        return words.get(0);
    }
}
