/**
 * Sending packets in real time. Every frame has a deadline on a monotonic clock that follows from its number alone, so
 * nothing adds up to a drift; a frame's packets are spread over a part of its time, because a receiver drowns in a
 * burst. Times are nanoseconds. The last step of the flow: takes frames or captured packets, and hands bytes to the
 * network.
 */
package org.duskloom.engine.live;
