package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes are looked at before anything is read: promises of the design, no source. */
class PictureSizesTest {
    private record Sized(int count, IntFunction<PictureSize> sizes) implements Pictures {
        @Override
        public String name(int picture) {
            return "picture-" + picture + ".png";
        }

        @Override
        public PictureSize size(int picture) {
            return sizes.apply(picture);
        }

        @Override
        public void read(int picture, byte[] codes) {
            throw new AssertionError("sizes are looked at first");
        }
    }

    private static String refusal(int count, IntFunction<PictureSize> sizes) {
        PicturesRefusedException refused = catchThrowableOfType(
                PicturesRefusedException.class, () -> PictureSizes.requireAlike(new Sized(count, sizes)));
        assertThat(refused).isNotNull();
        assertThat(refused.hint()).isNotEmpty();
        return refused.picture() + " " + refused.getMessage();
    }

    @Test
    void picturesOfOneSizeAreTaken() throws IOException, PicturesRefusedException {
        PictureSize large = new PictureSize(16_000, 12_000);
        assertThat(PictureSizes.requireAlike(new Sized(24, picture -> large))).isEqualTo(large);
    }

    /** A folder of pictures that have nothing to do with each other. */
    @Test
    void allPhotosHaveOtherSizes() {
        assertThat(refusal(3, picture -> new PictureSize(48 + picture, 36)))
                .isEqualTo("picture-1.png has 49 x 36 dots, and hardly two of the pictures are of one size");
    }

    /** What a damaged header may say. */
    @ParameterizedTest
    @CsvSource({"20000, 20000", "65535, 65535", "2147483647, 2147483647"})
    void photosAreTooLarge(int width, int height) {
        PictureSize size = new PictureSize(width, height);
        assertThat(refusal(24, picture -> size))
                .isEqualTo("picture-0.png has " + size + " dots, more than 250 million");
    }
}
