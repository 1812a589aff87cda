package org.duskloom.effects.kit;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A palette of opaque colours, mixed in OKLab or in linear light: each channel is a cubic polynomial between two stops.
 * A place adds up what each piece has added by then, so all places go the same way through the loops.
 */
final class CubicRamp extends Ramp {
    /** With more, a look-up in a table is faster. */
    private static final int MOST_PARTS = 10;

    private static final double NO_JUMP = 1e-6;

    private static final int CHANNELS = 3;

    private final float[] starts;
    private final float[] widths;
    /** Which pieces add anything on the way. */
    private final int[] moving;
    /** Which pieces begin with another colour than the piece before ends with. */
    private final int[] jumping;

    /** Red, green and blue. */
    private final CubicChannel[] channels;

    private CubicRamp(List<PalettePiece> pieces, List<List<Cubic>> cubics, int[] moving, int[] jumping) {
        this.moving = moving;
        this.jumping = jumping;
        double[] exactWidths = pieces.stream().mapToDouble(PalettePiece::width).toArray();
        starts = new float[exactWidths.length];
        widths = new float[exactWidths.length];
        for (int i = 0; i < widths.length; i++) {
            starts[i] = pieces.get(i).firstFloat();
            widths[i] = (float) exactWidths[i];
        }
        channels = cubics.stream()
                .map(cubic -> new CubicChannel(cubic, exactWidths))
                .toArray(CubicChannel[]::new);
    }

    /** The ramp of these pieces; empty where they are not cubic, or too many. */
    static Optional<CubicRamp> of(List<PalettePiece> pieces) {
        if (pieces.stream().anyMatch(piece -> piece.cubics().isEmpty())) {
            return Optional.empty();
        }
        List<List<Cubic>> channels = IntStream.range(0, CHANNELS)
                .mapToObj(channel -> pieces.stream()
                        .map(piece -> Cubic.of(piece.cubics().orElseThrow()[channel]))
                        .toList())
                .toList();
        int[] moving = IntStream.range(0, pieces.size())
                .filter(piece -> channels.stream()
                        .anyMatch(channel -> !channel.get(piece).isConstant()))
                .toArray();
        int[] jumping = IntStream.range(1, pieces.size())
                .filter(piece -> channels.stream().anyMatch(channel -> jumps(pieces, channel, piece)))
                .toArray();
        return moving.length + jumping.length > MOST_PARTS
                ? Optional.empty()
                : Optional.of(new CubicRamp(pieces, channels, moving, jumping));
    }

    private static boolean jumps(List<PalettePiece> pieces, List<Cubic> channel, int piece) {
        double before = channel.get(piece - 1).at(pieces.get(piece - 1).width());
        return Math.abs(channel.get(piece).c0() - before) > NO_JUMP;
    }

    @Override
    public boolean isOpaque() {
        return true;
    }

    /**
     * The channels go through a loop of three rather than three calls: compilers copy what is called into each call,
     * loops and all, and take their time for every copy.
     */
    @Override
    void fillLight(float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] alphas) {
        if (jumping.length == 0 && moving.length > 0 && moving.length <= 2) {
            fillFew(places, from, to, reds, greens, blues, alphas);
            return;
        }
        if (moving.length == 1 && widths[moving[0]] == 1) {
            for (int channel = 0; channel < CHANNELS; channel++) {
                channels[channel].begin(moving[0], places, plane(channel, reds, greens, blues), from, to);
            }
        } else {
            addUp(places, from, to, reds, greens, blues, alphas);
        }
        addJumps(places, from, to, reds, greens, blues, alphas);
        for (int channel = 0; channel < CHANNELS; channel++) {
            channels[channel].finish(plane(channel, reds, greens, blues), from, to);
        }
    }

    /** The usual palettes, of one piece or two, in fewer loops. */
    private void fillFew(
            float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] scratch) {
        int piece = moving[0];
        float[] ways = widths[piece] == 1 ? places : scratch;
        if (ways == scratch) {
            waysInto(places, starts[piece], widths[piece], from, to, ways);
        }
        if (moving.length == 1) {
            for (int channel = 0; channel < CHANNELS; channel++) {
                channels[channel].fill(piece, ways, plane(channel, reds, greens, blues), from, to);
            }
        } else {
            int next = moving[1];
            // The plane of blue is the last to be filled; until then it holds the ways into the second piece.
            waysInto(places, starts[next], widths[next], from, to, blues);
            for (int channel = 0; channel < CHANNELS; channel++) {
                channels[channel].fill(piece, ways, next, blues, plane(channel, reds, greens, blues), from, to);
            }
        }
    }

    private void addUp(float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] scratch) {
        int first = moving.length == 0 ? 0 : moving[0];
        for (int i = 0; i < Math.max(1, moving.length); i++) {
            int piece = i == 0 ? first : moving[i];
            waysInto(places, starts[piece], widths[piece], from, to, scratch);
            for (int channel = 0; channel < CHANNELS; channel++) {
                float[] plane = plane(channel, reds, greens, blues);
                if (i == 0) {
                    channels[channel].begin(piece, scratch, plane, from, to);
                } else {
                    channels[channel].add(piece, scratch, plane, from, to);
                }
            }
        }
    }

    private void addJumps(
            float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] scratch) {
        for (int piece : jumping) {
            StepRamp.reached(places, starts[piece], from, to, scratch);
            for (int channel = 0; channel < CHANNELS; channel++) {
                channels[channel].addJump(piece, scratch, plane(channel, reds, greens, blues), from, to);
            }
        }
    }

    private static float[] plane(int channel, float[] reds, float[] greens, float[] blues) {
        return channel == 0 ? reds : channel == 1 ? greens : blues;
    }

    /**
     * How far each place has come into a piece, from 0 to its width. Clamping is most of what a piece costs: where it
     * changes no float it is left out.
     */
    static void waysInto(float[] places, float start, float width, int from, int to, float[] ways) {
        if (start == 0) {
            for (int i = from; i < to; i++) {
                ways[i] = Math.min(width, places[i]);
            }
        } else if (1f - start <= width) {
            for (int i = from; i < to; i++) {
                ways[i] = Levels.aboveZero(places[i] - start);
            }
        } else {
            for (int i = from; i < to; i++) {
                ways[i] = Math.min(width, Levels.aboveZero(places[i] - start));
            }
        }
    }
}
