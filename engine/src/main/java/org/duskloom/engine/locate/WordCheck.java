package org.duskloom.engine.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.duskloom.engine.find.FindCode;
import org.duskloom.engine.text.Counted;

/**
 * Finds out whether what lights say is words; if not, pairs are in the wrong order, or the pictures of one are.
 */
final class WordCheck {
    /** Of the dots whose bits are all clear, this share must say words. */
    static final double MOST_WORDS = 0.8;

    /**
     * Hardly more dots than this share are read wrong, so exchanges that put right as many but for these are told apart
     * by chance alone. No source: of the lights that the simulated camera sees, 98.2 % or more are found in each row of
     * {@code LocateTableTest}, with no wrong number, and the dots that count here are those whose bits are all clear.
     * Were it larger, exchanges that nobody made would be told beside the right one; smaller, one of several that fit
     * would be told as the only one.
     */
    private static final double MISREAD = 0.02;

    private final int[] words;
    private final RoundPictures pictures;
    private final FindCode code;

    private WordCheck(LightShares shares, RoundPictures pictures) {
        this.pictures = pictures;
        this.code = pictures.code();
        this.words = shares.words(code, IntStream.range(0, shares.readings()).toArray());
    }

    static void require(LightShares shares, RoundPictures pictures) throws PicturesRefusedException {
        WordCheck check = new WordCheck(shares, pictures);
        check.refuseOtherRun();
        long right = IntStream.of(check.words)
                .filter(word -> check.code.pixel(word) >= 0)
                .count();
        if (right < MOST_WORDS * check.words.length) {
            check.refuseTurned();
            check.refuseExchanged();
            throw RoundPictures.order(
                    "", "what the lights blink are not the numbers of " + check.code.pixelCount() + " pixels");
        }
    }

    /**
     * Lights blink numbers that the display does not have: the run was made for a longer one, whose pixels have other
     * numbers from where it differs on. Fewer pixels cannot be told from dark ones.
     */
    private void refuseOtherRun() throws PicturesRefusedException {
        FindCode all = new FindCode(1 << code.numberBits());
        int[] numbers = IntStream.of(words)
                .map(all::pixel)
                .filter(pixel -> pixel >= 0)
                .sorted()
                .toArray();
        int greatest = numbers.length - 1;
        // Of a number that a single dot says it may have been read wrong.
        while (greatest > 0 && numbers[greatest] != numbers[greatest - 1]) {
            greatest--;
        }
        // Where less is words, pictures are in a wrong order.
        boolean areWords = numbers.length > MOST_WORDS * words.length;
        if (areWords && greatest > 0 && numbers[greatest] >= code.pixelCount()) {
            throw new PicturesRefusedException(
                    "",
                    "lights blink numbers up to " + (numbers[greatest] + 1) + ", and there should be "
                            + Counted.of(code.pixelCount(), "pixel"),
                    "the run was made for another display, or for this one before it was changed: name that one, or"
                            + " play the run of this one");
        }
    }

    private void refuseTurned() throws PicturesRefusedException {
        int[] wrong = new int[code.bits()];
        for (int word : words) {
            int bit = code.wrongBit(word);
            if (bit >= 0) {
                wrong[bit]++;
            }
        }
        for (int bit = 0; bit < wrong.length; bit++) {
            if (wrong[bit] > words.length / 2) {
                throw RoundPictures.order(
                        pictures.name(2 * bit), "seems to be exchanged with " + pictures.name(2 * bit + 1));
            }
        }
    }

    /**
     * As words are those of a linear code, two exchanges after each other may make words of words: then either of the
     * two would seem to put the other one right, and pixels would have wrong numbers. All that do as well are told.
     */
    private void refuseExchanged() throws PicturesRefusedException {
        List<Exchange> exchanges = new ArrayList<>();
        for (int a = 0; a < code.bits(); a++) {
            for (int b = a + 1; b < code.bits(); b++) {
                exchanges.add(new Exchange(a, b, rightWithExchanged(a, b)));
            }
        }
        int most = exchanges.stream().mapToInt(Exchange::right).max().orElse(0);
        if (most > MOST_WORDS * words.length) {
            exchanges.removeIf(exchange -> exchange.right() <= most - MISREAD * words.length);
            StringBuilder said = new StringBuilder();
            for (Exchange exchange : exchanges) {
                said.append(said.isEmpty() ? "" : ", or ").append(both(exchange.a()));
                said.append(exchange == exchanges.get(0) ? " seem to be exchanged with " : " with ");
                said.append(both(exchange.b()));
            }
            throw RoundPictures.order("", said.toString());
        }
    }

    /**
     * Two bits whose pictures may have been exchanged.
     *
     * @param right how many dots say words then
     */
    private record Exchange(int a, int b, int right) {}

    private String both(int bit) {
        return pictures.name(2 * bit) + " and " + pictures.name(2 * bit + 1);
    }

    private int rightWithExchanged(int a, int b) {
        int right = 0;
        for (int word : words) {
            int differ = (word >>> a ^ word >>> b) & 1;
            right += code.pixel(word ^ (differ << a | differ << b)) >= 0 ? 1 : 0;
        }
        return right;
    }
}
