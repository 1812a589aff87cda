package org.duskloom.engine.effect;

import org.duskloom.engine.document.ValueKind;

/** Yes or no; no by default. */
public final class FlagSetting extends Setting<Boolean> {
    private FlagSetting(String name, String meaning) {
        super(name, meaning);
    }

    /** A flag that is off unless it is set. */
    public static FlagSetting of(String name, String meaning) {
        return new FlagSetting(name, meaning);
    }

    @Override
    public ValueKind<Boolean> kind() {
        return new ValueKind.Flag();
    }

    @Override
    public String unit() {
        return "true or false";
    }

    @Override
    public String range() {
        return "true, false";
    }

    @Override
    public String standardText() {
        return "false";
    }

    @Override
    public Boolean standard() {
        return false;
    }
}
