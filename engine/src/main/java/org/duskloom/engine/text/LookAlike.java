package org.duskloom.engine.text;

import java.text.Normalizer;

/**
 * Names that look the same and are not: some systems store a letter and its accent as one character, others as two
 * (forms C and D of Unicode Standard Annex #15).
 */
public final class LookAlike {
    private LookAlike() {}

    /** With each letter and its accents as one character, where there is one. */
    public static String composed(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC);
    }

    /** Whether two names differ in how their accents are stored, and in nothing else. */
    public static boolean are(String one, String other) {
        return !one.equals(other) && composed(one).equals(composed(other));
    }

    /**
     * What to tell somebody who wrote a name that is missing, and of which there is a look-alike.
     *
     * @param shown the one that is there, in quotes
     */
    public static String hint(String shown) {
        return "there is " + shown + ", which looks the same but has its accents stored in another way: type both names"
                + " anew";
    }
}
