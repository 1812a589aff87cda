package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;

/**
 * Any bytes at all as pictures: there are images of one size, or an exception that says why not. The methods differ in
 * what they begin with.
 */
class ImageFuzzTest {
    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"IHDR", "PLTE", "tRNS", "IDAT", "IEND"})
    void png(byte[] input) {
        decode(input);
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"acTL", "fcTL", "fdAT", "IHDR", "IDAT", "IEND"})
    void animatedPng(byte[] input) {
        decode(input);
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"GIF87a", "GIF89a", "NETSCAPE2.0", "!\\xf9\\x04", "!\\xff", ","})
    void gif(byte[] input) {
        decode(input);
    }

    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"JFIF", "Adobe", "Exif"})
    void jpeg(byte[] input) {
        decode(input);
    }

    /** Of whatever kind the bytes are. */
    private static void decode(byte[] input) {
        try {
            Film film = ImageFile.film(ChecksummedPng.of(input));
            assertThat(film.count()).isPositive();
            for (int i = 0; i < film.count(); i++) {
                assertThat(film.images().get(i)).hasSize(film.width() * film.height());
            }
        } catch (ImageException told) {
            assertThat(told.getMessage()).isNotBlank().doesNotContain("null").doesNotContain("Exception");
        }
    }
}
