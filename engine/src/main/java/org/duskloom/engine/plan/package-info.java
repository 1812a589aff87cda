/**
 * From a timeline as written to a plan that needs only arithmetic: {@link org.duskloom.engine.show.ShowReader} reads
 * all files of a show, {@link org.duskloom.engine.plan.PlanCompiler} resolves addresses, settings and canvases and has
 * every effect compile its kernel. Times become frame numbers and clocks in seconds, pixels become cells of tiles of
 * {@link org.duskloom.engine.effect.Patch#CAPACITY} pixels.
 */
package org.duskloom.engine.plan;
