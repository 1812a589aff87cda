package org.duskloom.engine.timeline;

/** What a number may follow. */
public enum Followed implements Word {
    /** The loudness of the sound. */
    ALL("all"),
    /** Its deep tones. */
    LOW("low"),
    /** What lies between deep and high. */
    MID("mid"),
    /** Its high tones. */
    HIGH("high"),
    /** The beats: 1 on each, falling to 0 at the next. */
    BEAT("beat");

    private final String word;

    Followed(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
