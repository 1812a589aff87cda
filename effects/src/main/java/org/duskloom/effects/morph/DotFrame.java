package org.duskloom.effects.morph;

import java.util.List;

/** The dots of a member in one frame: where they are, and which light they give. Scratch, for one thread. */
final class DotFrame {
    /** Where each dot is. */
    final Spots spots;
    /** Red, green, blue and alpha of each dot, premultiplied, from {@link #firstColor} on. */
    float[] colors;

    int firstColor;
    /** Room for the colours of the dots, where they do not stand side by side already. */
    final float[] ownColors;

    final Found found = new Found();

    /** For the dots of any of these members, one at a time. */
    DotFrame(List<Dots> members) {
        this(
                members.stream().mapToInt(Dots::count).max().orElse(0),
                members.stream().allMatch(dots -> dots.starts().isFlat()));
    }

    /** For up to so many dots. */
    DotFrame(int dots, boolean flat) {
        spots = Spots.room(dots, flat);
        ownColors = new float[Light.CHANNELS * dots];
        colors = ownColors;
    }
}
