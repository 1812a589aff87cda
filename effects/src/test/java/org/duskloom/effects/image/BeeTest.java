package org.duskloom.effects.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class BeeTest {
    private static final Path FILE = Path.of("..", "demos", "garden", "bee.png");

    /** The garden show's picture is the one that {@link Bee} draws. Run with {@code -Ddraw} to draw it again. */
    @Test
    void isWhatTheGardenShows() throws Exception {
        if (System.getProperty("draw") != null) {
            Files.write(FILE, Bee.file());
        }
        Film film = ImageFile.film(ImageFile.bytes(FILE));

        assertThat(film.width()).isEqualTo(Bee.WIDTH);
        assertThat(film.height()).isEqualTo(Bee.HEIGHT);
        assertThat(film.seconds()).containsExactly(0.05, 0.05, 0.05, 0.05);
        for (int image = 0; image < film.count(); image++) {
            assertThat(film.images().get(image)).isEqualTo(Bee.image(image));
        }
    }

    /** A demo must not weigh down the project. */
    @Test
    void isSmall() throws IOException {
        assertThat(Files.size(FILE)).isLessThan(10_000);
    }
}
