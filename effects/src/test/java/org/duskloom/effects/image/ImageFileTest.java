package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImageFileTest {
    @TempDir
    Path folder;

    /** First bytes of other formats, as their specifications give them. */
    @ParameterizedTest
    @CsvSource({
        "RIFFxxxxWEBP, is a WebP",
        "BMxxxx, is a BMP",
        "xxxxftypavif, is a HEIC or AVIF",
        "<svg>, is a SVG",
        "'  <?xml', is a SVG",
        "8BPS, is a layered picture (PSD)",
        "ID3, is no picture that is known here"
    })
    void namesWhatItCannotRead(String start, String message) {
        assertThatThrownBy(() -> ImageFile.film(start.getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOfSatisfying(ImageException.class, e -> {
                    assertThat(e).hasMessageStartingWith(message).hasMessageEndingWith(", not a PNG, GIF or JPEG");
                    assertThat(e.hint()).contains("save it as PNG");
                });
    }

    @Test
    void refusesAnEmptyFile() {
        assertThatThrownBy(() -> ImageFile.film(new byte[0])).hasMessage("is empty");
    }

    @Test
    void saysWhyAFileCannotBeRead() {
        assertThatThrownBy(() -> ImageFile.bytes(folder.resolve("none.png")))
                .isInstanceOf(ImageException.class)
                .hasMessageStartingWith("cannot be read");
    }
}
