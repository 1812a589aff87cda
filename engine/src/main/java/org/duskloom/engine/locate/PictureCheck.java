package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;

/**
 * Finds out whether the pictures of a round are what they should be: each pair adds up to the lit picture, and what
 * lights say are words. If not, says which picture is to blame.
 */
final class PictureCheck {
    /** By which share of a light a pair may miss the lit picture. */
    private static final double TOLERANCE = 0.3;

    /** As many dots as this must agree, as a share of those that are looked at. */
    private static final double MOST = 0.75;

    /** A light takes turns in at least this share of the pairs, even if some pictures are not what they should be. */
    private static final double TURNS = 0.7;

    /** Of the dots whose bits are all clear, this share must say words. */
    private static final double MOST_WORDS = 0.8;

    private static final int MOST_DOTS = 4000;
    private static final String ORDER =
            "put the photos in the order of steps.txt, one for each step that is called a picture, and try again";

    private static final String AGAIN = "play that step alone with --step and take it again, with the camera where it"
            + " was; or take all of them again";

    private final Reference reference;
    private final float[][] light;
    private final int[] dots;
    private final IntFunction<String> names;

    /**
     * @param names what people call the pictures of the round: 0 is the dark one, 1 the lit one, then the readings
     * @param pairs whether the readings should be pairs, so that lights are told from lamps by taking turns
     */
    PictureCheck(Readings readings, IntFunction<String> names, boolean pairs) {
        this.reference = readings.reference;
        this.light = readings.light;
        this.names = names;
        int[] bright =
                IntStream.range(0, reference.dots.count()).filter(this::isClear).toArray();
        int[] taking = IntStream.of(bright).filter(this::takesTurns).toArray();
        // In photos that do not belong together nothing takes turns.
        int[] clear = !pairs || 20 * taking.length < bright.length ? bright : taking;
        int stride = 1 + clear.length / MOST_DOTS;
        this.dots = IntStream.range(0, clear.length)
                .filter(i -> i % stride == 0)
                .map(i -> clear[i])
                .toArray();
    }

    /** In the middle of a light, but not burnt out, nor in a lamp. */
    private boolean isClear(int dot) {
        double above = reference.lit[dot] - reference.dark[dot];
        return above > 0.4 * reference.usualPeak && !reference.nearLamp[dot];
    }

    /**
     * Whether a dot is mostly lit in just one picture of each pair, as it is in the middle of a light, not of a lamp.
     */
    private boolean takesTurns(int dot) {
        double[] sorted = IntStream.range(0, light.length)
                .mapToDouble(reading -> light[reading][dot])
                .sorted()
                .toArray();
        double half = 0.5 * (sorted[sorted.length / 4] + sorted[sorted.length * 3 / 4]);
        int turns = 0;
        for (int reading = 0; reading + 1 < light.length; reading += 2) {
            turns += light[reading][dot] > half != light[reading + 1][dot] > half ? 1 : 0;
        }
        return turns > TURNS * light.length / 2;
    }

    /** By how much a dot is brighter in a reading than in the dark, as a share of what it is when lit. */
    private double share(int reading, int dot) {
        return (light[reading][dot] - reference.dark[dot]) / (reference.lit[dot] - reference.dark[dot]);
    }

    private boolean isBurnt(int dot) {
        return reference.lit[dot] >= Plane.BURNT_LIGHT;
    }

    /** The share of the dots at which two readings give together what the lit picture shows. */
    private double agreement(int reading, int other) {
        int agree = 0;
        for (int dot : dots) {
            double a = share(reading, dot);
            double b = share(other, dot);
            boolean right = isBurnt(dot) ? Math.max(a, b) > 1 - TOLERANCE : Math.abs(a + b - 1) < TOLERANCE;
            agree += right ? 1 : 0;
        }
        return (double) agree / dots.length;
    }

