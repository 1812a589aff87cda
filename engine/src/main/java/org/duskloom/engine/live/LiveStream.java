package org.duskloom.engine.live;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.packet.DataPacket;
import org.duskloom.engine.packet.DiscoveryPacket;
import org.duskloom.engine.packet.GroupAddress;
import org.duskloom.engine.packet.PacketsKind;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.packet.SyncPacket;
import org.duskloom.engine.time.FrameRate;

/**
 * The streams of all universes of one show, sent in real time. Frame k of the stream is due k frames after the first,
 * whatever happened to those between. A frame that comes when the next one is due already is left out: a burst of old
 * frames would help nobody. A frame that lasts longer than a second is repeated, since receivers take a stream for
 * lost after 2.5 s of silence (ANSI E1.31-2018, Appendix A). Closing ends the streams: a dark frame, and then three
 * packets of each universe that say so. Receivers do not look at the light of these three (clause 6.2.6), and many keep
 * showing what they were sent last. So the dark frame is sent three times as well, as any packet may be lost. For one
 * thread.
 */
public final class LiveStream implements Closeable {
    /** A frame's packets leave during this share of its time, in steps of a millisecond or more. */
    private static final double SPREAD = 0.5;

    private static final long STEP_NANOS = 1_000_000;
    private static final long NANOS = 1_000_000_000;
    private static final long LONGEST_END_NANOS = 25_000_000;

    /** As often as the end of a stream is told. */
    private static final int DARK_FRAMES = PacketsKind.PACKETS_AT_END;

    /** What does not change is to be sent every 800 to 1000 ms at least (clause 6.6.2). */
    private static final long LONGEST_SILENCE_NANOS = NANOS;

    /** So long after the first frame was asked for it is due, so that those after it can be made ready meanwhile. */
    private static final long LEAD_NANOS = 200_000_000;

    private final List<DataPacket> packets;
    private final List<ByteBuffer> buffers = new ArrayList<>();
    private final Optional<SyncPacket> sync;
    private final Optional<ByteBuffer> syncBuffer;
    private final int syncUniverse;
    private final PacketSocket socket;
    private final LiveClock clock;
    private final FrameRate rate;
    private final long frameNanos;

    /** How often each frame is sent, so that there is no long silence. */
    private final long sendings;

    private final Pacing pacing = new Pacing();
    private List<byte[]> discovery = List.of();
    private long nextDiscovery = Long.MIN_VALUE;
    private boolean begun;
    private boolean ended;
    private boolean leavesLast;
    private long startNanos;

    /** When the last frame that was sent is over; nothing is waited for after an interruption. */
    private long overNanos = Long.MIN_VALUE;

    private long sequence;
    private long sentPackets;
    private long refusedPackets;
    private String firstRefusal = "";

    /**
     * Streams that have not begun.
     *
     * @param packets a packet for each universe, filled anew for each frame by whoever calls {@link #send}
     * @param source who sends
     * @param socket where they go; left open
     * @param clock what deadlines are kept by
     * @param rate frames per second
     */
    public LiveStream(
            List<DataPacket> packets, StreamSource source, PacketSocket socket, LiveClock clock, FrameRate rate) {
        this.packets = List.copyOf(packets);
        this.packets.forEach(packet -> buffers.add(ByteBuffer.wrap(packet.bytes(), packet.start(), packet.length())));
        this.syncUniverse = source.syncUniverse();
        this.sync = syncUniverse == 0 ? Optional.empty() : Optional.of(new SyncPacket(source));
        this.syncBuffer = sync.map(SyncPacket::bytes).map(ByteBuffer::wrap);
        this.socket = socket;
        this.clock = clock;
        this.rate = rate;
        this.frameNanos = nanosOf(1);
        this.sendings = Math.max(1, (frameNanos + LONGEST_SILENCE_NANOS - 1) / LONGEST_SILENCE_NANOS);
    }

    /** Tells which universes there are, too, every ten seconds: for multicast, clause 8 of ANSI E1.31-2018. */
    public void announce(StreamSource source) {
        discovery = DiscoveryPacket.of(
                source, packets.stream().map(DataPacket::universe).toList());
    }

    /** Leaves the lights, when the streams end, as the last frame has them, instead of dark. */
    public void leaveLast() {
        leavesLast = true;
    }

    /**
     * Whether a frame is still to be sent; counted as skipped if not. The first one that is asked for is due a fifth of
     * a second later.
     *
     * @param index its number in the stream, rising
     */
    public boolean wants(long index) {
        if (!begun) {
            begun = true;
            startNanos = clock.nanos() + LEAD_NANOS - nanosOf(index);
        }
        boolean wanted = clock.nanos() - startNanos - nanosOf(index) < frameNanos;
        if (!wanted) {
            pacing.skip();
        }
        return wanted;
    }

