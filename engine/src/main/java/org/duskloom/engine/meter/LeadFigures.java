package org.duskloom.engine.meter;

import org.duskloom.engine.wire.Feed;

/**
 * What flows through one feed.
 *
 * @param feed which
 * @param peakAmps the most
 * @param fullAmps with every colour of every pixel of its port full on, whatever caps them
 */
public record LeadFigures(Feed feed, double peakAmps, double fullAmps) {}
