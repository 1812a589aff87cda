package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** CIPA DC-008 (Exif), tag 274; the values of TIFF 6.0; results as Pillow 12.3 gives them. */
class OrientationTest {
    /** Two wide and three high: {@code ab/cd/ef}. */
    @ParameterizedTest
    @CsvSource({
        "1, ab/cd/ef",
        "2, ba/dc/fe",
        "3, fe/dc/ba",
        "4, ef/cd/ab",
        "5, ace/bdf",
        "6, eca/fdb",
        "7, fdb/eca",
        "8, bdf/ace"
    })
    void turnsPicturesUpright(int value, String upright) {
        Orientation orientation = Orientation.values()[value - 1];
        PictureSize size = orientation.upright(2, 3);
        char[] letters = new char[6];
        for (int y = 0; y < 3; y++) {
            for (int x = 0; x < 2; x++) {
                letters[orientation.dot(x, y, 2, 3)] = "abcdef".charAt(2 * y + x);
            }
        }
        StringBuilder rows = new StringBuilder();
        for (int row = 0; row < size.height(); row++) {
            rows.append(row == 0 ? "" : "/").append(letters, row * size.width(), size.width());
        }
        assertThat(rows).hasToString(upright);
    }

    /** Read as 6 by Pillow and by ffprobe. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "ffe1002245786966000049492a000800000001001201030001000000060000000000" + "0000",
                "ffe100224578696600004d4d002a000000080001011200030000000100060000000000" + "00"
            })
    void readsBothOrdersOfBytes(String app1) throws IOException {
        assertThat(of("ffd8" + app1)).isEqualTo(Orientation.RIGHT_TOP);
        // Behind another segment, as phones write it.
        assertThat(of("ffd8" + "ffe000104a46494600010100000100010000" + app1)).isEqualTo(Orientation.RIGHT_TOP);
    }

    /** ITU-T T.81, B.1.1.2: any marker may have fill bytes before it. */
    @Test
    void passesOverFillBytes() throws IOException {
        String app1 = "ffe1002245786966000049492a00080000000100120103000100000003000000" + "00000000";
        assertThat(of("ffd8" + "ff" + app1)).isEqualTo(Orientation.BOTTOM_RIGHT);
        assertThat(of("ffd8" + "ffffffe00004" + "0000" + "ffff" + app1)).isEqualTo(Orientation.BOTTOM_RIGHT);
        assertThat(of("ffd8" + "ffffffff")).isEqualTo(Orientation.TOP_LEFT);
    }

    /** No Exif, cut off anywhere, a directory beyond the end, a value that is none: as stored. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "ff",
                "ffd8",
                "ffd8ffe1",
                "ffd8ffe10022457869660000",
                "ffd8ffe1000245",
                "ffd8ffda0008010100003f00",
                "ffd8ffe1001045786966000049492a00ffffffff",
                "ffd8ffe1001045786966000049492a0008000000",
                "ffd8ffe1001045786966000058582a0008000000",
                "ffd8ffe1002245786966000049492a00080000000100120103000100000009000000" + "00000000",
                "ffd8ffe1002245786966000049492a000800000001001201040001000000060000" + "0000000000",
                "89504e470d0a1a0a"
            })
    void takesWhatItCannotReadAsStored(String jpeg) throws IOException {
        assertThat(of(jpeg)).isEqualTo(Orientation.TOP_LEFT);
    }

    /** Every single byte of a header replaced by every value: never a fault. */
    @Test
    void neverFails() throws IOException {
        byte[] header = HexFormat.of()
                .parseHex("ffd8ffe1002245786966000049492a00080000000100120103000100000006000000" + "00000000");
        for (int at = 0; at < header.length; at++) {
            for (int value = 0; value < 256; value++) {
                byte[] changed = header.clone();
                changed[at] = (byte) value;
                assertThat(Orientation.ofJpeg(new ByteArrayInputStream(changed)))
                        .isNotNull();
            }
        }
    }

    private static Orientation of(String hex) throws IOException {
        return Orientation.ofJpeg(new ByteArrayInputStream(HexFormat.of().parseHex(hex)));
    }
}
