package org.duskloom.engine.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.label.LabelPlace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropLabelsTest {
    private static final double DOT_RADIUS = 2;

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

    /** A name is nearer to a pixel of its own prop than to any of another one, or a line leads from it to its own. */
    @ParameterizedTest
    @CsvSource({"1500, 700", "900, 420", "480, 220", "240, 110", "64, 30"})
    void namesStandByTheirOwnPropsAndCoverNoPixel(int width, int height) {
        PreviewScene scene = Garden.whole().scene("");
        StageView view = view(scene, width, height);
        for (PropLabels.Label label : labels(Garden.whole(), width, height).placed()) {
            Rectangle box = box(label);
            double own = Double.POSITIVE_INFINITY;
            double others = Double.POSITIVE_INFINITY;
            double fromLeader = Double.POSITIVE_INFINITY;
            for (PropSpan prop : scene.props()) {
                boolean isOwn = prop.name().equals(label.name());
                for (int i = prop.firstPixel(); i < prop.firstPixel() + prop.pixelCount(); i++) {
                    double x = view.panelX(scene.x()[i]);
                    double y = view.panelY(scene.y()[i]);
                    double away = Math.hypot(
                            x - Math.max(box.x, Math.min(box.x + box.width, x)),
                            y - Math.max(box.y, Math.min(box.y + box.height, y)));
                    own = isOwn ? Math.min(own, away) : own;
                    others = isOwn ? others : Math.min(others, away);
                    if (isOwn && label.leader().isPresent()) {
                        LabelPlace.Leader line = label.leader().get();
                        fromLeader = Math.min(fromLeader, Math.hypot(x - line.toX(), y - line.toY()));
                    }
                }
            }
            assertThat(Math.min(own, others)).as(label.name()).isGreaterThan(DOT_RADIUS);
            assertThat(own < others || fromLeader < DOT_RADIUS + 1e-6)
                    .as(label.name())
                    .isTrue();
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
        return new PropLabels(scene, view(scene, width, height), DOT_RADIUS, width, height);
    }

    private static StageView view(PreviewScene scene, int width, int height) {
        return StageView.fit(StageView.Box.of(scene.x(), scene.y()).withMargin(0.05), width, height);
    }

    private static Rectangle box(PropLabels.Label label) {
        return new Rectangle(label.left(), label.top(), label.width(), PixelFont.CAPITAL_ROWS + 2);
    }
}
