package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Stream;
import org.duskloom.engine.document.RecordParts;
import org.duskloom.engine.document.TextNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a timeline holds is whole, and stays as it was read: painters on several threads share it. */
class RecordsTest {
    static Stream<Record> records() {
        Timeline timeline = Timelines.sound("""
                {"duskloom": "timeline/1", "map": "m.csv", "length": "9s", "sound": {"file": "a.wav"},
                 "palettes": {"dusk": ["red"]}, "markers": {"drop": "1s"}, "looks": {"glow": {"effect": "e"}},
                 "scenes": {"verse": {"length": "4s", "layers": [{"cues": [{"on": "x", "effect": "e"}]}]}},
                 "layers": [{"cues": [
                  {"on": "x", "effect": "e", "spread": "each", "stagger": "1s", "with": {"size": 1}},
                  {"scene": "verse", "on": {"x": "y"}}]}]}""");
        Layer layer = timeline.layers().get(0);
        Cue cue = layer.cues().get(0);
        SceneCue scene = (SceneCue) layer.items().get(1);
        return Stream.of(
                timeline,
                timeline.pixels(),
                timeline.sound().orElseThrow(),
                timeline.palettes().get("dusk"),
                timeline.scenes().find("verse").orElseThrow(),
                layer,
                cue,
                cue.layout(),
                cue.layout().stagger().orElseThrow(),
                cue.fade(),
                scene,
                scene.on().get(0),
                new UnsoundCue(cue, true, true),
                new UntakenSettings(new TextNode(cue.location(), "e"), cue.with()));
    }

    @ParameterizedTest
    @MethodSource("records")
    void refuseWhatIsMissing(Record record) throws ReflectiveOperationException {
        assertThat(RecordParts.made(record, RecordParts.of(record))).isEqualTo(record);
        RecordParts.assertNeedsAll(record);
    }

    @ParameterizedTest
    @MethodSource("records")
    void cannotBeChanged(Record record) throws ReflectiveOperationException {
        for (Object value : RecordParts.of(record)) {
            if (value instanceof Collection<?> list) {
                assertThatThrownBy(list::clear).isInstanceOf(UnsupportedOperationException.class);
            }
            if (value instanceof Map<?, ?> map) {
                assertThatThrownBy(map::clear).isInstanceOf(UnsupportedOperationException.class);
            }
        }
    }
}
