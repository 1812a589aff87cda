package org.duskloom.engine.sheet;

/** From which side a shape is drawn. */
public enum View {
    /** As the audience sees it. */
    FRONT("front", 1),
    /** As the person sees it who wires it: left and right change places. */
    BACK("back", -1);

    private final String word;
    private final int sign;

    View(String word, int sign) {
        this.word = word;
        this.sign = sign;
    }

    /** The word for it, as in file names. */
    public String word() {
        return word;
    }

    /** What x is multiplied by. */
    int sign() {
        return sign;
    }
}
