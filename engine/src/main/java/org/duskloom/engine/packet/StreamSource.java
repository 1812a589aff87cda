package org.duskloom.engine.packet;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Objects;
import java.util.UUID;
import org.duskloom.engine.wire.UniverseRun;

/**
 * Who sends: what is the same in all packets of a stream (ANSI E1.31-2018, clauses 5 and 6).
 *
 * @param cid tells sources apart; the same whenever the same show is sent
 * @param name a name for people; at most {@value #NAME_BYTES} bytes of it in UTF-8 are sent
 * @param priority which source wins where several send to one universe, 0 to {@value #HIGHEST_PRIORITY}
 * @param syncUniverse the universe whose synchronization packets make receivers show what they hold, 1 to {@value
 *     UniverseRun#LAST_UNIVERSE}; 0 for none
 */
public record StreamSource(UUID cid, String name, int priority, int syncUniverse) {
    /** The priority of a source that does not choose one: clause 6.2.3. */
    public static final int USUAL_PRIORITY = 100;

    /** The highest priority: clause 6.2.3. */
    public static final int HIGHEST_PRIORITY = 200;

    /** How many bytes of a name are sent; a 0 follows. */
    static final int NAME_BYTES = 63;

    /**
     * @throws IllegalArgumentException if the priority or the universe is out of range
     */
    public StreamSource {
        Objects.requireNonNull(cid, "cid");
        Objects.requireNonNull(name, "name");
        if (priority < 0 || priority > HIGHEST_PRIORITY) {
            throw new IllegalArgumentException("priority " + priority);
        }
        if (syncUniverse < 0 || syncUniverse > UniverseRun.LAST_UNIVERSE) {
            throw new IllegalArgumentException("universe " + syncUniverse);
        }
    }

    /**
     * A CID for whatever has that identity: the first 128 bits of its SHA-256 as a UUID of version 8 (RFC 9562, section
     * 5.8).
     */
    public static UUID cidOf(String identity) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(identity.getBytes(StandardCharsets.UTF_8));
            ByteBuffer bytes = ByteBuffer.wrap(digest);
            long high = bytes.getLong() & ~0xF000L | 0x8000L;
            long low = bytes.getLong() & ~(3L << 62) | 2L << 62;
            return new UUID(high, low);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }

    /** The name in UTF-8, cut between two characters where it is too long. */
    byte[] nameBytes() {
        int end = 0;
        int bytes = 0;
        while (end < name.length()) {
            int next = name.offsetByCodePoints(end, 1);
            bytes += name.substring(end, next).getBytes(StandardCharsets.UTF_8).length;
            if (bytes > NAME_BYTES) {
                break;
            }
            end = next;
        }
        return name.substring(0, end).getBytes(StandardCharsets.UTF_8);
    }
}
