package org.duskloom.engine.effect;

import org.duskloom.engine.document.ValueKind;

/** The beats or the bars of the music, or markers by name. */
public final class HitsSetting extends Setting<Hits> {
    /** The beats of the music. */
    public static final String BEAT = "beat";

    /** The bars of the music. */
    public static final String BAR = "bar";

    private HitsSetting(String name, String meaning) {
        super(name, meaning);
    }

    /** A setting that need not be set. */
    public static HitsSetting of(String name, String meaning) {
        return new HitsSetting(name, meaning);
    }

    @Override
    public ValueKind<?> kind() {
        return new ValueKind.Text(range());
    }

    @Override
    public String unit() {
        return "instants";
    }

    @Override
    public String range() {
        return "beat, bar, or markers: NAME, or NAME* for all whose names begin so";
    }

    @Override
    public String standardText() {
        return "";
    }

    @Override
    public Hits standard() {
        return Hits.NONE;
    }
}
