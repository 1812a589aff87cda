package org.duskloom.engine.survey;

import java.util.Objects;

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

    private static final double MIRROR_WEIGHT = 1.4;
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
        return move.parameters(dimensions) + turn.parameters() + (resized ? 1 : 0) + (wiring.isFree() ? 1 : 0);
    }

    /** How many things differ. */
    int changes() {
        return (move == Move.STAYS ? 0 : 1)
                + turn.changes()
                + (mirrored ? 1 : 0)
                + (resized ? 1 : 0)
                + wiring.changes();
    }

    /** How far-fetched it is: of two forms of as many changes, the lighter one is the likelier. */
    double weight() {
        return move.weight()
                + turn.weight()
                + (mirrored ? MIRROR_WEIGHT : 0)
                + (resized ? SIZE_WEIGHT : 0)
                + wiring.weight();
    }

    /** Whether a reading of the other form is a special case of one of this form. */
    boolean includes(Form other) {
        return move.compareTo(other.move) >= 0
                && turn.compareTo(other.turn) >= 0
                && (mirrored || !other.mirrored)
                && (resized || !other.resized)
                && wiring.includes(other.wiring);
    }

    /** The same at the place of another prop instead of its own. */
    Form takingAPlace() {
        return new Form(Move.TAKES_A_PLACE, turn, mirrored, resized, wiring);
    }
}
