package org.duskloom.engine.timeline;

import java.util.List;

/**
 * What one cue of a file became: either its plays, or what is to be checked of it.
 *
 * @param sound the cue, once for every time that it is played, or all plays as one; none if it has errors
 * @param unsound what could be read of a cue that has errors, once for every choice of settings
 */
record CuePlays(List<LayerItem> sound, List<UnsoundCue> unsound) {
    /** A cue of which nothing could be read. */
    static final CuePlays NONE = new CuePlays(List.of(), List.of());

    CuePlays {
        sound = List.copyOf(sound);
        unsound = List.copyOf(unsound);
    }
}
