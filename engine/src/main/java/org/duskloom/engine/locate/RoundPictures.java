package org.duskloom.engine.locate;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;

/**
 * What is known of the pictures of a round before they are read. Readings are those after the dark and the lit one,
 * from 0.
 */
final class RoundPictures {
    private static final int BEFORE_READINGS = 2;

    private final FindRun run;
    private final int round;
    private final IntFunction<String> names;
    private final List<FindStep> steps;

    /** @param names what people call the pictures of the round: 0 is the dark one, 1 the lit one, then the readings */
    RoundPictures(FindRun run, int round, IntFunction<String> names) {
        this.run = run;
        this.round = round;
        this.names = names;
        int each = BEFORE_READINGS + 2 * run.code().bits();
        this.steps = run.pictures().subList(round * each, (round + 1) * each);
    }

    FindCode code() {
        return run.code();
    }

    String dark() {
        return names.apply(0);
    }

    String lit() {
        return names.apply(1);
    }

    String name(int reading) {
        return names.apply(BEFORE_READINGS + reading);
    }

    /** What steps.txt calls the step of a reading. */
    String step(int reading) {
        return run.name(steps.get(BEFORE_READINGS + reading));
    }

    /** By what number steps.txt calls its picture. */
    int number(int reading) {
        return round * steps.size() + BEFORE_READINGS + reading + 1;
    }

    /** Which share of the pixels is lit in one of two steps and not in the other. */
    double difference(int reading, int other) {
        int[] pixels = IntStream.iterate(round, pixel -> pixel < run.code().pixelCount(), pixel -> pixel + run.apart())
                .toArray();
        FindStep one = steps.get(BEFORE_READINGS + reading);
        FindStep two = steps.get(BEFORE_READINGS + other);
        long differ = IntStream.of(pixels)
                .filter(pixel -> run.isLit(one, pixel) != run.isLit(two, pixel))
                .count();
        return (double) differ / pixels.length;
    }

    /** Refuses a reading, and says how to take it again. */
    PicturesRefusedException again(int reading, String message) {
        return new PicturesRefusedException(
                name(reading),
                message,
                "play that step alone with --step \"" + step(reading) + "\" and take it again, with the camera where it"
                        + " was; or take all of them again");
    }

    /** Refuses a picture that is where another one should be. */
    static PicturesRefusedException order(String picture, String message) {
        return new PicturesRefusedException(picture, message, ORDER);
    }

    /** What to do with pictures that are not in their order. */
    static final String ORDER =
            "put the photos in the order of steps.txt, one for each step that is called a picture, and try again";
}
