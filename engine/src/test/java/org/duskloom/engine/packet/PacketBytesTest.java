package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Packets byte for byte against ANSI E1.31-2018, Tables 4-1, 4-2 and 4-3 and clauses 4 to 9: fields laid out by hand
 * from the tables; a packet analyser read them as meant.
 */
class PacketBytesTest {
    static final StreamSource SOURCE =
            new StreamSource(UUID.fromString("00112233-4455-6677-8899-aabbccddeeff"), "renderer", 100, 7962);
    static final StreamSource UNSYNCED = new StreamSource(SOURCE.cid(), "renderer", 100, 0);

    private static final String ROOT_TO_VECTOR =
            "001000004153432d45312e313700000070710000000400112233445566778899aabbccddeeff705b00000002";
    private static final String NAME = "72656e6465726572" + "00".repeat(56);

    @Test
    void dataPacketOfThreeSlots() {
        DataPacket packet = new DataPacket(SOURCE, 7962, 3, 0);
        packet.sequence(154);
        System.arraycopy(HexFormat.of().parseHex("ff8000"), 0, packet.bytes(), packet.firstSlotAt(), 3);
        assertThat(packet.length()).isEqualTo(129);
        assertThat(hex(packet.bytes())).isEqualTo(ROOT_TO_VECTOR + NAME + "641f1a9a001f1a700e02a100000001000400ff8000");
    }

    /** Every byte of a full packet, universe 1, no synchronization, dark. */
    @Test
    void fullDataPacket() {
        DataPacket packet = new DataPacket(UNSYNCED, 1, 512, 0);
        assertThat(packet.length()).isEqualTo(638);
        assertThat(hex(packet.bytes()))
                .isEqualTo(ROOT_TO_VECTOR.replace("7071", "726e").replace("705b", "7258")
                        + NAME
                        + "64000000000001720b02a1000000010201"
                        + "00".repeat(513));
    }

    @ParameterizedTest(name = "{0} slots")
    @CsvSource({"0, 126, 706e, 7058, 700b, 0001", "3, 129, 7071, 705b, 700e, 0004", "510, 636, 726c, 7256, 7209, 01ff"})
    void lengthsOfLayers(int slots, int length, String root, String framing, String properties, String count) {
        DataPacket packet = new DataPacket(SOURCE, 1, slots, 0);
        String bytes = hex(packet.bytes());
        assertThat(packet.length()).isEqualTo(length);
        assertThat(bytes.substring(32, 36)).isEqualTo(root);
        assertThat(bytes.substring(76, 80)).isEqualTo(framing);
        assertThat(bytes.substring(230, 234)).isEqualTo(properties);
        assertThat(bytes.substring(246, 250)).isEqualTo(count);
    }

    /** Octets 108 to 131 of one of the three packets that end a stream: clause 6.2.6. */
    @Test
    void terminatedStream() {
        DataPacket packet = new DataPacket(UNSYNCED, 7962, 6, 0);
        packet.sequence(155);
        packet.terminate();
        assertThat(hex(Arrays.copyOfRange(packet.bytes(), 108, 132)))
                .isEqualTo("6400009b401f1a701102a100000001000700000000000000");
    }

    @Test
    void sequenceGoesRoundAfter255() {
        DataPacket packet = new DataPacket(UNSYNCED, 1, 6, 0);
        packet.sequence(255);
        assertThat(packet.bytes()[111]).isEqualTo((byte) 255);
        packet.sequence(256);
        assertThat(packet.bytes()[111]).isZero();
    }

