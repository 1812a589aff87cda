package org.duskloom.engine.sheet;

/** The colours of sheets: dark on white, for printers. */
final class SheetColors {
    static final int PAPER = 0xFFFFFF;
    static final int INK = 0x1A1A1A;
    static final int QUIET = 0x707070;
    /** Lines that only help to read places off. */
    static final int GRID = 0xE3E6EA;

    /** Of the numbers beside them. */
    static final int COORDINATE = 0x858585;

    static final int WIRE = 0x9AA3AE;
    static final int FIRST = 0x0A8A2A;
    static final int LAST = 0xC01818;

    /**
     * Told apart by most people with a colour vision deficiency too: M. Okabe, K. Ito, Color Universal Design, 2008
     * (from memory).
     */
    private static final int[] PARTS = {0x0072B2, 0xE69F00, 0x009E73, 0xCC79A7, 0x56B4E9, 0xD55E00, 0x8A7F00};

    private SheetColors() {}

    /** The colour of a part by its number. */
    static int part(int number) {
        return PARTS[number % PARTS.length];
    }
}
