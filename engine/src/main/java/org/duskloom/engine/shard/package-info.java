/**
 * A show that was rendered in pieces, by several machines or one after the other: whether its shards belong together
 * and have all of its frames, and the whole made of them. Frames count from 0. Reads and writes files of {@code
 * format}.
 */
package org.duskloom.engine.shard;
