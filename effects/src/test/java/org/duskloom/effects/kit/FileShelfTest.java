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
