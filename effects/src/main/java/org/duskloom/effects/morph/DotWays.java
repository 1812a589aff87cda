package org.duskloom.effects.morph;

/**
 * Which of the {@link ColorWays} the colour of each dot goes. Immutable.
 *
 * @param numbers of the ways
 * @param areInTurn whether each dot has the way after that of the dot before, so that nothing has to be looked up
 */
record DotWays(int[] numbers, boolean areInTurn) {
    static DotWays of(int... numbers) {
        boolean areInTurn = true;
        for (int dot = 1; dot < numbers.length; dot++) {
            areInTurn &= numbers[dot] == numbers[dot - 1] + 1;
        }
        return new DotWays(numbers, areInTurn);
    }

    int count() {
        return numbers.length;
    }

    /** Gives each dot of a frame its colour, of those of all ways. */
    void give(float[] colors, DotFrame frame) {
        if (areInTurn) {
            frame.colors = colors;
            frame.firstColor = count() > 0 ? Light.CHANNELS * numbers[0] : 0;
        } else {
            frame.colors = frame.ownColors;
            frame.firstColor = 0;
            pick(colors, frame.ownColors);
        }
    }

    private void pick(float[] colors, float[] picked) {
        int at = 0;
        for (int way : numbers) {
            int color = Light.CHANNELS * way;
            picked[at] = colors[color];
            picked[at + 1] = colors[color + 1];
            picked[at + 2] = colors[color + 2];
            picked[at + 3] = colors[color + 3];
            at += Light.CHANNELS;
        }
    }
}
