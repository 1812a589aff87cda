package org.duskloom.engine.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of marks hold what offsets are made of: signs, digits, blanks. */
class MarkNameTest {
    private static final Set<String> NAMES = Set.of("dusk", "dusk-2", "dusk-2s", "8-spot", "first frog", "a+b", "-");

    /** The longest name that fits is the one: who has a mark "dusk-2s" means it. */
    @ParameterizedTest
    @CsvSource({
        "@dusk, dusk",
        "@dusk-2, dusk-2",
        "@dusk-2s, dusk-2s",
        "@dusk-2s-2s, dusk-2s",
        "@dusk-3s, dusk",
        "@dusk-2+1b, dusk-2",
        "@first frog-500ms, first frog",
        "@8-spot+8b, 8-spot",
        "@a+b+b, a+b",
        "@--1s, -",
        "' @dusk ', dusk"
    })
    void theLongestNameIsTaken(String text, String name) {
        assertThat(TimeText.markIn(text, NAMES)).contains(name);
    }

    @ParameterizedTest
    @CsvSource({"@dusky", "@dus", "@dusk2s", "dusk", "@Dusk", "@", "@first", "@+1s"})
    void otherTextsNameNone(String text) {
        assertThat(TimeText.markIn(text, NAMES)).isEmpty();
    }

    /** Any name, with any offset behind it: it is found, and the time is that of the mark and the offset. */
    @Test
    void anyNameIsReadBack() throws TextFormatException {
        Random random = new Random(41);
        Map<String, ExactTime> marks = new HashMap<>();
        for (int i = 0; i < 60; i++) {
            StringBuilder name = new StringBuilder();
            for (int length = 1 + random.nextInt(4); length > 0; length--) {
                name.append("ab -+9.s".charAt(random.nextInt(8)));
            }
            // Blanks round a name are none of it; what ends in an offset would be another name with one.
            marks.put(name.toString().strip() + "z", ExactTime.ofMilliseconds(random.nextInt(100_000)));
        }
        TimeContext context = TimeContext.NONE.withMarks(marks);
        for (Map.Entry<String, ExactTime> mark : marks.entrySet()) {
            for (String offset : List.of("", "+1s", "+250ms", "+0:02")) {
                ExactTime later = offset.isEmpty() ? ExactTime.ZERO : TimeText.parse(offset.substring(1), context);
                String text = "@" + mark.getKey() + offset;
                assertThat(TimeText.markIn(text, marks.keySet())).contains(mark.getKey());
                assertThat(TimeText.parse(text, context))
                        .as(text)
                        .isEqualTo(mark.getValue().plus(later));
            }
        }
    }

    /** The offset is not taken for a part of the name that was meant. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            @dsuk-250ms | the time "@dsuk-250ms" names no cue and no marker | did you mean "dusk"?
            @8-spto+8b  | the time "@8-spto+8b" names no cue and no marker  | did you mean "8-spot"?
            """)
    void theNearestNameIsTold(String text, String message, String hint) {
        TimeContext context =
                TimeContext.NONE.withMarks(Map.of("dusk", ExactTime.ZERO, "8-spot", ExactTime.ofSeconds(1)));
        TextFormatException refusal =
                catchThrowableOfType(TextFormatException.class, () -> TimeText.parse(text, context));
        assertThat(refusal).hasMessage(message);
        assertThat(refusal.hint()).isEqualTo(hint);
    }
}