    /** The share of the dots that are neither dark nor as bright as in the lit picture. */
    private double haze(int reading) {
        int between = 0;
        for (int dot : dots) {
            double share = share(reading, dot);
            between += share > 0.25 && share < 0.75 ? 1 : 0;
        }
        return (double) between / dots.length;
    }

    /** The share of the dots at which two readings show the same. */
    private double likeness(int reading, int other) {
        int same = 0;
        for (int dot : dots) {
            same += Math.abs(share(reading, dot) - share(other, dot)) < TOLERANCE ? 1 : 0;
        }
        return (double) same / dots.length;
    }

    private boolean isDark(int reading) {
        int dark = 0;
        for (int dot : dots) {
            dark += share(reading, dot) < 0.15 ? 1 : 0;
        }
        return dark > 0.97 * dots.length;
    }

    private String name(int reading) {
        return names.apply(2 + reading);
    }

    /** All readings are pairs. */
    void requirePairs(FindCode code) throws PicturesRefusedException {
        if (dots.length == 0) {
            throw tooBright();
        }
        List<Integer> bad = new ArrayList<>();
        for (int reading = 0; reading < light.length; reading += 2) {
            if (agreement(reading, reading + 1) < MOST) {
                bad.add(reading);
            }
        }
        if (bad.isEmpty()) {
            return;
        }
        if (bad.size() > light.length / 3) {
            refuseReference();
        }
        for (int reading : bad) {
            for (int one = reading; one <= reading + 1; one++) {
                if (isDark(one)) {
                    throw refused(one, "shows no light at all", AGAIN);
                }
            }
            if (likeness(reading, reading + 1) > MOST) {
                throw refused(
                        reading + 1,
                        "shows the same as " + name(reading) + "; the step between two others is missing",
                        AGAIN);
            }
        }
        refuseExchanged(bad, code);
        int worst = bad.get(0);
        for (int reading : bad) {
            worst = haze(reading) > haze(worst) ? reading : worst;
            worst = haze(reading + 1) > haze(worst) ? reading + 1 : worst;
        }
        int other = worst ^ 1;
        throw refused(
                worst,
                "does not give all lights together with " + name(other)
                        + ", as the two should: it was made too early, too late or with another exposure",
                "take it again while nothing changes; --hold makes the steps longer");
    }

    private PicturesRefusedException refused(int reading, String message, String hint) {
        return new PicturesRefusedException(name(reading), message, hint);
    }

    /** Most pairs do not add up to the lit picture, so it is this one, or the dark one, that is to blame. */
    private void refuseReference() throws PicturesRefusedException {
        int bright = 0;
        for (int dot : dots) {
            int dim = 0;
            for (int reading = 0; reading < light.length; reading++) {
                dim += share(reading, dot) < -0.25 ? 1 : 0;
            }
            bright += dim > light.length / 4 ? 1 : 0;
        }
        if (bright > dots.length / 2) {
            throw tooBright();
        }
        throw new PicturesRefusedException(
                names.apply(1),
                "should show all lights, but the pairs that follow give together something else",
                "take it again while all are lit; exposure, focus and zoom must be the same in all pictures");
    }

    private PicturesRefusedException tooBright() {
        return new PicturesRefusedException(
                names.apply(0),
                "should be dark, and shows lights that are dark in later pictures",
                "take it again while nothing is lit");
    }

    private void refuseExchanged(List<Integer> bad, FindCode code) throws PicturesRefusedException {
        List<Integer> readings = new ArrayList<>();
        bad.forEach(reading -> readings.addAll(List.of(reading, reading + 1)));
        for (int a : readings) {
            for (int b : readings) {
                // With the two exchanged both pairs add up, and so they do with their partners; then words tell.
                if (a < b && a / 2 != b / 2 && agreement(b, a ^ 1) >= MOST && agreement(a, b ^ 1) >= MOST) {
                    int turned = rightWithSwapped(a ^ 1, b ^ 1, code) > rightWithSwapped(a, b, code) ? 1 : 0;
                    throw refused(a ^ turned, "and " + name(b ^ turned) + " seem to be exchanged", ORDER);
                }
            }
        }
    }

