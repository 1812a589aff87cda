package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Headers as a receiver checks them (RFC 791, RFC 768, RFC 1112), and the checksum by the properties of RFC 1071. */
class UdpHeadersTest {
    private static final int BEFORE = 5;

    /** Sums words one by one with the carry brought round each time: RFC 1071, section 1, read as it stands. */
    private static int onesComplementSum(byte[] bytes, int from, int to) {
        int sum = 0;
        for (int i = from; i < to; i += 2) {
            sum += (bytes[i] & 0xFF) << 8 | (i + 1 < to ? bytes[i + 1] & 0xFF : 0);
            sum = (sum & 0xFFFF) + (sum >>> 16);
        }
        return sum;
    }

    private static byte[] pseudoHeaderAndDatagram(byte[] bytes, int packetBytes) {
        ByteBuffer all = ByteBuffer.allocate(12 + 8 + packetBytes);
        all.put(bytes, BEFORE + 26, 8).put((byte) 0).put((byte) 17).putShort((short) (8 + packetBytes));
        return all.put(bytes, BEFORE + 34, 8 + packetBytes).array();
    }

    private static byte[] sealed(Random random, int universe, int packetBytes) {
        byte[] bytes = new byte[BEFORE + UdpHeaders.LENGTH + packetBytes];
        random.nextBytes(bytes);
        UdpHeaders.put(bytes, BEFORE, universe, packetBytes);
        UdpHeaders.seal(bytes, BEFORE, packetBytes);
        return bytes;
    }

    /** Both sums with their checksums are all ones, for whatever is sent; odd lengths too. */
    @RepeatedTest(50)
    void aReceiverFindsBothChecksumsRight(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        int packetBytes = 126 + random.nextInt(513);
        byte[] bytes = sealed(random, 1 + random.nextInt(63_999), packetBytes);
        assertThat(onesComplementSum(bytes, BEFORE + 14, BEFORE + 34)).isEqualTo(0xFFFF);
        byte[] summed = pseudoHeaderAndDatagram(bytes, packetBytes);
        assertThat(onesComplementSum(summed, 0, summed.length)).isEqualTo(0xFFFF);
        int flipped = 20 + random.nextInt(packetBytes);
        summed[flipped] ^= (byte) (1 << random.nextInt(8));
        assertThat(onesComplementSum(summed, 0, summed.length))
                .as("a bit of byte %d", flipped)
                .isNotEqualTo(0xFFFF);
    }

    /** To the group of the universe and no further than one hop; from addresses that are nobody's (RFC 5737). */
    @RepeatedTest(20)
    void goesToTheGroupAndNoFurther(RepetitionInfo run) throws UnknownHostException {
        Random random = new Random(run.getCurrentRepetition());
        int universe = 1 + random.nextInt(63_999);
        ByteBuffer bytes =
                ByteBuffer.wrap(sealed(random, universe, 638)).position(BEFORE).slice();
        byte[] group = new byte[4];
        bytes.get(30, group);
        assertThat(InetAddress.getByAddress(group).isMulticastAddress()).isTrue();
        assertThat(InetAddress.getByAddress(group).getHostAddress())
                .isEqualTo("239.255." + universe / 256 + "." + universe % 256);
        long ethernet = bytes.getLong(0) >>> 16;
        assertThat(ethernet).isEqualTo(0x01005E000000L | ByteBuffer.wrap(group).getInt() & 0x7FFFFF);
        assertThat(bytes.get(6) & 3).as("locally administered, of one").isEqualTo(2);
        assertThat(bytes.getShort(12)).isEqualTo((short) 0x0800);
        assertThat(bytes.getShort(16)).as("total length").isEqualTo((short) (20 + 8 + 638));
        assertThat(bytes.get(22)).as("time to live").isEqualTo((byte) 1);
        assertThat(bytes.getInt(26) >>> 8).isEqualTo(192 << 16 | 2);
        assertThat(bytes.getShort(36)).as("port").isEqualTo((short) 5568);
        assertThat(bytes.getShort(38)).as("length of UDP").isEqualTo((short) (8 + 638));
    }

    /** What stands before and behind is not touched. */
    @Test
    void writesItsOwnBytesAlone() {
        byte[] bytes = new byte[200];
        Arrays.fill(bytes, (byte) 9);
        UdpHeaders.put(bytes, BEFORE, 7, 126);
        UdpHeaders.seal(bytes, BEFORE, 126);
        assertThat(Arrays.copyOf(bytes, BEFORE)).containsOnly(9);
        assertThat(Arrays.copyOfRange(bytes, BEFORE + UdpHeaders.LENGTH, 200)).containsOnly(9);
    }

    /** RFC 1071, section 2: sums of pieces add up, and the order of the bytes in words swaps those of the sum alone. */
    @RepeatedTest(50)
    void sumsAddUpAndSwap(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        byte[] bytes = new byte[2 * (2 + random.nextInt(700))];
        random.nextBytes(bytes);
        int cut = 2 * (1 + random.nextInt(bytes.length / 2 - 1));
        int checksum = Checksum.of(Checksum.sum(bytes, 0, bytes.length));
        assertThat(checksum).isEqualTo(~onesComplementSum(bytes, 0, bytes.length) & 0xFFFF);
        assertThat(Checksum.of(Checksum.sum(bytes, cut, bytes.length - cut) + Checksum.sum(bytes, 0, cut)))
                .isEqualTo(checksum);
        byte[] swapped = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            swapped[i] = bytes[i ^ 1];
        }
        assertThat(Checksum.of(Checksum.sum(swapped, 0, swapped.length)))
                .isEqualTo((checksum & 0xFF) << 8 | checksum >>> 8);
    }
}
