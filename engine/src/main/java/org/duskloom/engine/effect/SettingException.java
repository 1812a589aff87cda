package org.duskloom.engine.effect;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.problem.Problem;

/** A setting that is well formed by itself but cannot be used: with another one, or on this canvas. */
public final class SettingException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String setting;
    private final String hint;
    private transient List<Problem> inFile = List.of();

    /**
     * @param setting the name of the setting to point at
     * @param message what is wrong, with the value
     * @param hint what is allowed, or empty
     */
    public SettingException(String setting, String message, String hint) {
        super(Objects.requireNonNull(message, "message"));
        this.setting = Objects.requireNonNull(setting, "setting");
        this.hint = Objects.requireNonNull(hint, "hint");
    }

    /**
     * A file that a setting names is faulty.
     *
     * @param setting the name of the setting
     * @param inFile what is wrong in the file, with the places; at least one
     */
    public SettingException(String setting, List<Problem> inFile) {
        this(setting, inFile.get(0).toString(), "");
        this.inFile = List.copyOf(inFile);
    }

    /** What is wrong in the file that the setting names; empty if it is the setting itself that is wrong. */
    public List<Problem> inFile() {
        return inFile;
    }

    /** The name of the setting to point at. */
    public String setting() {
        return setting;
    }

    /** What is allowed, or empty. */
    public String hint() {
        return hint;
    }
}
