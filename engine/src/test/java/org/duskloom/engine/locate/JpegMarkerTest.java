package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** ITU-T T.81: the markers of table B.1; any may have fill bytes before it (B.1.1.2). */
class JpegMarkerTest {
    @Test
    void readsTheMarkerOfTheNextSegment() throws IOException {
        assertThat(of("ffe10004")).isEqualTo(0xFFE1);
        assertThat(of("ffffffdb0043")).isEqualTo(0xFFDB);
    }

    @Test
    void thereIsNoneWhereTheScanBeginsOrNoMarkerStands() throws IOException {
        assertThat(of("ffda")).isEqualTo(JpegMarker.NONE);
        assertThat(of("ffffda")).isEqualTo(JpegMarker.NONE);
        assertThat(of("00ff")).isEqualTo(JpegMarker.NONE);
    }

    @Test
    void endsWithTheFile() {
        assertThatThrownBy(() -> of("ffff")).isInstanceOf(EOFException.class);
    }

    private static int of(String hex) throws IOException {
        return JpegMarker.ofSegment(
                new DataInputStream(new ByteArrayInputStream(HexFormat.of().parseHex(hex))));
    }
}