    /**
     * Waits until a frame is due, and sends it; if it lasts long, stays with it and sends it again and again.
     *
     * @param index its number in the stream; it was {@link #wants wanted}, and its light is in the packets
     * @throws InterruptedIOException if the thread is interrupted; the streams are still to be closed
     * @throws IOException if the very first packet cannot be sent; later ones are counted
     */
    public void send(long index) throws IOException {
        long due = startNanos + nanosOf(index);
        overNanos = Long.MIN_VALUE;
        if (!clock.await(due)) {
            throw interrupted();
        }
        long delay = Math.max(0, clock.nanos() - due);
        pacing.add(delay, delay > frameNanos / 4);
        long gap = frameNanos / sendings;
        sendAll(due, (long) (SPREAD * gap), false);
        announceIfDue();
        for (long from = due + gap; from < due + sendings * gap; from += gap) {
            repeat(from, gap);
        }
        overNanos = startNanos + nanosOf(index + 1);
    }

    /** Sends the frame once more, unless it is time for the next repetition already. */
    private void repeat(long from, long gap) throws IOException {
        if (!clock.await(from)) {
            throw interrupted();
        }
        if (clock.nanos() - from < gap) {
            sendAll(from, (long) (SPREAD * gap), false);
            announceIfDue();
        }
    }

    private void announceIfDue() throws IOException {
        if (!discovery.isEmpty() && clock.nanos() - startNanos >= nextDiscovery) {
            nextDiscovery = clock.nanos() - startNanos + DiscoveryPacket.EVERY_SECONDS * NANOS;
            for (byte[] page : discovery) {
                send(ByteBuffer.wrap(page), GroupAddress.DISCOVERY);
            }
        }
    }

    /**
     * Sends all packets, in groups over a stretch of time. Their number is used up also where that is interrupted, as
     * receivers drop a packet with the number of the one before.
     */
    private void sendAll(long from, long spreadNanos, boolean stopped) throws IOException {
        long number = sequence++;
        int groups = (int) Math.max(1, Math.min(packets.size(), spreadNanos / STEP_NANOS));
        int sent = 0;
        for (int group = 0; group < groups; group++) {
            if (group > 0 && !clock.await(from + spreadNanos * group / groups) && !stopped) {
                throw interrupted();
            }
            int end = (int) ((long) packets.size() * (group + 1) / groups);
            for (; sent < end; sent++) {
                packets.get(sent).sequence(number);
                send(buffers.get(sent), packets.get(sent).universe());
            }
        }
        if (sync.isPresent()) {
            sync.get().sequence(number);
            send(syncBuffer.get(), syncUniverse);
        }
    }

    private void send(ByteBuffer packet, int universe) throws IOException {
        int start = packet.position();
        try {
            socket.send(packet, universe);
            sentPackets++;
        } catch (IOException refused) {
            if (sentPackets == 0) {
                throw refused;
            }
            firstRefusal = refusedPackets == 0 ? reason(refused) : firstRefusal;
            refusedPackets++;
        } finally {
            packet.position(start);
        }
    }

    private static String reason(IOException refused) {
        return refused.getMessage() == null ? refused.getClass().getSimpleName() : refused.getMessage();
    }

    private static InterruptedIOException interrupted() {
        return new InterruptedIOException("stopped");
    }

    /** How well deadlines were kept so far. */
    public Pacing pacing() {
        return pacing;
    }

    /** How many packets the system took. */
    long sentPackets() {
        return sentPackets;
    }

    /** How many it did not take, after the first. */
    public long refusedPackets() {
        return refusedPackets;
    }

    /** Why it did not take the first of them, in its words; empty if it took all. */
    public String firstRefusal() {
        return firstRefusal;
    }

    /** The same as {@link #end}. */
    @Override
    public void close() throws IOException {
        end();
    }

    /**
     * Ends the streams, if any has begun: also when the thread has been interrupted, which it stays. Happens once.
     *
     * @throws IOException if the socket fails in a way that is not only the network's
     */
    public void end() throws IOException {
        if (ended || sentPackets == 0) {
            return;
        }
        ended = true;
        boolean interrupted = Thread.interrupted();
        try {
            long gap = Math.min(frameNanos, LONGEST_END_NANOS);
            if (!leavesLast) {
                sendDark(interrupted, gap);
            }
            packets.forEach(DataPacket::terminate);
            sendAtEnd(PacketsKind.PACKETS_AT_END, gap);
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Sends dark frames when the last one is over, at once after an interruption; they last until the end is sent. */
    private void sendDark(boolean atOnce, long gap) throws IOException {
        if (!atOnce && overNanos != Long.MIN_VALUE) {
            clock.await(overNanos);
        }
        packets.forEach(DataPacket::darken);
        sendAtEnd(DARK_FRAMES, gap);
    }

    /** Sends the packets as they are so many times, and waits until the last time is over. */
    private void sendAtEnd(int times, long gap) throws IOException {
        long from = clock.nanos();
        for (int i = 0; i < times; i++) {
            sendAll(from + i * gap, gap / 2, true);
            clock.await(from + (i + 1) * gap);
        }
    }

    /** The time from the first frame of a show to another, rounded down. */
    private long nanosOf(long frames) {
        long elapsed = Math.multiplyExact(frames, (long) rate.denominator());
        long rest = elapsed % rate.numerator();
        return Math.addExact(elapsed / rate.numerator() * NANOS, rest * NANOS / rate.numerator());
    }
}
