/**
 * A test show made from a display: steps that prove, on site, that every prop is wired and turned as the display says.
 * {@link org.duskloom.engine.proof.Proof} lists the steps; each knows its caption, what a person should see, and the bytes of
 * its frames, as sRGB codes in wiring order. Knows maps and
 * groups only; whoever asks for the steps hands their frames to the sinks.
 */
package org.duskloom.engine.proof;
