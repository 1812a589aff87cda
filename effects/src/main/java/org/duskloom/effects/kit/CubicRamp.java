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

    private final float[] starts;
    private final float[] widths;
    /** Which pieces add anything on the way. */
    private final int[] moving;
    /** Which pieces begin with another colour than the piece before ends with. */
    private final int[] jumping;

    private final CubicChannel red;
    private final CubicChannel green;
    private final CubicChannel blue;

    private CubicRamp(List<PalettePiece> pieces, List<List<Cubic>> channels, int[] moving, int[] jumping) {
        this.moving = moving;
        this.jumping = jumping;
        double[] exactWidths = pieces.stream().mapToDouble(PalettePiece::width).toArray();
        starts = new float[exactWidths.length];
        widths = new float[exactWidths.length];
        for (int i = 0; i < widths.length; i++) {
            starts[i] = pieces.get(i).firstFloat();
            widths[i] = (float) exactWidths[i];
        }
        red = new CubicChannel(channels.get(0), exactWidths);
        green = new CubicChannel(channels.get(1), exactWidths);
        blue = new CubicChannel(channels.get(2), exactWidths);
    }

    /** The ramp of these pieces; empty where they are not cubic, or too many. */
    static Optional<CubicRamp> of(List<PalettePiece> pieces) {
        if (pieces.stream().anyMatch(piece -> piece.cubics().isEmpty())) {
            return Optional.empty();
        }
        List<List<Cubic>> channels = IntStream.range(0, 3)
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

    @Override
    void fillLight(float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] alphas) {
        if (jumping.length == 0 && moving.length > 0 && moving.length <= 2) {
            fillFew(places, from, to, reds, greens, blues, alphas);
            return;
        }
        if (moving.length == 1 && widths[moving[0]] == 1) {
            begin(moving[0], places, from, to, reds, greens, blues);
        } else {
            addUp(places, from, to, reds, greens, blues, alphas);
        }
        addJumps(places, from, to, reds, greens, blues, alphas);
        red.finish(reds, from, to);
        green.finish(greens, from, to);
        blue.finish(blues, from, to);
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
            red.fill(piece, ways, reds, from, to);
            green.fill(piece, ways, greens, from, to);
            blue.fill(piece, ways, blues, from, to);
        } else {
            int next = moving[1];
            // The plane of blue is the last to be filled; until then it holds the ways into the second piece.
            waysInto(places, starts[next], widths[next], from, to, blues);
            red.fill(piece, ways, next, blues, reds, from, to);
            green.fill(piece, ways, next, blues, greens, from, to);
            blue.fill(piece, ways, next, blues, blues, from, to);
        }
    }

    /** Begins with what a piece adds to what there is at place 0. */
    private void begin(int piece, float[] ways, int from, int to, float[] reds, float[] greens, float[] blues) {
        red.begin(piece, ways, reds, from, to);
        green.begin(piece, ways, greens, from, to);
        blue.begin(piece, ways, blues, from, to);
    }

    private void addUp(float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] scratch) {
        int first = moving.length == 0 ? 0 : moving[0];
        waysInto(places, starts[first], widths[first], from, to, scratch);
        begin(first, scratch, from, to, reds, greens, blues);
        for (int i = 1; i < moving.length; i++) {
            int piece = moving[i];
            waysInto(places, starts[piece], widths[piece], from, to, scratch);
            red.add(piece, scratch, reds, from, to);
            green.add(piece, scratch, greens, from, to);
            blue.add(piece, scratch, blues, from, to);
        }
    }

    private void addJumps(
            float[] places, int from, int to, float[] reds, float[] greens, float[] blues, float[] scratch) {
        for (int piece : jumping) {
            StepRamp.reached(places, starts[piece], from, to, scratch);
            red.addJump(piece, scratch, reds, from, to);
            green.addJump(piece, scratch, greens, from, to);
            blue.addJump(piece, scratch, blues, from, to);
        }
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
