package org.duskloom.engine.survey.fit;

import java.util.Objects;
import org.duskloom.engine.survey.Dimensions;
import org.duskloom.engine.survey.WiringKind;

/**
 * Which things a reading lets differ from what is described. A reading has its form, and the values that fit best.
 *
 * @param move where it may be
 * @param turn how it may be turned
 * @param mirrored whether it is mirrored, or not mirrored though that is described
 * @param resized whether its size may be any
 * @param wiring in which way its wiring differs
 */
record Form(Move move, Turn turn, boolean mirrored, boolean resized, WiringKind wiring) {
    static final Form AS_DESCRIBED = new Form(Move.STAYS, Turn.STAYS, false, false, WiringKind.AS_DESCRIBED);

    /** Three for the place, three for the turn, one for the size and one for the wiring. */
    static final int MOST_PARAMETERS = 8;

    /** Between a quarter turn and any turn: a prop is taken up by its back as easily as hung askew. */
    private static final double MIRROR_WEIGHT = 1.4;

    /**
     * As unlikely as a turn in space: things are seldom built at another size, and a wrong size is mostly a wrong unit.
     */
    private static final double SIZE_WEIGHT = 4;

    Form {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(turn, "turn");
        Objects.requireNonNull(wiring, "wiring");
    }

    Sizing sizing() {
        return resized ? Sizing.WITHIN_REASON : Sizing.KEPT;
    }

    /** How many numbers are fitted. */
    int parameters(Dimensions dimensions) {
        return move.parameters(dimensions) + turn.parameters() + (resized ? 1 : 0) + (isFree(wiring) ? 1 : 0);
    }

    /** How many things differ. */
    int changes() {
        return (move == Move.STAYS ? 0 : 1) + turn.changes() + (mirrored ? 1 : 0) + (resized ? 1 : 0) + changes(wiring);
    }

    /**
     * How far-fetched it is: of two forms of as many changes, the lighter one is the likelier. Weights decide only
     * among readings that fit as well, so that their order counts and not their size; it is chosen from what goes wrong
     * in a garden (common practice, no source), and nothing but which of two equal readings is told first hangs on it.
     */
    double weight() {
        return move.weight()
                + turn.weight()
                + (mirrored ? MIRROR_WEIGHT : 0)
                + (resized ? SIZE_WEIGHT : 0)
                + weight(wiring);
    }

    /** Whether a reading of the other form is a special case of one of this form. */
    boolean includes(Form other) {
        return move.compareTo(other.move) >= 0
                && turn.compareTo(other.turn) >= 0
                && (mirrored || !other.mirrored)
                && (resized || !other.resized)
                && includes(wiring, other.wiring);
    }

    /** The same at the place of another prop instead of its own. */
    Form takingAPlace() {
        return new Form(Move.TAKES_A_PLACE, turn, mirrored, resized, wiring);
    }

    /** How many things of the wiring went another way than described. */
    private static int changes(WiringKind wiring) {
        return switch (wiring) {
            case AS_DESCRIBED -> 0;
            case OTHER_WAY_AND_START -> 2;
            default -> 1;
        };
    }

    /**
     * To plug in at the wrong end is the commonest slip of all, below even a quarter turn. To begin elsewhere on a loop
     * or in a run takes a mistake in building, so that what explains the same by hanging the prop otherwise comes
     * before it; with the other way round as well it takes two. A stretch alone is rarer than the whole.
     */
    private static double weight(WiringKind wiring) {
        return switch (wiring) {
            case AS_DESCRIBED -> 0;
            case FROM_OTHER_END -> 0.9;
            case OTHER_WAY -> 1.5;
            case OTHER_START -> 2.5;
            case STRETCH_OTHER_START, STRETCH_OTHER_WAY -> 3.5;
            case OTHER_WAY_AND_START -> 4;
        };
    }

    /** Whether there is one such wiring for every pixel, as many as the values that a turn may have. */
    private static boolean isFree(WiringKind wiring) {
        return switch (wiring) {
            case AS_DESCRIBED, FROM_OTHER_END, OTHER_WAY -> false;
            case OTHER_START, OTHER_WAY_AND_START, STRETCH_OTHER_START, STRETCH_OTHER_WAY -> true;
        };
    }

    /** Whether the one says all that the other one says, and perhaps more. */
    private static boolean includes(WiringKind wiring, WiringKind other) {
        boolean isPartOfBoth =
                other == WiringKind.FROM_OTHER_END || other == WiringKind.OTHER_WAY || other == WiringKind.OTHER_START;
        return wiring == other
                || other == WiringKind.AS_DESCRIBED
                || wiring == WiringKind.OTHER_WAY_AND_START && isPartOfBoth;
    }
}
