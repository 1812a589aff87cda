package org.duskloom.engine.sound;

import java.util.Locale;
import java.util.Set;

/** Tells by its name alone whether a file is a sound, be it one that is read here or not. */
public final class SoundEndings {
    private static final Set<String> ENDINGS = Set.of(
            "wav", "wave", "aif", "aiff", "aifc", "au", "snd", "mp3", "mp2", "flac", "ogg", "oga", "opus", "m4a", "aac",
            "wma", "wv", "caf", "rf64", "w64");

    private SoundEndings() {}

    /** Whether a file of this name is a sound. */
    public static boolean has(String fileName) {
        return ENDINGS.contains(
                        fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT))
                && fileName.indexOf('.') >= 0;
    }
}
