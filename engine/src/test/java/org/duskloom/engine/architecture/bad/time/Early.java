package org.duskloom.engine.architecture.bad.time;

import org.duskloom.engine.architecture.bad.render.Late;

/** Uses a package after its own, if only in an array. */
public record Early(Late[] late) {}