    @Test
    void synchronizationPacket() {
        SyncPacket packet = new SyncPacket(SOURCE);
        packet.sequence(5);
        assertThat(hex(packet.bytes()))
                .isEqualTo("001000004153432d45312e3137000000" + "7021" + "00000008" + "00112233445566778899aabbccddeeff"
                        + "700b00000001051f1a0000");
        assertThatThrownBy(() -> new SyncPacket(UNSYNCED)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Octets 108 to 125 with three universes, and the lengths of the layers with none, three and 512. */
    @Test
    void discoveryPacket() {
        byte[] packet = DiscoveryPacket.of(SOURCE, List.of(1, 2, 7962)).get(0);
        assertThat(packet).hasSize(126);
        assertThat(hex(packet))
                .startsWith("001000004153432d45312e3137000000706e00000008")
                .contains(NAME);
        assertThat(hex(Arrays.copyOfRange(packet, 108, 126))).isEqualTo("00000000700e00000001000000010002" + "1f1a");
        assertThat(lengths(DiscoveryPacket.of(SOURCE, List.of()).get(0))).isEqualTo("7068 7052 7008");
        assertThat(lengths(packet)).isEqualTo("706e 7058 700e");
        List<Integer> many = IntStream.rangeClosed(1, 512).boxed().toList();
        assertThat(lengths(DiscoveryPacket.of(SOURCE, many).get(0))).isEqualTo("7468 7452 7408");
    }

    @Test
    void discoveryOfMoreUniversesTakesPages() {
        List<Integer> many = IntStream.rangeClosed(1, 1025).boxed().toList();
        List<byte[]> pages = DiscoveryPacket.of(SOURCE, many);
        assertThat(pages).hasSize(3);
        assertThat(pages).allMatch(page -> page[119] == 2);
        assertThat(pages.get(2)).hasSize(122);
        assertThat(pages.get(2)[118]).isEqualTo((byte) 2);
        assertThat(hex(Arrays.copyOfRange(pages.get(2), 120, 122))).isEqualTo("0401");
    }

    /** Clause 9.3.1 and RFC 1112. */
    @ParameterizedTest(name = "universe {0}")
    @CsvSource({
        "1, efff0001, 01005e7f0001",
        "256, efff0100, 01005e7f0100",
        "7962, efff1f1a, 01005e7f1f1a",
        "63999, effff9ff, 01005e7ff9ff",
        "64214, effffad6, 01005e7ffad6"
    })
    void groupsOfUniverses(int universe, String ipv4, String ethernet) {
        assertThat(hex(GroupAddress.ipv4(universe))).isEqualTo(ipv4);
        assertThat(hex(GroupAddress.ethernet(universe))).isEqualTo(ethernet);
    }

    /** RFC 1071, section 3. */
    @Test
    void internetChecksum() {
        byte[] example = HexFormat.of().parseHex("0001f203f4f5f6f7");
        assertThat(Checksum.of(Checksum.sum(example, 0, 8))).isEqualTo(0x220d);
        byte[] header = HexFormat.of().parseHex("450000730000400040110000c0a80001c0a800c7");
        assertThat(Checksum.of(Checksum.sum(header, 0, 20))).isEqualTo(0xb861);
        assertThat(Checksum.sum(HexFormat.of().parseHex("000102"), 0, 3)).isEqualTo(0x0001 + 0x0200);
    }

    @Test
    void nameIsCutBetweenCharacters() {
        String name = "a".repeat(62) + "\u00e9";
        assertThat(new StreamSource(SOURCE.cid(), name, 0, 0).nameBytes()).hasSize(62);
        assertThat(new StreamSource(SOURCE.cid(), "a".repeat(61) + "\u00e9", 0, 0).nameBytes())
                .hasSize(63);
        assertThat(new StreamSource(SOURCE.cid(), "\ud83c\udf3c".repeat(20), 0, 0).nameBytes())
                .hasSize(60);
        DataPacket packet = new DataPacket(new StreamSource(SOURCE.cid(), "b".repeat(90), 0, 0), 1, 6, 0);
        assertThat(packet.bytes()[107]).isZero();
    }

    /** RFC 9562: the version stands in octet 6, the variant in octet 8. */
    @Test
    void cidIsMadeOfTheIdentity() {
        UUID cid = StreamSource.cidOf("garden");
        assertThat(cid).isEqualTo(StreamSource.cidOf("garden")).isNotEqualTo(StreamSource.cidOf("pond"));
        assertThat(cid.version()).isEqualTo(8);
        assertThat(cid.variant()).isEqualTo(2);
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThatThrownBy(() -> new StreamSource(SOURCE.cid(), "", 201, 0)).hasMessageContaining("201");
        assertThatThrownBy(() -> new StreamSource(SOURCE.cid(), "", 100, 64_000))
                .hasMessageContaining("64000");
        assertThatThrownBy(() -> new DataPacket(SOURCE, 0, 6, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DataPacket(SOURCE, 1, 513, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static String lengths(byte[] discovery) {
        String bytes = hex(discovery);
        return bytes.substring(32, 36) + " " + bytes.substring(76, 80) + " " + bytes.substring(224, 228);
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}