    /** How many dots say words if two readings change places. */
    private long rightWithSwapped(int a, int b, FindCode code) {
        int[] order = IntStream.range(0, light.length)
                .map(reading -> reading == a ? b : reading == b ? a : reading)
                .toArray();
        return IntStream.of(words(code, order))
                .filter(word -> code.pixel(word) >= 0)
                .count();
    }

    /** Tells one picture too few or too many from the pairs that still add up. */
    PicturesRefusedException miscounted(int expected, String said) {
        int count = 2 + light.length;
        if (count == expected + 1) {
            for (int reading = 0; reading + 1 < light.length; reading++) {
                if (likeness(reading, reading + 1) > 0.9) {
                    return new PicturesRefusedException(
                            "",
                            said + ": " + name(reading + 1) + " shows the same as " + name(reading),
                            "leave one of the two out");
                }
            }
        }
        if (count == expected - 1) {
            for (int reading = 0; reading < light.length; reading += 2) {
                if (reading + 1 == light.length || agreement(reading, reading + 1) < MOST) {
                    return new PicturesRefusedException(
                            "",
                            said + ": the one that belongs to " + name(reading) + " is missing, picture "
                                    + (reading + 3) + " or " + (reading + 4) + " of steps.txt",
                            "take it again with the camera where it was, or take all of them again");
                }
            }
        }
        return new PicturesRefusedException("", said, ORDER);
    }

    /** What lights say are words; else pairs are in the wrong order, or pictures of a pair are. */
    void requireWords(FindCode code) throws PicturesRefusedException {
        int[] words = words(code, IntStream.range(0, light.length).toArray());
        if (words.length == 0) {
            return;
        }
        int bits = code.bits();
        int[] wrong = new int[bits];
        int right = 0;
        for (int word : words) {
            int bit = code.wrongBit(word);
            if (bit >= 0) {
                wrong[bit]++;
            }
            right += code.pixel(word) >= 0 ? 1 : 0;
        }
        if (right >= MOST_WORDS * words.length) {
            return;
        }
        for (int bit = 0; bit < bits; bit++) {
            if (wrong[bit] > words.length / 2) {
                throw refused(2 * bit, "and " + name(2 * bit + 1) + " seem to be exchanged", ORDER);
            }
        }
        for (int a = 0; a < bits; a++) {
            for (int b = a + 1; b < bits; b++) {
                if (rightWithExchanged(words, code, a, b) > MOST_WORDS * words.length) {
                    throw refused(
                            2 * a,
                            "and " + name(2 * a + 1) + " seem to be exchanged with " + name(2 * b) + " and "
                                    + name(2 * b + 1),
                            ORDER);
                }
            }
        }
        throw new PicturesRefusedException(
                "",
                "what the lights blink are not the numbers of " + code.pixelCount() + " pixels",
                ORDER + "; was the run made for just these pixels?");
    }

    private static int rightWithExchanged(int[] words, FindCode code, int a, int b) {
        int right = 0;
        for (int word : words) {
            int differ = (word >>> a ^ word >>> b) & 1;
            right += code.pixel(word ^ (differ << a | differ << b)) >= 0 ? 1 : 0;
        }
        return right;
    }

    /**
     * What the dots say whose every bit is clear.
     *
     * @param order the readings, in the order of the run
     */
    private int[] words(FindCode code, int[] order) {
        return IntStream.of(dots)
                .filter(dot -> IntStream.range(0, code.bits())
                        .allMatch(bit -> Math.abs(share(order[2 * bit], dot) - share(order[2 * bit + 1], dot)) > 0.6))
                .map(dot -> IntStream.range(0, code.bits())
                        .map(bit -> light[order[2 * bit]][dot] > light[order[2 * bit + 1]][dot] ? 1 << bit : 0)
                        .sum())
                .toArray();
    }
}
