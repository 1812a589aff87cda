package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;

/** Says which pictures of a round are missing or too many, by which readings still are pairs. */
final class Miscount {
    private static final int MOST_FAULTS = 3;

    private final LightShares shares;
    private final RoundPictures pictures;
    private final PairMatch match;

    private Miscount(LightShares shares, RoundPictures pictures) {
        this.shares = shares;
        this.pictures = pictures;
        this.match = PairMatch.of(
                shares.readings(),
                pictures.code().bits(),
                shares::arePair,
                reading -> shares.isDark(reading) || shares.isLit(reading) || alike(reading).length > 0);
    }

    static Miscount of(LightShares shares, RoundPictures pictures) {
        return new Miscount(shares, pictures);
    }

    /** Whether so few pictures are missing or too many that it is believed which. */
    boolean isSure() {
        return match.faults() <= MOST_FAULTS;
    }

    private int[] alike(int reading) {
        return IntStream.range(0, shares.readings())
                .filter(other -> other != reading && shares.likeness(reading, other) > LightShares.ALIKE)
                .toArray();
    }

    /** @param before how the sentence begins */
    PicturesRefusedException refusal(String before) {
        List<String> said = new ArrayList<>();
        match.extra().forEach(reading -> said.add(tooMany(reading)));
        match.alone().forEach(alone -> said.add(missing(alone)));
        if (match.missingPairs() > 0) {
            OptionalInt pair = missingPair();
            said.add(
                    pair.isPresent()
                            ? "pictures " + pictures.number(2 * pair.getAsInt()) + " and "
                                    + pictures.number(2 * pair.getAsInt() + 1) + " of steps.txt are missing"
                            : 2 * match.missingPairs()
                                    + " pictures are missing, of steps that belong together two by two");
        }
        boolean isMissing = !match.alone().isEmpty() || match.missingPairs() > 0;
        String again = "take what is missing again with the camera where it was, or take all of them again";
        String leave = "leave out what is too many";
        return new PicturesRefusedException(
                "",
                before + String.join(", and ", said),
                match.extra().isEmpty() ? again : isMissing ? leave + ", and " + again : leave);
    }

    private String tooMany(int reading) {
        if (shares.isDark(reading)) {
            return pictures.name(reading) + " shows no light";
        }
        if (shares.isLit(reading)) {
            return pictures.name(reading) + " shows all lights, as " + pictures.lit() + " does";
        }
        int[] alike = alike(reading);
        if (alike.length == 0) {
            return pictures.name(reading) + " is none of the steps";
        }
        // Of two that follow each other either may be left out: it is the second one that nobody wanted.
        boolean follows = alike[0] == reading + 1;
        return pictures.name(follows ? reading + 1 : reading) + " shows the same as "
                + pictures.name(follows ? reading : alike[0]);
    }

    private String missing(PairMatch.Alone alone) {
        String said = "the one that belongs to " + pictures.name(alone.reading()) + " is missing";
        if (match.missingPairs() > 0) {
            return said;
        }
        int first = pictures.number(2 * alone.pair());
        return said + ", picture " + first + " or " + (first + 1) + " of steps.txt";
    }

    /** Which pair of the run is missing, if it is one and nothing else: with it left out there are words. */
    private OptionalInt missingPair() {
        FindCode code = pictures.code();
        if (match.faults() != 2 || shares.readings() != 2 * code.bits() - 2) {
            return OptionalInt.empty();
        }
        for (int pair = 0; pair < code.bits(); pair++) {
            int missing = pair;
            int[] order = IntStream.range(0, 2 * code.bits())
                    .map(reading -> reading / 2 == missing ? -1 : reading < 2 * missing ? reading : reading - 2)
                    .toArray();
            int[] words = shares.words(code, order);
            long right = IntStream.of(words)
                    .filter(word -> code.pixel(word) >= 0 || code.pixel(word | 1 << missing) >= 0)
                    .count();
            if (words.length > 0 && right > WordCheck.MOST_WORDS * words.length) {
                return OptionalInt.of(pair);
            }
        }
        return OptionalInt.empty();
    }
}
