package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SoundEndingsTest {
    @ParameterizedTest
    @ValueSource(strings = {"song.wav", "SONG.WAV", "my.own.song.aiff", "a.au", ".mp3"})
    void theseAreSounds(String name) {
        assertThat(SoundEndings.has(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"song.txt", "wav", "song.wav.txt", "", "song.", "song"})
    void theseAreNone(String name) {
        assertThat(SoundEndings.has(name)).isFalse();
    }
}
