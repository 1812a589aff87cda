package org.duskloom.cli;

import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.proof.Proof;
import org.duskloom.engine.text.ShortestDecimal;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import picocli.CommandLine.Option;

/** {@code proof --find}: how the run is played by which pixels tell a camera their numbers. */
final class FindOptions {
    private static final ExactTime SHORTEST_HOLD = ExactTime.ofMilliseconds(500);
    private static final ExactTime LONGEST_HOLD = ExactTime.ofSeconds(60);

    @Option(
            names = "--find",
            description =
                    "Instead, make every pixel blink its number, so that 'duskloom locate' finds in pictures where"
                            + " it hangs.")
    private boolean find;

    @Option(
            names = "--hold",
            paramLabel = "TIME",
            description = "With --find: how long a step lasts, 500ms to 60s, in steps of 100ms; 1s unless written."
                    + " 5s is enough to press a button in every step.")
    private String hold;

    @Option(
            names = "--light",
            paramLabel = "SHARE",
            description = "With --find: how bright white is, above 0 and up to 1; 0.3 unless written.")
    private Double light;

    @Option(
            names = "--apart",
            paramLabel = "K",
            description = "With --find: light every K-th pixel only, in K rounds, 2 to 16. For pixels that are nearer"
                    + " to each other than four dots of the picture.")
    private Integer apart;

    FindOptions() {}

    boolean isAsked() {
        return find;
    }

    /**
     * The run for so many pixels.
     *
     * @throws MisuseException if an option is out of range
     */
    FindRun run(int pixels) {
        int rounds = rounds(apart);
        if (rounds > pixels) {
            throw new MisuseException("--apart is " + apart + ", but there are only " + pixels + " pixels");
        }
        return new FindRun(pixels, rounds);
    }

    /**
     * In how many rounds pixels take turns.
     *
     * @param apart what {@code --apart} says; null if it is not given
     * @throws MisuseException if it is out of range
     */
    static int rounds(Integer apart) {
        if (apart != null && (apart < 2 || apart > FindRun.MOST_APART)) {
            throw new MisuseException("--apart is " + apart + "; allowed: 2 to " + FindRun.MOST_APART);
        }
        return apart == null ? 1 : apart;
    }

    /**
     * Looks at how many pixels a run is for, where no display says it.
     *
     * @param pixels what {@code --pixels} says; null if it is not given
     * @throws MisuseException if it is out of range
     */
    static void checkPixels(Integer pixels) {
        if (pixels != null && (pixels < 1 || pixels > PixelMap.MAX_PIXELS)) {
            throw new MisuseException("--pixels is " + pixels + "; allowed: 1 to " + PixelMap.MAX_PIXELS);
        }
    }

    /**
     * The steps of a run.
     *
     * @throws MisuseException if an option is out of range
     */
    Proof proof(FindRun run) {
        double share = light == null ? 0.3 : light;
        if (!(share > 0 && share <= 1)) {
            throw new MisuseException("--light is " + ShortestDecimal.of(share) + "; allowed: above 0, up to 1");
        }
        return Proof.ofFinding(run, holdFrames(), share);
    }

    private int holdFrames() {
        ExactTime time = ExactTime.ofSeconds(1);
        if (hold != null) {
            try {
                time = TimeText.parse(hold, TimeContext.NONE);
            } catch (TextFormatException fault) {
                throw new MisuseException(
                        "--hold: " + fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
            }
        }
        if (time.compareTo(SHORTEST_HOLD) < 0 || time.compareTo(LONGEST_HOLD) > 0 || 10 % time.denominator() != 0) {
            throw new MisuseException("--hold is " + hold + "; allowed: 500ms to 60s, in steps of 100ms");
        }
        return Math.toIntExact(Proof.RATE.firstFrameAtOrAfter(time));
    }

    /**
     * Refuses those that say how the run is played where none is.
     *
     * @throws MisuseException if one is given without {@code --find}
     */
    void requireFindForAll() {
        if (!find) {
            String[] names = {"--hold", "--light", "--apart"};
            Object[] values = {hold, light, apart};
            for (int i = 0; i < names.length; i++) {
                if (values[i] != null) {
                    throw new MisuseException(names[i] + " is for --find");
                }
            }
        }
    }
}
