package org.duskloom.engine.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of universes as a receiver reads them back (ANSI E1.31-2018, clause 8), and who sends them. */
class DiscoveryPacketTest {
    /** Whatever their number: each page is full but for the last, and all together are the list. */
    @ParameterizedTest(name = "{0} universes")
    @ValueSource(ints = {0, 1, 511, 512, 513, 1024, 1025, 63_999})
    void theListIsReadBack(int count) {
        List<Integer> universes = new Random(count)
                .ints(1, 64_000)
                .distinct()
                .limit(count)
                .sorted()
                .boxed()
                .toList();
        List<byte[]> pages = DiscoveryPacket.of(PacketBytesTest.SOURCE, universes);
        assertThat(pages).hasSize(Math.max(1, (count + 511) / 512));
        List<Integer> read = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            ByteBuffer bytes = ByteBuffer.wrap(pages.get(page));
            assertThat(bytes.get(118)).isEqualTo((byte) page);
            assertThat(bytes.get(119)).isEqualTo((byte) (pages.size() - 1));
            for (int layerAt : new int[] {16, 38, 112}) {
                assertThat(bytes.getShort(layerAt) & 0xFFFF).isEqualTo(0x7000 | bytes.limit() - layerAt);
            }
            bytes.position(120);
            assertThat(bytes.remaining()).isEqualTo(2 * Math.min(512, count - 512 * page));
            while (bytes.hasRemaining()) {
                read.add(bytes.getShort() & 0xFFFF);
            }
        }
        assertThat(read).isEqualTo(universes);
    }

    /** The first half of SHA-256 (FIPS 180-4), with the version 8 and the variant of RFC 9562: by another program. */
    @ParameterizedTest
    @CsvSource({"garden, 23eeb69c-681d-8db8-aacc-7ce9e55ea007", "'', e3b0c442-98fc-8c14-9afb-f4c8996fb924"})
    void aCidIsTheStartOfADigest(String identity, String cid) {
        assertThat(StreamSource.cidOf(identity)).isEqualTo(UUID.fromString(cid));
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, priority -1", "201, 0, priority 201", "0, -1, universe -1", "200, 64000, universe 64000"})
    void refusesSourcesThatCannotBe(int priority, int universe, String message) {
        UUID cid = UUID.randomUUID();
        assertThatThrownBy(() -> new StreamSource(cid, "shed", priority, universe))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
        assertThat(new StreamSource(cid, "shed", 200, 63_999).nameBytes()).hasSize(4);
    }

    /** Broken halves of characters are not sent as they are; a receiver reads UTF-8. */
    @Test
    void aNameIsAlwaysReadable() {
        for (int before = 58; before < 64; before++) {
            byte[] name = new StreamSource(UUID.randomUUID(), "s".repeat(before) + "\u00e4\ud83c\udf3c\ud83c", 0, 0)
                    .nameBytes();
            assertThat(name).hasSizeLessThanOrEqualTo(63);
            assertThat(new String(name, StandardCharsets.UTF_8)).doesNotContain("\ufffd");
        }
    }
}
