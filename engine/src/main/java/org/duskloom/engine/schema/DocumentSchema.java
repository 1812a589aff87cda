package org.duskloom.engine.schema;

import org.duskloom.engine.display.DisplayFields;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.format.ManifestFields;
import org.duskloom.engine.timeline.TimelineFields;

/**
 * The kinds of files that have a schema. What a schema refuses the reader of the file refuses too; the reader
 * refuses more: names that nothing has, times that cannot be, files that are missing.
 */
public enum DocumentSchema {
    /** What is played. */
    TIMELINE("timeline", TimelineFields.TIMELINE, "What is played on a display, and when: a timeline of duskloom."),
    /** Where pixels hang. */
    DISPLAY("display", DisplayFields.DISPLAY, "What hangs where, and on which wire: a display of duskloom."),
    /** What a file of frames holds. */
    MANIFEST("manifest", ManifestFields.MANIFEST, "What the frames beside it are: the frames.json of duskloom.");

    private final String word;
    private final DeclaredObject object;
    private final String description;

    DocumentSchema(String word, DeclaredObject object, String description) {
        this.word = word;
        this.object = object;
        this.description = description;
    }

    /** How it is asked for. */
    public String word() {
        return word;
    }

    /**
     * The schema, in the words of JSON Schema draft-07.
     *
     * @param effects those that a cue may name
     * @return JSON (RFC 8259), ended by a line feed
     */
    public String json(EffectRegistry effects) {
        return new ObjectSchemas(new EffectSchemas(effects.effects())).file(object, description);
    }
}
