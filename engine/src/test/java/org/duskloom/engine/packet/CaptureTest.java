package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HexFormat;
import org.duskloom.engine.time.FrameRate;
import org.junit.jupiter.api.Test;

/**
 * Capture files (IETF draft-ietf-opsawg-pcap) with the headers of RFC 791 and RFC 768; checksums that an analyser calls
 * good.
 */
class CaptureTest {
    private static final int IPV4_AT = 16 + 14;

    @Test
    void fileStartsWithTheMagicOfNanoseconds() {
        assertThat(hex(Capture.fileHeader()))
                .isEqualTo("4d3cb2a1" + "02000400" + "0000000000000000" + "ffff0000" + "01000000");
    }

    @Test
    void headersOfThreeSlots() {
        DataPacket packet = new DataPacket(PacketBytesTest.SOURCE, 7962, 3, Capture.HEADER_BYTES);
        packet.sequence(154);
        System.arraycopy(HexFormat.of().parseHex("ff8000"), 0, packet.bytes(), packet.firstSlotAt(), 3);
        Capture.address(packet);
        Capture.seal(packet, FrameRate.of(40), 0);
        assertThat(hex(Arrays.copyOf(packet.bytes(), 58)))
                .isEqualTo("0000000000000000ab000000ab000000"
                        + "01005e7f1f1a0200000000010800"
                        + "4500009d000000000111e82cc000020aefff1f1a"
                        + "15c015c000893db3");
        assertThat(packet.bytes()).hasSize(16 + 171);
    }

    @Test
    void headersOfAFullPacket() {
        DataPacket packet = new DataPacket(PacketBytesTest.UNSYNCED, 1, 512, Capture.HEADER_BYTES);
        Capture.address(packet);
        Capture.seal(packet, FrameRate.of(40), 0);
        assertThat(hex(Arrays.copyOfRange(packet.bytes(), IPV4_AT, 58)))
                .isEqualTo("4500029a0000000001110549c000020aefff000115c015c002868e2d");
    }

    /** A packet is sealed again and again: what was in the field before does not count. */
    @Test
    void sealsWhatIsInThePacketNow() {
        DataPacket packet = new DataPacket(PacketBytesTest.UNSYNCED, 1, 512, Capture.HEADER_BYTES);
        Capture.address(packet);
        packet.bytes()[packet.firstSlotAt()] = 77;
        Capture.seal(packet, FrameRate.of(40), 3);
        packet.bytes()[packet.firstSlotAt()] = 0;
        Capture.seal(packet, FrameRate.of(40), 4);
        assertThat(hex(Arrays.copyOfRange(packet.bytes(), 56, 58))).isEqualTo("8e2d");
    }

    /**
     * RFC 768: a checksum that comes out as 0 is sent as FFFF, for 0 says that there is none. The word that is put into
     * the first two slots is what makes the sum of all words FFFF.
     */
    @Test
    void aChecksumOfZeroIsSentAsAllOnes() {
        DataPacket packet = new DataPacket(PacketBytesTest.UNSYNCED, 1, 6, Capture.HEADER_BYTES);
        Capture.address(packet);
        Capture.seal(packet, FrameRate.of(40), 0);
        System.arraycopy(packet.bytes(), 56, packet.bytes(), packet.firstSlotAt(), 2);
        Capture.seal(packet, FrameRate.of(40), 0);
        assertThat(hex(Arrays.copyOfRange(packet.bytes(), 56, 58))).isEqualTo("ffff");
    }

    /** Seconds are an unsigned number of 32 bits: the last that has room is 2^32 - 1. */
    @Test
    void stampsGoBeyondTheSignedNumbers() {
        assertThat(stamp(FrameRate.of(1), 0x8000_0000L)).isEqualTo("00000080" + "00000000");
        assertThat(stamp(FrameRate.of(1), 0xFFFF_FFFFL)).isEqualTo("ffffffff" + "00000000");
    }

    /** SMPTE's rate of 30000/1001: frame 1000 is at 33.366666666 s, frame 30 at 1.001 s. */
    @Test
    void stampsAreTheExactTimesOfFrames() {
        assertThat(stamp(new FrameRate(30_000, 1001), 1000)).isEqualTo("21000000" + "aae3da15");
        assertThat(stamp(new FrameRate(30_000, 1001), 30)).isEqualTo("01000000" + "40420f00");
        assertThat(stamp(FrameRate.of(40), 1)).isEqualTo("00000000" + "40787d01");
        assertThat(stamp(FrameRate.of(60), 1)).isEqualTo("00000000" + "2a50fe00");
    }

    private static String stamp(FrameRate rate, long frame) {
        DataPacket packet = new DataPacket(PacketBytesTest.UNSYNCED, 1, 6, Capture.HEADER_BYTES);
        Capture.seal(packet, rate, frame);
        return hex(Arrays.copyOf(packet.bytes(), 8));
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}
