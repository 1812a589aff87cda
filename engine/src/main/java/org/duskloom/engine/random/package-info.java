/**
 * Randomness without state. Every draw is a hash of what it belongs to: the timeline's seed, the cue, the prop, the
 * pixel within the prop, and a counter such as the number of a window of time. So a draw does not depend on which other
 * props and cues there are, nor on the order in which frames are rendered. Uses no other package of the engine.
 */
package org.duskloom.engine.random;
