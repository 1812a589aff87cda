package org.duskloom.engine.sound.music;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class EveningMusicTest {
    /** Whoever changes a note writes the file anew, by the main method of the generator. */
    @Test
    void isTheMusicOfTheDemo() throws IOException {
        assertThat(Files.readAllBytes(Path.of("../demos/evening/evening.wav"))).isEqualTo(EveningMusic.wav());
    }
}
