package org.duskloom.effects.morph;

import java.util.List;

/** The dots of a member in one frame: where they are, and which light they give. Scratch, for one thread. */
final class DotFrame {
    /** Where each dot is. */
    final double[] spots;
    /** Red, green, blue and alpha of each dot, premultiplied. */
    final float[] colors;

    final Found found;

    /** For the dots of any of these members, one at a time. */
    DotFrame(List<Dots> members) {
        this(
                members.stream().mapToInt(Dots::count).max().orElse(0),
                members.stream().mapToInt(dots -> dots.grid().size()).max().orElse(0));
    }

    /** For up to so many dots, on a grid of up to so many pixels. */
    DotFrame(int dots, int pixels) {
        spots = new double[Spots.AXES * dots];
        colors = new float[Light.CHANNELS * dots];
        found = new Found(pixels);
    }
}
