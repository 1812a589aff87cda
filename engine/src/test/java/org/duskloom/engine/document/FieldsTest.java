package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldsTest {
    private final Problems problems = new Problems();

    private Fields fields(String json) {
        return Fields.of(Inputs.json(json), "a ring", problems).orElseThrow();
    }

    private List<String> problemsOf(String json, Consumer<Fields> binding) {
        binding.accept(fields(json));
        return Inputs.shown(problems);
    }

    @Test
    void givesEveryTypeOfValue() {
        Fields fields = fields("""
                {"name": "rim", "radius": -1.5, "count": 12, "closed": true, "direction": "clockwise",
                 "at": [0, 2400], "on": ["a", "b"], "one": "c", "inner": {"x": 1}, "any": null}""");
        assertThat(fields.text("name")).contains("rim");
        assertThat(fields.textNode("name").orElseThrow().location()).hasToString("in.json:1:10");
        assertThat(fields.number("radius", -2, 2)).hasValue(-1.5);
        assertThat(fields.whole("count", 12, 12)).hasValue(12);
        assertThat(fields.flag("closed")).contains(true);
        assertThat(fields.choice("direction", List.of("clockwise", "counter-clockwise")))
                .contains("clockwise");
        assertThat(fields.numbers("at", 2, 3, -1e9, 1e9).orElseThrow()).containsExactly(0, 2400);
        assertThat(fields.texts("on").orElseThrow()).extracting(TextNode::value).containsExactly("a", "b");
        assertThat(fields.texts("one").orElseThrow())
                .extracting(TextNode::value)
                .containsExactly("c");
        assertThat(fields.list("at").orElseThrow().items()).hasSize(2);
        assertThat(fields.fields("inner").orElseThrow().what()).isEqualTo("\"inner\" of a ring");
        assertThat(fields.node("any").orElseThrow()).isInstanceOf(NullNode.class);
        fields.finish();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void givesNothingForAnAbsentField() {
        Fields fields = fields("{}");
        assertThat(fields.text("a")).isEmpty();
        assertThat(fields.number("b", 0, 1)).isEmpty();
        assertThat(fields.whole("c", 0, 1)).isEmpty();
        assertThat(fields.flag("d")).isEmpty();
        assertThat(fields.texts("e")).isEmpty();
        assertThat(fields.numbers("f", 0, 1, 0, 1)).isEmpty();
        assertThat(fields.fields("g")).isEmpty();
        assertThat(fields.has("h")).isFalse();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void requiresFields() {
        boolean[] complete = new boolean[1];
        assertThat(problemsOf(
                        "{\"rradius\": 3, \"count\": 1}", fields -> complete[0] = fields.require("count", "radius")))
                .containsExactly("in.json:1:1: error: a ring lacks the field \"radius\"; is \"rradius\" meant for it?");
        assertThat(complete[0]).isFalse();
    }

    @Test
    void refusesFieldsNobodyAskedFor() {
        assertThat(problemsOf("{\"cuont\": 1, \"zzzz\": 2, \"radius\": 3}", fields -> {
                    fields.whole("count", 1, 9);
                    fields.number("radius", 0, 9);
                    fields.finish();
                }))
                .containsExactly(
                        "in.json:1:2: error: a ring has no field \"cuont\"; did you mean \"count\"?",
                        "in.json:1:14: error: a ring has no field \"zzzz\"; allowed: count, radius");
    }

    @Test
    void givesThePlaceOfAValueOrOfTheObject() {
        Fields fields = fields(" {\"count\": 1}");
        assertThat(fields.location()).hasToString("in.json:1:2");
        assertThat(fields.location("count")).hasToString("in.json:1:12");
        assertThat(fields.location("radius")).hasToString("in.json:1:2");
    }

    @Test
    void wantsAnObject() {
        Optional<Fields> fields = Fields.of(Inputs.json("[1]"), "a ring", problems);
        assertThat(fields).isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:1: error: a ring must be an object { }, not a list");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "40"   ~ must be a whole number, not the text "40"   ~ write 40 without quotes
            "1,5"  ~ must be a whole number, not the text "1,5"  ~ write 1.5 without quotes; the decimal sign is a dot
            "many" ~ must be a whole number, not the text "many" ~ ``
            true   ~ must be a whole number, not true            ~ ``
            null   ~ must be a whole number, not null            ~ leave the field out instead
            [1]    ~ must be a whole number, not a list          ~ ``
            {}     ~ must be a whole number, not an object       ~ ``
            1.5    ~ is 1.5                                      ~ allowed: a whole number from 1 to 100
            0      ~ is 0                                        ~ allowed: a whole number from 1 to 100
            1e3    ~ is 1e3                                      ~ allowed: a whole number from 1 to 100
            """)
    void teachesWholeNumbers(String value, String message, String hint) {
        assertThat(problemsOf("{\"count\": " + value + "}", fields -> fields.whole("count", 1, 100)))
                .containsExactly(
                        "in.json:1:11: error: \"count\" of a ring " + message + (hint.isEmpty() ? "" : "; " + hint));
    }

    @Test
    void readsAWholeNumberWithADotOrAnExponent() {
        assertThat(fields("{\"count\": 3.0}").whole("count", 1, 9)).hasValue(3);
        assertThat(fields("{\"count\": 1e2}").whole("count", 1, 100)).hasValue(100);
    }

    @Test
    void teachesTheOtherTypes() {
        assertThat(problemsOf("""
                        {"text": 3, "flag": "true", "list": 5, "number": "fast", "word": "clokwise", "odd": "z"}""", fields -> {
                    fields.text("text");
                    fields.flag("flag");
                    fields.list("list");
                    fields.number("number", 0, Double.POSITIVE_INFINITY);
                    fields.choice("word", List.of("clockwise", "counter-clockwise"));
                    fields.choice("odd", List.of("x", "y"));
                }))
                .containsExactly(
                        "in.json:1:10: error: \"text\" of a ring must be a text, not the number 3; write \"3\" in quotes",
                        "in.json:1:21: error: \"flag\" of a ring must be true or false, not the text \"true\";"
                                + " write true without quotes",
                        "in.json:1:37: error: \"list\" of a ring must be a list [ ], not the number 5;"
                                + " put it in brackets: [ ]",
                        "in.json:1:50: error: \"number\" of a ring must be a number, not the text \"fast\"",
                        "in.json:1:66: error: \"word\" of a ring is \"clokwise\"; did you mean \"clockwise\"?"
                                + " allowed: clockwise, counter-clockwise",
                        "in.json:1:85: error: \"odd\" of a ring is \"z\"; did you mean \"x\"? allowed: x, y");
    }

    @ParameterizedTest
    @CsvSource({"-Infinity, Infinity, a number", "0, Infinity, a number from 0", "-Infinity, 0.5, a number up to 0.5"})
    void namesHalfOpenRanges(double min, double max, String range) {
        assertThat(Expected.range("a number", min, max)).isEqualTo("allowed: " + range);
    }

    @Test
    void teachesListsOfNumbers() {
        assertThat(problemsOf("{\"at\": [1], \"to\": [1, \"2\", 99]}", fields -> {
                    assertThat(fields.numbers("at", 2, 3, 0, 9)).isEmpty();
                    assertThat(fields.numbers("to", 2, 3, 0, 9)).isEmpty();
                }))
                .containsExactly(
                        "in.json:1:8: error: \"at\" of a ring has 1 items; allowed: 2 to 3 numbers",
                        "in.json:1:23: error: item 2 of \"to\" of a ring must be a number, not the text \"2\";"
                                + " write 2 without quotes",
                        "in.json:1:28: error: item 3 of \"to\" of a ring is 99; allowed: a number from 0 to 9");
    }

    @Test
    void keepsTheSoundTextsOfAList() {
        List<TextNode> texts = fields("{\"on\": [\"fence\", 7]}").texts("on").orElseThrow();
        assertThat(texts).extracting(TextNode::value).containsExactly("fence");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("1:18", "must be a text, not the number 7");
    }

    @Test
    void saysNothingAgainOfANumberTheReaderRefused() {
        Problems reading = new Problems();
        Node node = JsonReader.read(Inputs.source("in.json", "{\"count\": NaN}"), reading)
                .orElseThrow();
        Fields fields = Fields.of(node, "a ring", problems).orElseThrow();
        assertThat(fields.number("count", 0, 1)).isEmpty();
        assertThat(fields.whole("count", 0, 1)).isEmpty();
        assertThat(Inputs.shown(problems)).isEmpty();
        assertThat(reading.errorCount()).isEqualTo(1);
    }
}
