package org.duskloom.engine.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindStep.Kind;

/**
 * All steps of a run in which pixels tell a camera their numbers. A round is three blinks, dark, lit, and for every bit
 * of the words two steps, the pixels whose bit is 1 and those whose bit is 0, so that each pair adds up to the lit
 * step. After the last round there are three more blinks. Immutable.
 */
public final class FindRun {
    /** How many blinks come before a round and after the last. */
    public static final int BLINKS = 3;

    /** The most rounds that people are offered: what is farther apart than this is told apart by any camera. */
    public static final int MOST_APART = 16;

    private final FindCode code;
    private final int apart;
    private final List<FindStep> steps;
    private final List<FindStep> pictures;
    private final int[] words;

    /**
     * @param pixelCount how many pixels there are
     * @param apart 1 for all pixels at once; 4 for every fourth pixel only, in four rounds
     * @throws IllegalArgumentException if a count is out of range, or there are more rounds than pixels
     */
    public FindRun(int pixelCount, int apart) {
        if (apart < 1 || apart > pixelCount) {
            throw new IllegalArgumentException("every " + apart + "th of " + pixelCount + " pixels");
        }
        this.code = new FindCode(pixelCount);
        this.apart = apart;
        this.steps = steps(code.bits(), apart);
        this.pictures = steps.stream().filter(FindStep::isPicture).toList();
        // Asked for in every frame.
        this.words = IntStream.range(0, pixelCount).map(code::word).toArray();
    }

    /**
     * For how many pixels a run of one round has so many pictures.
     *
     * @return in words, "9 to 16 pixels"; nothing if there is no such run
     */
    public static Optional<String> pixelsWithPictures(int pictures) {
        int least = 1;
        for (int most = 2; most <= FindCode.MOST_PIXELS; most *= 2) {
            if (2 + 2 * new FindCode(most).bits() == pictures) {
                return Optional.of(least + " to " + most + " pixels");
            }
            least = most + 1;
        }
        return Optional.empty();
    }

    private static List<FindStep> steps(int bits, int rounds) {
        List<FindStep> steps = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            addBlinks(round, 0, steps);
            add(Kind.DARK, round, 0, 2, steps);
            add(Kind.LIT, round, 0, 2, steps);
            for (int bit = 0; bit < bits; bit++) {
                add(Kind.ONES, round, bit, 2, steps);
                add(Kind.ZEROS, round, bit, 2, steps);
            }
        }
        addBlinks(rounds - 1, BLINKS, steps);
        return List.copyOf(steps);
    }

    private static void addBlinks(int round, int first, List<FindStep> steps) {
        for (int blink = first; blink < first + BLINKS; blink++) {
            add(Kind.BLINK, round, blink, 1, steps);
            add(Kind.PAUSE, round, blink, 1, steps);
        }
    }

    private static void add(Kind kind, int round, int bit, int halves, List<FindStep> steps) {
        FindStep last = steps.isEmpty() ? null : steps.get(steps.size() - 1);
        int start = last == null ? 0 : last.startHalves() + last.halves();
        steps.add(new FindStep(kind, round, bit, start, halves));
    }

    /** The words of its pixels. */
    public FindCode code() {
        return code;
    }

    /** In how many rounds the pixels take turns. */
    public int apart() {
        return apart;
    }

    /** The steps in order. */
    public List<FindStep> steps() {
        return steps;
    }

    /** The steps of which pictures are read, in order: 2 + 2 times the bits for each round. */
    public List<FindStep> pictures() {
        return pictures;
    }

    /**
     * What people call a step: "blink 1", "dark", "bit 3", "check 1 turned round", with its round where there are
     * several.
     */
    public String name(FindStep step) {
        String name = switch (step.kind()) {
            case BLINK -> "blink " + (step.bit() + 1);
            case PAUSE -> "pause " + (step.bit() + 1);
            case DARK -> "dark";
            case LIT -> "lit";
            case ONES -> bitName(step.bit());
            case ZEROS -> bitName(step.bit()) + " turned round";
        };
        return apart == 1 ? name : "round " + (step.round() + 1) + ": " + name;
    }

    private String bitName(int bit) {
        if (bit < code.numberBits()) {
            return "bit " + (bit + 1);
        }
        return bit < code.bits() - 1 ? "check " + (bit - code.numberBits() + 1) : "parity";
    }

    /** How long all steps take together, in halves of the time for which a step is held. */
    public int halves() {
        FindStep last = steps.get(steps.size() - 1);
        return last.startHalves() + last.halves();
    }

    /**
     * Whether a pixel is lit in a step.
     *
     * @param step one of this run
     * @param pixel its place in wiring order, from 0
     */
    public boolean isLit(FindStep step, int pixel) {
        return switch (step.kind()) {
            case BLINK -> true;
            case PAUSE, DARK -> false;
            case LIT -> takesPart(step, pixel);
            case ONES -> takesPart(step, pixel) && bit(step, pixel) == 1;
            case ZEROS -> takesPart(step, pixel) && bit(step, pixel) == 0;
        };
    }

    private boolean takesPart(FindStep step, int pixel) {
        return pixel % apart == step.round();
    }

    private int bit(FindStep step, int pixel) {
        return words[pixel] >>> step.bit() & 1;
    }
}
