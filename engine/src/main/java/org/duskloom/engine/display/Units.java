package org.duskloom.engine.display;

/** The unit in which a display is measured. Frames do not depend on it; drawings to scale and lists of lengths do. */
public enum Units {
    /** Millimetres. */
    MILLIMETRES("mm", 1),
    /** Centimetres. */
    CENTIMETRES("cm", 10),
    /** Metres. */
    METRES("m", 1000),
    /** Inches, of exactly 25.4 mm. */
    INCHES("in", 25.4);

    private final String word;
    private final double millimetres;

    Units(String word, double millimetres) {
        this.word = word;
        this.millimetres = millimetres;
    }

    /** The word that stands in the file. */
    public String word() {
        return word;
    }

    /** How many millimetres one of it is. */
    public double millimetres() {
        return millimetres;
    }
}
