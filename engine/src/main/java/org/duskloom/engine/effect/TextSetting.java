package org.duskloom.engine.effect;

import org.duskloom.engine.document.ValueKind;

/** A text, such as the name of a part or what is to be written. */
public final class TextSetting extends Setting<String> {
    private final String kind;
    private final String range;
    private final String standard;
    private final int longest;

    private TextSetting(String name, String meaning, String kind, String range, String standard, int longest) {
        super(name, meaning);
        this.kind = kind;
        this.range = range;
        this.standard = standard;
        this.longest = longest;
    }

    /**
     * A text setting.
     *
     * @param kind what the text is, for the reference: {@code "part"}
     * @param standard the default; empty where the text must be set
     * @param longest the greatest number of characters
     */
    public static TextSetting of(String name, String kind, String standard, int longest, String meaning) {
        return of(name, kind, "up to " + longest + " characters", standard, longest, meaning);
    }

    /**
     * A text setting that takes certain texts only.
     *
     * @param range which texts it takes, for the reference
     */
    public static TextSetting of(String name, String kind, String range, String standard, int longest, String meaning) {
        return new TextSetting(name, meaning, kind, range, standard, longest);
    }

    /** The greatest number of characters. */
    public int longest() {
        return longest;
    }

    @Override
    public ValueKind<?> kind() {
        return new ValueKind.Text(kind);
    }

    @Override
    public String unit() {
        return kind;
    }

    @Override
    public String range() {
        return range;
    }

    @Override
    public String standardText() {
        return standard;
    }

    @Override
    public String standard() {
        return standard;
    }
}
