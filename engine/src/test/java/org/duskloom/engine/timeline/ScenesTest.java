package org.duskloom.engine.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;

/** Scenes that are read anew for each start, as beats that are not everywhere as long want it. */
class ScenesTest {
    private static final Location PLACE = new Location("show.json", 4, 3);
    private static final ExactTime ONE = ExactTime.ofSeconds(1);
    private static final ExactTime TWO = ExactTime.ofSeconds(2);
    private static final Map<String, Location> NAMES = Map.of("flower", PLACE);

    private final Problems problems = new Problems();
    private final List<String> asked = new ArrayList<>();

    private static Scene scene(String name, ExactTime length, Map<String, Location> names) {
        return new Scene(name, PLACE, length, true, List.of(), names);
    }

    /** As long as the instant at which it starts, and with an error that is there from 2 s on only. */
    private Scene anew(String name, ExactTime start, Problems found) {
        asked.add(name + " at " + start);
        if (start.equals(TWO)) {
            found.error(PLACE, "too long from 2s on");
        }
        return new Scene(name, Location.ofFile("elsewhere"), start, false, List.of(), Map.of());
    }

    private Scenes scenes(boolean even) {
        Map<String, Scene> byName = new LinkedHashMap<>();
        byName.put("verse", scene("verse", ExactTime.ofSeconds(9), NAMES));
        byName.put("bridge", scene("bridge", ONE, Map.of()));
        return new Scenes(byName, even ? Optional.empty() : Optional.of(this::anew));
    }

    @Test
    void areFoundByName() {
        Scenes scenes = scenes(true);
        assertThat(scenes.find("verse").orElseThrow().length()).isEqualTo(ExactTime.ofSeconds(9));
        assertThat(scenes.find("Verse")).isEmpty();
        assertThat(scenes.all()).extracting(Scene::name).containsExactly("verse", "bridge");
    }

    @Test
    void areTheSameEverywhereWhereBeatsAreEven() {
        Scenes scenes = scenes(true);
        Scene verse = scenes.find("verse").orElseThrow();
        assertThat(scenes.startingAt(verse, TWO, problems)).isSameAs(verse);
    }

    /** Its length and its layers are those from there; what is said of it as a whole is as it was written. */
    @Test
    void haveTheTimesOfTheirStart() {
        Scenes scenes = scenes(false);
        Scene there = scenes.startingAt(scenes.find("verse").orElseThrow(), ONE, problems);
        assertThat(there).isEqualTo(scene("verse", ONE, NAMES));
        assertThat(asked).containsExactly("verse at 1s");
    }

    /** A hundred members may play a scene from one start: it is read once, and what is wrong is told once. */
    @Test
    void areReadOnceForEachStart() {
        Scenes scenes = scenes(false);
        Scene verse = scenes.find("verse").orElseThrow();
        Scene first = scenes.startingAt(verse, TWO, problems);
        for (int i = 0; i < 100; i++) {
            assertThat(scenes.startingAt(verse, new ExactTime(4, 2), problems)).isSameAs(first);
        }
        scenes.startingAt(verse, ONE, problems);
        scenes.startingAt(scenes.find("bridge").orElseThrow(), ONE, problems);
        assertThat(asked).containsExactly("verse at 2s", "verse at 1s", "bridge at 1s");
        assertThat(problems.errorCount()).isOne();
        assertThat(Inputs.shown(problems)).containsExactly("show.json:4:3: error: too long from 2s on");
    }

    @Test
    void startSomewhere() {
        Scenes scenes = scenes(false);
        Scene verse = scenes.find("verse").orElseThrow();
        assertThatThrownBy(() -> scenes.startingAt(verse, null, problems)).isInstanceOf(NullPointerException.class);
    }
}
