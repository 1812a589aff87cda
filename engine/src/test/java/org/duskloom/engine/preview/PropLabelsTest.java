package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import org.duskloom.engine.font.PixelFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropLabelsTest {
    @ParameterizedTest
    @CsvSource({"900, 420", "480, 220", "240, 110", "64, 30"})
    void namesLieInThePanelAndApart(int width, int height) {
        List<Rectangle> boxes = labels(Garden.whole(), width, height).placed().stream()
                .map(PropLabelsTest::box)
                .toList();
        for (Rectangle box : boxes) {
            assertThat(new Rectangle(width, height).contains(box)).isTrue();
            assertThat(boxes.stream().filter(box::intersects)).hasSize(1);
        }
    }

    @Test
    void aRoomyPanelNamesEveryProp() {
        assertThat(labels(Garden.whole(), 1500, 700).placed())
                .extracting(PropLabels.Label::name)
                .hasSize(18)
                .contains("daisy-1", "daisy-14", "pond", "trellis", "fence left");
    }

    @Test
    void anyMapMayBeNamed() {
        Garden garden = new Garden();
        garden.line("a name that is far too long for so narrow a panel as this", 0, 0, 0, 0, 1);
        garden.line("", 0, 0, 1, 1, 2);
        garden.line("none", 0, 0, 1, 1, 0);
        assertThat(labels(garden, 64, 64).placed()).allMatch(label -> label.width() <= 64);
    }

    private static PropLabels labels(Garden garden, int width, int height) {
        PreviewScene scene = garden.scene("");
        StageView.Box box = StageView.Box.of(scene.x(), scene.y()).withMargin(0.05);
        return new PropLabels(scene, StageView.fit(box, width, height), 2, width, height);
    }

    private static Rectangle box(PropLabels.Label label) {
        return new Rectangle(label.left(), label.top(), label.width(), PixelFont.CAPITAL_ROWS + 2);
    }
}
