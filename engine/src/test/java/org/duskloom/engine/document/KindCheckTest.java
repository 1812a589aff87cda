package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What nobody reads is held against what is declared of it, as deep as that goes. */
class KindCheckTest {
    private static final DeclaredField<Long> COUNT =
            DeclaredField.required("count", new ValueKind.Whole("", 1, 9), "how many");
    private static final DeclaredObject RING = DeclaredObject.of("ring", COUNT);
    private static final ValueKind<?> KIND = new ValueKind.Named(
            "thing",
            ValueKind.Own.of(
                    "number, or list of texts, or object: ring",
                    new ValueKind.Number("", 0, 1),
                    ValueKind.Items.any(new ValueKind.Text("name")),
                    new ValueKind.Nested(RING)));

    private final Problems problems = new Problems();

    @Test
    void leavesAloneWhatIsAllowed() {
        check("{\"a\": 0.5, \"b\": [\"x\", \"y\"], \"c\": {\"count\": 3}, \"d\": []}");
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** What a reader of its own looks at has no form here. */
    @Test
    void leavesAloneWhatItCannotKnow() {
        KindCheck.check(Inputs.json("{\"a\": [null]}"), ValueKind.Own.of("anything"), "\"any\"", problems);
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"a": 2}                        | in.json:1:7: error: "a" of things is 2; allowed: a number from 0 to 1
            {"a": ["x", 5]}                 | in.json:1:13: error: an item of "a" of things must be a text, not the number 5; write "5" in quotes
            {"a": {"count": 10}}            | in.json:1:17: error: "count" of "a" of things is 10; allowed: a whole number from 1 to 9
            {"a": {"count": 1, "size": 1}}  | in.json:1:20: error: "a" of things has no field "size"; allowed: count
            {"a": true}                     | in.json:1:7: error: "a" of things must be a number, not true
            [1]                             | in.json:1:1: error: things must be an object { }, not a list
            """)
    void saysOfTheNearestFormWhatIsWrong(String json, String error) {
        check(json);
        assertThat(Inputs.shown(problems)).containsExactly(error);
    }

    private void check(String json) {
        KindCheck.check(Inputs.json(json), KIND, "things", problems);
    }
}
