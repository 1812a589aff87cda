package org.duskloom.engine.timeline;

import java.util.Optional;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Lapse;

/** A cue while the lists of cues are read: its fields, and its times as soon as they are known. For one thread. */
final class OpenCue {
    private final Fields fields;
    private final Problems problems;
    private final String name;
    private boolean sound;
    private ExactTime start;
    private ExactTime keyStart;
    private Lapse length;
    private Plays plays;
    private OpenCue before;
    private int number;

    /**
     * A cue whose times are not known yet.
     *
     * @param fields those of its look filled in
     * @param sound whether nothing is wrong so far
     */
    OpenCue(Fields fields, boolean sound, Problems problems) {
        this.fields = fields;
        this.problems = problems;
        this.sound = sound;
        int errorsBefore = problems.errorCount();
        this.name = fields.given(CueFields.NAME).map(TextNode::value).orElse("");
        noteErrors(errorsBefore);
    }

    Fields fields() {
        return fields;
    }

    /** What it is called; empty where it has no name. */
    String name() {
        return name;
    }

    /** What it is called in messages. */
    String shown() {
        return name.isEmpty() ? "the cue in line " + fields.location().line() : "\"" + name + "\"";
    }

    /** Whether nothing was found wrong so far. */
    boolean isSound() {
        return sound;
    }

    /** Does something by which errors of this cue may be found; gives whether there were none. */
    boolean finds(Runnable reading) {
        int errorsBefore = problems.errorCount();
        try {
            reading.run();
        } catch (ArithmeticException tooLarge) {
            problems.error(
                    fields.location(),
                    "the times of the cue cannot be counted exactly together",
                    "use fewer digits behind the dot, or a simpler frame rate");
        }
        noteErrors(errorsBefore);
        return problems.errorCount() == errorsBefore;
    }

    private void noteErrors(int errorsBefore) {
        sound &= problems.errorCount() == errorsBefore;
    }

    /** Another one than those of all that are put in order with it. */
    void isNumbered(int value) {
        number = value;
    }

    int number() {
        return number;
    }

    void follows(OpenCue other) {
        before = other;
    }

    /** The cue before it in its list; nothing if it is the first, or stands in none yet. */
    Optional<OpenCue> before() {
        return Optional.ofNullable(before);
    }

    void startsAt(ExactTime instant) {
        start = instant;
    }

    /** The start that its random choices hang on where that is another one than its start. */
    void isKeyedBy(ExactTime instant) {
        keyStart = instant;
    }

    /** The start that its random choices hang on; nothing as long as that is not known. */
    Optional<ExactTime> keyStart() {
        return Optional.ofNullable(keyStart).or(this::start);
    }

    void lasts(Lapse time) {
        length = time;
    }

    void isPlayed(Plays times) {
        plays = times;
    }

    /** When its first play starts; nothing as long as that is not known. */
    Optional<ExactTime> start() {
        return Optional.ofNullable(start);
    }

    /** How long each play lasts; nothing as long as that is not known. */
    Optional<Lapse> length() {
        return Optional.ofNullable(length);
    }

    /** How often it is played; nothing as long as that is not known. */
    Optional<Plays> plays() {
        return Optional.ofNullable(plays);
    }

    /** When the last of its plays has ended; nothing as long as that is not known. */
    Optional<ExactTime> end() {
        return plays().map(Plays::lastEnd);
    }
}
