package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds out whether the readings of a round are pairs that add up to the lit picture; if not, says which one is to
 * blame.
 */
final class PairCheck {
    /** Two steps that differ in less than this share of their pixels are not told apart by what they show. */
    private static final double TOO_ALIKE = 0.2;

    /** Of lights that are burnt out together the dots round them do not add up. */
    private static final double MOSTLY_BURNT = 0.25;

    private final LightShares shares;
    private final RoundPictures pictures;

    private PairCheck(LightShares shares, RoundPictures pictures) {
        this.shares = shares;
        this.pictures = pictures;
    }

    static void require(LightShares shares, RoundPictures pictures) throws PicturesRefusedException {
        new PairCheck(shares, pictures).require();
    }

    private void require() throws PicturesRefusedException {
        if (shares.isEmpty()) {
            throw tooBright();
        }
        int[] bad = IntStream.range(0, shares.readings() / 2)
                .map(pair -> 2 * pair)
                .filter(reading -> !shares.arePair(reading, reading + 1))
                .toArray();
        if (bad.length == 0) {
            return;
        }
        if (bad.length > shares.readings() / 3) {
            refuseShifted();
            refuseReference();
        }
        refusePlain(bad);
        refuseExchanged(bad);
        if (bad.length > 1) {
            refuseShifted();
        }
        refuseDoubled(bad);
        throw changing(bad);
    }

    /** Most pairs do not add up to the lit picture, so it is this one, or the dark one, that is to blame. */
    private void refuseReference() throws PicturesRefusedException {
        if (shares.wereMostLitInTheDark()) {
            throw tooBright();
        }
        throw new PicturesRefusedException(
                pictures.lit(),
                "should show all lights, but the pairs that follow give together something else",
                "take it again while all are lit; exposure, focus and zoom must be the same in all pictures");
    }

    private PicturesRefusedException tooBright() {
        return new PicturesRefusedException(
                pictures.dark(),
                "should be dark, and shows lights that are dark in later pictures",
                "take it again while nothing is lit");
    }

    private void refusePlain(int[] bad) throws PicturesRefusedException {
        for (int reading : bad) {
            for (int one = reading; one <= reading + 1; one++) {
                if (shares.isDark(one)) {
                    throw pictures.again(one, "shows no light at all");
                }
                if (shares.isLit(one)) {
                    throw pictures.again(one, "shows all lights, as " + pictures.lit() + " does");
                }
            }
            if (shares.likeness(reading, reading + 1) > LightShares.MOST) {
                throw pictures.again(
                        reading + 1,
                        "shows the same as " + pictures.name(reading) + "; the step between two others is missing");
            }
        }
    }

    private void refuseExchanged(int[] bad) throws PicturesRefusedException {
        int[] readings = IntStream.of(bad)
                .flatMap(reading -> IntStream.of(reading, reading + 1))
                .toArray();
        for (int a : readings) {
            for (int b : readings) {
                // With the two exchanged both pairs add up, and so they do with their partners; then words tell.
                if (a < b && a / 2 != b / 2 && shares.arePair(b, a ^ 1) && shares.arePair(a, b ^ 1)) {
                    int turned = wordsWithSwapped(a ^ 1, b ^ 1) > wordsWithSwapped(a, b) ? 1 : 0;
                    throw RoundPictures.order(
                            pictures.name(a ^ turned), "seems to be exchanged with " + pictures.name(b ^ turned));
                }
            }
        }
    }

    /** How many dots say words if two readings change places. */
    private long wordsWithSwapped(int a, int b) {
        int[] order = IntStream.range(0, shares.readings())
                .map(reading -> reading == a ? b : reading == b ? a : reading)
                .toArray();
        return IntStream.of(shares.words(pictures.code(), order))
                .filter(word -> pictures.code().pixel(word) >= 0)
                .count();
    }

    /** A picture of one step stands where that of another should. */
    private void refuseDoubled(int[] bad) throws PicturesRefusedException {
        for (int pair : bad) {
            for (int reading = pair; reading <= pair + 1; reading++) {
                for (int other = 0; other < shares.readings(); other++) {
                    if (other / 2 != pair / 2
                            && shares.likeness(reading, other) > LightShares.ALIKE
                            && pictures.difference(reading, other) > TOO_ALIKE) {
                        throw pictures.again(
                                reading,
                                "shows the same as " + pictures.name(other) + ", and not the step \""
                                        + pictures.step(reading) + "\"");
                    }
                }
            }
        }
    }

    /** One picture is missing and another one too many, so that those between are each in the place of another. */
    private void refuseShifted() throws PicturesRefusedException {
        Miscount miscount = Miscount.of(shares, pictures);
        if (miscount.isSure()) {
            throw miscount.refusal("");
        }
    }

    private PicturesRefusedException changing(int[] bad) {
        List<Integer> readings = new ArrayList<>();
        IntStream.of(bad).forEach(reading -> readings.addAll(List.of(reading, reading + 1)));
        int worst = bad[0];
        for (int reading : readings) {
            worst = shares.haze(reading) > shares.haze(worst) ? reading : worst;
        }
        return new PicturesRefusedException(
                pictures.name(worst),
                "does not give all lights together with " + pictures.name(worst ^ 1)
                        + ", as the two should: it was made too early, too late or with another exposure",
                "take it again while nothing changes; --hold makes the steps longer"
                        + (shares.burnt() > MOSTLY_BURNT
                                ? "; or all of them with a shorter exposure, as the lights are burnt out"
                                : ""));
    }
}
