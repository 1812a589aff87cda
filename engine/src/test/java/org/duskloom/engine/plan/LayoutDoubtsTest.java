package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.timeline.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is doubtful about members that are to follow each other. */
class LayoutDoubtsTest {
    private static final PixelMap MAP = Maps.map("""
            prop,pixel,x,y,part
            arch,1,0,0,left
            arch,2,1,0,right
            rose,1,2,0,petals/1
            rose,2,3,0,petals/2
            pond,1,4,0,
            """);

    static Stream<Object[]> doubts() {
        return Cases.of("""
                {"on": ["arch/*"], "effect": "solid", "spread": "each", "stagger": {"by": "part", "time": "1s"}}
                {"on": ["arch", "pond"], "effect": "solid", "spread": "each", "stagger": {"by": "prop", "time": "1s"}}
                {"on": ["arch", "pond"], "effect": "solid", "spread": "each", "stagger": {"by": "part", "time": "1s"}}
                    show.json:3:74: warning: "stagger" is by "part", but no member is another part than the first: all start together; name several parts, such as "arch/left"
                {"on": ["rose", "pond"], "effect": "solid", "spread": "each", "stagger": {"by": "part", "time": "1s"}}
                    show.json:3:74: warning: "stagger" is by "part", but no member is another part than the first: all start together; name several parts, such as "rose/petals/*"
                {"on": ["pond", "rose"], "effect": "solid", "spread": "each", "stagger": {"by": "part", "time": "1s"}}
                    show.json:3:74: warning: "stagger" is by "part", but no member is another part than the first: all start together; name several parts
                {"on": ["arch/*"], "effect": "solid", "spread": "each", "stagger": {"by": "prop", "time": "1s"}}
                    show.json:3:68: warning: "stagger" is by "prop", but all members are of one prop: all start together; by "members" they follow each other
                {"on": ["arch", "pond"], "effect": "solid", "spread": "each", "stagger": {"by": "part", "time": "0s"}}
                """);
    }

    @ParameterizedTest
    @MethodSource("doubts")
    void areToldWithAnExampleOfTheDisplay(String cue, List<String> problems) {
        assertThat(TestShow.of(MAP, "\"layers\": [{\"cues\": [\n" + cue + "\n]}]")
                        .problems())
                .isEqualTo(problems);
    }

    /** A member that would start just when the cue ends never starts. */
    @Test
    void whatStartsAtTheEndIsNotCut() {
        String show = "\"scenes\": {\"s\": {\"length\": \"4s\", \"layers\": [{\"cues\": [{\"on\": \"f\", \"effect\":"
                + " \"solid\"}]}]}}, \"layers\": [{\"cues\": [{\"scene\": \"s\", \"on\": {\"f\": [\"arch\", \"pond\"]},"
                + " \"stagger\": \"%s\"}]}]";
        assertThat(TestShow.of(MAP, show.formatted("3999ms")).problems())
                .singleElement()
                .asString()
                .contains("the last one 3.999s before its end");
        assertThat(TestShow.of(MAP, show.formatted("4s")).problems())
                .noneMatch(line -> line.contains("are cut when the cue ends"));
    }
}
