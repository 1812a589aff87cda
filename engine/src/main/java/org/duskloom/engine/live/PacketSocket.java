package org.duskloom.engine.live;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;

/** Where packets go. */
public interface PacketSocket extends Closeable {
    /**
     * Sends one packet.
     *
     * @param packet what lies between its position and its limit
     * @param universe the universe it is for, which says where a multicast packet goes
     * @throws IOException if the system does not take it
     */
    void send(ByteBuffer packet, int universe) throws IOException;

    @Override
    default void close() throws IOException {}
}
