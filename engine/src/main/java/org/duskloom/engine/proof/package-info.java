/**
 * A test show made from a display: steps that prove, on site, that every prop is wired and turned as the display says.
 * {@link org.duskloom.engine.proof.Proof} lists the steps, {@link org.duskloom.engine.proof.ProofFrames} has their
 * frames as sRGB codes in wiring order, and {@link org.duskloom.engine.proof.StepsKind} is the page to hold in hand.
 * So is the run of {@link org.duskloom.engine.find.FindRun}, by which pixels tell a camera their numbers. Times are
 * frames from the start. Stands beside {@code render}: a source of frames that needs no timeline.
 */
package org.duskloom.engine.proof;
