package org.duskloom.engine.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.duskloom.engine.packet.DataPacket;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Deadlines by a clock that stands still but when it is waited for. */
class LiveStreamTest {
    private static final long MILLISECOND = 1_000_000;

    private final HandClock clock = new HandClock();
    private final List<Sent> sent = new ArrayList<>();

    private record Sent(long nanos, int universe, int sequence, boolean terminated, int length, int firstSlot) {}

    /** A clock that shows what it was waited for, and as much more as it is late. */
    private static final class HandClock implements LiveClock {
        private long now = -5_000_000_000L;
        private long lateNanos;
        private boolean interrupted;
        private long interruptedAt = Long.MAX_VALUE;

        @Override
        public long nanos() {
            return now;
        }

        @Override
        public boolean await(long nanos) {
            now = Math.max(now, nanos + lateNanos);
            return !interrupted && now < interruptedAt;
        }
    }

    /** Its light is 200 in every slot of every frame. */
    private LiveStream stream(int universes, FrameRate rate, int sync) {
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, sync);
        List<DataPacket> packets = IntStream.rangeClosed(1, universes)
                .mapToObj(universe -> new DataPacket(source, universe, 24, 0))
                .toList();
        packets.forEach(packet -> Arrays.fill(packet.bytes(), packet.firstSlotAt(), 150, (byte) 200));
        return new LiveStream(packets, source, this::note, clock, rate);
    }

    private void note(ByteBuffer packet, int universe) {
        byte[] bytes = new byte[packet.remaining()];
        packet.get(bytes);
        int at = bytes.length == 49 ? 44 : 111;
        sent.add(new Sent(
                clock.now,
                universe,
                bytes[at] & 0xFF,
                bytes.length > 112 && bytes[112] == 0x40,
                bytes.length,
                bytes.length > 126 ? bytes[126] & 0xFF : 0));
    }

    private static void play(LiveStream stream, int frames) throws IOException {
        for (int index = 0; index < frames; index++) {
            if (stream.wants(index)) {
                stream.send(index);
            }
        }
    }

    @Test
    void framesLeaveAtTheirExactTimes() throws IOException {
        LiveStream stream = stream(1, new FrameRate(30_000, 1001), 0);
        play(stream, 1001);
        long start = sent.get(0).nanos;
        // SMPTE's rate: frame 30 is at 1.001 s, frame 1000 at 33.366666666 s.
        assertThat(sent.get(1).nanos - start).isEqualTo(33_366_666);
        assertThat(sent.get(30).nanos - start).isEqualTo(1_001_000_000);
        assertThat(sent.get(1000).nanos - start).isEqualTo(33_366_666_666L);
        assertThat(stream.pacing().frames()).isEqualTo(1001);
        assertThat(stream.pacing().worstNanos()).isZero();
    }

    @Test
    void sequenceNumbersGoUpByOneInEachUniverse() throws IOException {
        play(stream(3, FrameRate.of(40), 0), 300);
        for (int i = 0; i < sent.size(); i++) {
            assertThat(sent.get(i).universe).isEqualTo(1 + i % 3);
            assertThat(sent.get(i).sequence).isEqualTo(i / 3 % 256);
        }
    }

    /** 100 universes at 40 frames a second: twelve steps in half of 25 ms, so nine packets at a time at the most. */
    @Test
    void universesAreSpreadOverHalfAFrame() throws IOException {
        play(stream(100, FrameRate.of(40), 0), 1);
        long start = sent.get(0).nanos;
        assertThat(sent).hasSize(100);
        assertThat(sent.stream().map(Sent::nanos).distinct()).hasSize(12);
        assertThat(sent).allMatch(packet -> packet.nanos - start < 12_500_000);
        for (long moment : sent.stream().mapToLong(Sent::nanos).distinct().toArray()) {
            assertThat(sent.stream().filter(packet -> packet.nanos == moment)).hasSizeLessThanOrEqualTo(9);
        }
    }

    @Test
    void aDelayDoesNotAddUp() throws IOException {
        clock.lateNanos = 2 * MILLISECOND;
        LiveStream stream = stream(1, FrameRate.of(40), 0);
        play(stream, 201);
        assertThat(sent.get(200).nanos - sent.get(0).nanos).isEqualTo(5_000_000_000L);
        assertThat(stream.pacing().medianNanos()).isBetween(1_990_000L, 2_010_000L);
        assertThat(stream.pacing().worstNanos()).isEqualTo(2_000_000);
        assertThat(stream.pacing().lateFrames()).isZero();
    }

    /** The median is known to 10 us only; it is never told as more than the worst. */
    @Test
    void theMedianDoesNotExceedTheWorst() throws IOException {
        clock.lateNanos = MILLISECOND + 1;
        LiveStream stream = stream(1, FrameRate.of(40), 0);
        play(stream, 3);
        assertThat(stream.pacing().worstNanos()).isEqualTo(MILLISECOND + 1);
        assertThat(stream.pacing().medianNanos()).isEqualTo(MILLISECOND + 1);
    }

    @Test
    void lateFramesAreCounted() throws IOException {
        LiveStream stream = stream(1, FrameRate.of(40), 0);
        play(stream, 1);
        clock.lateNanos = 7 * MILLISECOND;
        assertThat(stream.wants(1)).isTrue();
        stream.send(1);
        assertThat(stream.pacing().lateFrames()).isEqualTo(1);
    }

    /** After a pause of 100 ms the frames that would all be due at once are left out; the stream goes on in step. */
    @Test
    void framesTooLateAreSkippedInsteadOfSentInABurst() throws IOException {
        LiveStream stream = stream(1, FrameRate.of(40), 0);
        play(stream, 3);
        clock.now += 100 * MILLISECOND;
        for (int index = 3; index < 10; index++) {
            if (stream.wants(index)) {
                stream.send(index);
            }
        }
        assertThat(stream.pacing().skippedFrames()).isEqualTo(3);
        assertThat(stream.pacing().frames()).isEqualTo(7);
        assertThat(sent.get(6).nanos - sent.get(0).nanos).isEqualTo(9 * 25 * MILLISECOND);
        assertThat(sent).extracting(Sent::sequence).containsExactly(0, 1, 2, 3, 4, 5, 6);
    }

    /**
     * ANSI E1.31-2018: after 2.5 s without a packet receivers take a stream for lost (Appendix A), so what does not
     * change is sent every 800 to 1000 ms (clause 6.6.2).
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "1, 2, 2", "2, 3, 2", "1, 7, 7", "3, 10, 4"})
    void aFrameThatLastsLongIsRepeated(int numerator, int denominator, int sendings) throws IOException {
        play(stream(2, new FrameRate(numerator, denominator), 0), 5);
        assertThat(sent).hasSize(2 * 5 * sendings);
        for (int i = 2; i < sent.size(); i++) {
            Sent packet = sent.get(i);
            assertThat(packet.nanos - sent.get(i - 2).nanos).isBetween(500 * MILLISECOND, 1000 * MILLISECOND);
            assertThat(packet.sequence).isEqualTo(i / 2);
            assertThat(packet.universe).isEqualTo(1 + i % 2);
        }
        long fromFirstToFifth = sent.get(2 * 4 * sendings).nanos - sent.get(0).nanos;
        assertThat(fromFirstToFifth).isEqualTo(4_000_000_000L * denominator / numerator);
    }

    /** A machine that slept for a while does not catch up on repetitions. */
    @Test
    void repetitionsAreNotSentInABurst() throws IOException {
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 0);
        PacketSocket sleepy = (packet, universe) -> {
            note(packet, universe);
            clock.now += sent.size() == 2 ? 5_500 * MILLISECOND : 0;
        };
        play(new LiveStream(List.of(new DataPacket(source, 1, 24, 0)), source, sleepy, clock, new FrameRate(1, 10)), 1);
        long start = sent.get(0).nanos;
        assertThat(sent)
                .extracting(packet -> (packet.nanos - start) / MILLISECOND)
                .containsExactly(0L, 1000L, 6500L, 7000L, 8000L, 9000L);
    }

    @Test
    void aLongFrameCanBeInterrupted() throws IOException {
        LiveStream stream = stream(1, new FrameRate(1, 3600), 0);
        assertThat(stream.wants(0)).isTrue();
        clock.interruptedAt = clock.now + 90_000 * MILLISECOND;
        assertThatThrownBy(() -> stream.send(0)).isInstanceOf(InterruptedIOException.class);
        assertThat(sent).hasSizeBetween(89, 91);
    }

    /** Universes are told of every ten seconds however long a frame lasts. */
    @Test
    void universesAreAnnouncedDuringALongFrame() throws IOException {
        LiveStream stream = stream(1, new FrameRate(1, 60), 0);
        stream.announce(new StreamSource(new UUID(1, 2), "garden", 100, 0));
        play(stream, 1);
        assertThat(sent).filteredOn(packet -> packet.universe == 64_214).hasSize(6);
    }

    /**
     * ANSI E1.31-2018, clause 6.2.6: three packets with bit 6 end a stream, and what light they hold is ignored. So
     * dark frames go before them, when the last one has lasted its time, with the next sequence numbers (clause
     * 6.2.5). They are three too, so that one that is lost leaves no light on: common practice, no source.
     */
    @Test
    void closingDarkensAndEndsEveryStreamOnce() throws IOException {
        LiveStream stream = stream(2, FrameRate.of(40), 0);
        play(stream, 4);
        stream.close();
        stream.close();
        assertThat(sent).hasSize(2 * 10);
        assertThat(sent.subList(0, 14)).noneMatch(Sent::terminated);
        assertThat(sent.subList(14, 20)).allMatch(Sent::terminated);
        assertThat(sent.subList(0, 8)).extracting(Sent::firstSlot).containsOnly(200);
        assertThat(sent.subList(8, 20)).extracting(Sent::firstSlot).containsOnly(0);
        for (int i = 8; i < 20; i++) {
            assertThat(sent.get(i).sequence).isEqualTo(i / 2);
            assertThat(sent.get(i).nanos - sent.get(i - 2).nanos).isEqualTo(25 * MILLISECOND);
        }
    }

    @Test
    void theLastLookCanBeLeft() throws IOException {
        LiveStream stream = stream(2, FrameRate.of(40), 0);
        stream.leaveLast();
        play(stream, 4);
        stream.close();
        assertThat(sent).hasSize(2 * 7);
        assertThat(sent.subList(8, 14)).allMatch(Sent::terminated);
        assertThat(sent).extracting(Sent::firstSlot).containsOnly(200);
        assertThat(sent.subList(8, 14)).extracting(Sent::sequence).containsExactly(4, 4, 5, 5, 6, 6);
    }

    /** Its own synchronization packet makes receivers show the dark frame too. */
    @Test
    void theDarkFrameIsSynchronized() throws IOException {
        LiveStream stream = stream(1, FrameRate.of(40), 9);
        play(stream, 1);
        stream.close();
        assertThat(sent).extracting(Sent::universe).startsWith(1, 9, 1, 9, 1, 9, 1, 9, 1, 9);
        assertThat(sent.get(2).terminated).isFalse();
        assertThat(sent.get(3).sequence).isEqualTo(1);
    }

    @Test
    void whatNeverBeganIsNotEnded() throws IOException {
        stream(2, FrameRate.of(40), 0).close();
        assertThat(sent).isEmpty();
    }

    @Test
    void anInterruptionStopsAndTheStreamsStillEnd() throws IOException {
        LiveStream stream = stream(1, FrameRate.of(40), 0);
        play(stream, 2);
        clock.interrupted = true;
        assertThat(stream.wants(2)).isTrue();
        assertThatThrownBy(() -> stream.send(2)).isInstanceOf(InterruptedIOException.class);
        Thread.currentThread().interrupt();
        stream.close();
        assertThat(Thread.interrupted()).isTrue();
        assertThat(sent).hasSize(8);
        assertThat(sent.subList(2, 5)).noneMatch(Sent::terminated);
        assertThat(sent.subList(2, 8)).extracting(Sent::firstSlot).containsOnly(0);
        assertThat(sent.subList(5, 8)).allMatch(Sent::terminated);
    }

    /**
     * ANSI E1.31-2018, clause 6.7.2: a packet whose number is that of the one before is discarded. So the dark frame
     * has a new one also where only half of the universes had theirs.
     */
    @Test
    void anInterruptionWithinAFrameRepeatsNoNumber() throws IOException {
        LiveStream stream = stream(2, FrameRate.of(40), 0);
        play(stream, 2);
        clock.interruptedAt = clock.now + 20 * MILLISECOND;
        assertThat(stream.wants(2)).isTrue();
        assertThatThrownBy(() -> stream.send(2)).isInstanceOf(InterruptedIOException.class);
        stream.close();
        assertThat(sent)
                .filteredOn(packet -> packet.universe == 1)
                .extracting(Sent::sequence)
                .containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(sent)
                .filteredOn(packet -> packet.universe == 2)
                .extracting(Sent::sequence)
                .containsExactly(0, 1, 3, 4, 5, 6, 7, 8);
    }

    /**
     * Clause 6.3: one synchronization packet after the data of a frame, to its own universe, with numbers of its own
     * kind.
     */
    @Test
    void synchronizationFollowsTheData() throws IOException {
        play(stream(2, FrameRate.of(40), 9), 2);
        assertThat(sent).extracting(Sent::universe).containsExactly(1, 2, 9, 1, 2, 9);
        assertThat(sent.get(2).length).isEqualTo(49);
        assertThat(sent.get(5).sequence).isEqualTo(1);
    }

    /** Clause 8: every ten seconds. */
    @Test
    void universesAreAnnouncedEveryTenSeconds() throws IOException {
        LiveStream stream = stream(2, FrameRate.of(40), 0);
        stream.announce(new StreamSource(new UUID(1, 2), "garden", 100, 0));
        play(stream, 25 * 40);
        List<Sent> announced =
                sent.stream().filter(packet -> packet.universe == 64_214).toList();
        assertThat(announced).hasSize(3);
        assertThat(announced.get(2).nanos - announced.get(0).nanos).isEqualTo(20_000_000_000L);
        assertThat(announced.get(0).length).isEqualTo(124);
    }

    @Test
    void aRefusalWithoutWordsIsNamedByItsKind() throws IOException {
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 0);
        int[] calls = {0};
        PacketSocket faulty = (packet, universe) -> {
            if (calls[0]++ > 0) {
                throw new ClosedChannelException();
            }
        };
        LiveStream stream =
                new LiveStream(List.of(new DataPacket(source, 1, 24, 0)), source, faulty, clock, FrameRate.of(40));
        assertThat(stream.firstRefusal()).isEmpty();
        play(stream, 2);
        assertThat(stream.firstRefusal()).isEqualTo("ClosedChannelException");
    }

    @Test
    void aNetworkThatIsAwayForAWhileIsCounted() throws IOException {
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 0);
        int[] calls = {0};
        PacketSocket faulty = (packet, universe) -> {
            if (calls[0]++ > 1) {
                throw new IOException(calls[0] == 3 ? "Network is unreachable" : "a later reason");
            }
        };
        LiveStream stream =
                new LiveStream(List.of(new DataPacket(source, 1, 24, 0)), source, faulty, clock, FrameRate.of(40));
        play(stream, 5);
        assertThat(stream.sentPackets()).isEqualTo(2);
        assertThat(stream.refusedPackets()).isEqualTo(3);
        assertThat(stream.firstRefusal()).isEqualTo("Network is unreachable");
    }

    @Test
    void aNetworkThatIsNotThereStopsAtOnce() {
        StreamSource source = new StreamSource(new UUID(1, 2), "garden", 100, 0);
        PacketSocket faulty = (packet, universe) -> {
            throw new IOException("Network is unreachable");
        };
        LiveStream stream =
                new LiveStream(List.of(new DataPacket(source, 1, 24, 0)), source, faulty, clock, FrameRate.of(40));
        assertThatThrownBy(() -> play(stream, 5)).hasMessage("Network is unreachable");
    }
}
