package org.duskloom.engine.timeline;

/** What a layer holds: one play of a cue, or all plays of a cue that differ in nothing but their starts. */
public sealed interface LayerItem permits Played, EvenPlays {}
