package org.duskloom.engine.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.duskloom.engine.preview.PreviewScene;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilmSizeTest {
    private static final FilmSize BOUND = new FilmSize(1280, 720);

    @Test
    void readsWidthAndHeight() throws TextFormatException {
        assertThat(FilmSize.parse("640x360")).isEqualTo(new FilmSize(640, 360));
        assertThat(FilmSize.parse("640x360")).hasToString("640x360");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0x0",
                "0x10",
                "1x10",
                "640",
                "640 x 360",
                "-4x4",
                "8193x10",
                "4000x4000",
                "99999999999x2",
                "x",
                ""
            })
    void refusesOthers(String text) {
        assertThatThrownBy(() -> FilmSize.parse(text))
                .isInstanceOf(TextFormatException.class)
                .satisfies(fault ->
                        assertThat(((TextFormatException) fault).hint()).contains("such as 1280x720"));
    }

    @Test
    void fillsABoundWithEvenSides() {
        assertThat(fitting(400, 0)).isEqualTo(new FilmSize(1280, 320));
        assertThat(fitting(0, 400)).isEqualTo(new FilmSize(360, 720));
        assertThat(fitting(100, 100)).isEqualTo(new FilmSize(720, 720));
        assertThat(fitting(317, 200).isEven()).isTrue();
        assertThat(fitting(0, 0)).isEqualTo(new FilmSize(720, 720));
    }

    private static FilmSize fitting(double width, double height) {
        PreviewScene scene = new PreviewScene(
                "", new double[] {0, width}, new double[] {0, height}, List.of(), frame -> frame / 40.0);
        return FilmSize.fitting(scene, BOUND);
    }
}
