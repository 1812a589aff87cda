package org.duskloom.engine.effect;

import org.duskloom.engine.digest.FingerprintWriter;

/**
 * A number that follows a level: {@code from} where that is 0, {@code to} where it is 1.
 *
 * @param curve what it follows
 */
record FollowingNumber(LevelCurve curve, double from, double to) implements NumberTrack {
    @Override
    public boolean isConstant() {
        return false;
    }

    @Override
    public boolean hearsBeats() {
        return curve.hearsBeats();
    }

    @Override
    public double at(double second, double cueStartSecond) {
        return from + (to - from) * curve.at(cueStartSecond + second);
    }

    @Override
    public double first() {
        return from;
    }

    @Override
    public double[] keyRange() {
        return new double[] {Math.min(from, to), Math.max(from, to)};
    }

    @Override
    public void addTo(FingerprintWriter parts) {
        parts.text("follow").value(curve).number(from).number(to);
    }
}
