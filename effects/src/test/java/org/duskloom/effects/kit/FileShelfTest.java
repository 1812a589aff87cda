package org.duskloom.effects.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FileShelfTest {
    private final FileShelf<String> shelf = new FileShelf<>();
    private final AtomicInteger decoded = new AtomicInteger();

    @Test
    void decodesTheSameBytesOnce() {
        String first = decode(1, 2, 3);

        assertThat(decode(1, 2, 3)).isSameAs(first);
        assertThat(decode(1, 2, 4)).isNotEqualTo(first);
        assertThat(decoded).hasValue(2);
    }

    @Test
    void keepsNoFailure() {
        assertThatThrownBy(() -> shelf.decoded(new byte[] {9}, bytes -> {
                    throw new IOException("damaged");
                }))
                .isInstanceOf(IOException.class);
        assertThat(decode(9)).isEqualTo("9 ");
    }

    /** What is kept is found by what the bytes are, not by the array that holds them. */
    @Test
    void decodesAnewWhatWasChanged() {
        byte[] file = {1, 2};
        String before = shelf.decoded(file, bytes -> "first of " + bytes[0]);
        file[0] = 5;
        assertThat(shelf.<RuntimeException>decoded(file, bytes -> "first of " + bytes[0]))
                .isEqualTo("first of 5");
        file[0] = 1;
        assertThat(shelf.<RuntimeException>decoded(file, bytes -> "never asked"))
                .isSameAs(before);
    }

    @Test
    void knowsAnEmptyFileFromAZero() {
        assertThat(decode()).isEmpty();
        assertThat(decode(0)).isEqualTo("0 ");
        assertThat(decode(0, 0)).isEqualTo("0 0 ");
        assertThat(decode()).isEmpty();
        assertThat(decoded).hasValue(3);
    }

    private String decode(int... bytes) {
        byte[] file = new byte[bytes.length];
        for (int i = 0; i < file.length; i++) {
            file[i] = (byte) bytes[i];
        }
        return shelf.decoded(file, all -> {
            decoded.incrementAndGet();
            StringBuilder text = new StringBuilder();
            for (byte one : all) {
                text.append(one).append(' ');
            }
            return text.toString();
        });
    }
}
