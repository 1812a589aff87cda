package org.duskloom.engine.wire;

/** One colour of a pixel's light, as a letter of {@link ColorOrder} names it. */
enum Channel {
    RED('R'),
    GREEN('G'),
    BLUE('B'),
    /** A white light beside the three, which takes over what they have in common. */
    WHITE('W');

    private final char letter;

    Channel(char letter) {
        this.letter = letter;
    }

    char letter() {
        return letter;
    }
}
