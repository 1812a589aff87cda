package org.duskloom.engine.effect;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.document.ValueKind;

/** A file that the effect reads while the plan is compiled; written relative to the timeline's folder. */
public final class FileSetting extends Setting<Optional<Path>> {
    private final String kinds;

    private FileSetting(String name, String meaning, String kinds) {
        super(name, meaning);
        this.kinds = kinds;
    }

    /**
     * A file setting without a default.
     *
     * @param kinds which files can be read: {@code "PNG, JPEG"}
     */
    public static FileSetting of(String name, String kinds, String meaning) {
        return new FileSetting(name, meaning, kinds);
    }

    @Override
    public ValueKind<?> kind() {
        return new ValueKind.Text("file: " + kinds);
    }

    @Override
    public String unit() {
        return "file";
    }

    @Override
    public String range() {
        return kinds;
    }

    @Override
    public String standardText() {
        return "";
    }

    @Override
    public Optional<Path> standard() {
        return Optional.empty();
    }
}
