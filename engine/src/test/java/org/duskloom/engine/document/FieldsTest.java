package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldsTest {
    private static final DeclaredField<Long> COUNT =
            DeclaredField.required("count", new ValueKind.Whole("pixels", 1, 100), "how many");
    private static final DeclaredField<Double> RADIUS =
            DeclaredField.of("radius", new ValueKind.Number("", -2, 2), 0.5, "how far");
    private static final DeclaredField<Boolean> CLOSED =
            DeclaredField.of("closed", new ValueKind.Flag(), false, "whether it closes");
    private static final DeclaredField<String> DIRECTION = DeclaredField.of(
            "direction",
            ValueKind.Choice.of(List.of("clockwise", "counter-clockwise"), Function.identity()),
            "clockwise",
            "which way");
    private static final DeclaredField<TextNode> NAME =
            DeclaredField.optional("name", new ValueKind.Text("name"), "no name", "what it is called");
    private static final DeclaredField<List<TextNode>> ON =
            DeclaredField.optional("on", new ValueKind.Texts("address"), "", "where");
    private static final DeclaredField<ListNode> AT = DeclaredField.optional(
            "at", new ValueKind.Items(new ValueKind.Number("", -1e9, 1e9), 2, 3, ""), "", "a place");
    private static final DeclaredField<ListNode> STEPS = DeclaredField.optional(
            "steps", ValueKind.Items.some(new ValueKind.Text("step"), "put steps in it"), "", "what to do");
    private static final DeclaredField<Fields> INNER = DeclaredField.optional(
            "inner", new ValueKind.Nested(DeclaredObject.of("inner", NAME)), "", "what is inside");
    private static final DeclaredField<List<Field>> NAMED = DeclaredField.optional(
            "named", new ValueKind.Named("part", new ValueKind.Text("text")), "", "things by name");
    private static final DeclaredField<Node> ANY =
            DeclaredField.written("any", ValueKind.Own.of("anything"), "null", "whatever");
    private static final DeclaredObject RING =
            DeclaredObject.of("ring", COUNT, RADIUS, CLOSED, DIRECTION, NAME, ON, AT, STEPS, INNER, NAMED, ANY);

    private final Problems problems = new Problems();

    private Fields fields(String json) {
        return Fields.of(Inputs.json(json), RING, "a ring", problems).orElseThrow();
    }

    private List<String> shown() {
        return Inputs.shown(problems);
    }

    @Test
    void givesEveryTypeOfValue() {
        Fields fields = fields("""
                {"name": "rim", "radius": -1.5, "count": 12, "closed": true, "direction": "counter-clockwise",
                 "at": [0, 2400], "on": ["a", "b"], "steps": ["c"], "inner": {"name": "d"}, "any": null,
                 "named": {"e": 1}}""");
        assertThat(fields.given(NAME).orElseThrow().location()).hasToString("in.json:1:10");
        assertThat(fields.value(RADIUS)).isEqualTo(-1.5);
        assertThat(fields.given(COUNT)).contains(12L);
        assertThat(fields.value(CLOSED)).isTrue();
        assertThat(fields.value(DIRECTION)).isEqualTo("counter-clockwise");
        assertThat(fields.given(AT).orElseThrow().items()).hasSize(2);
        assertThat(fields.numbers(AT, 2, 3, -1e9, 1e9).orElseThrow()).containsExactly(0, 2400);
        assertThat(fields.given(ON).orElseThrow()).extracting(TextNode::value).containsExactly("a", "b");
        assertThat(fields.given(STEPS).orElseThrow().items()).hasSize(1);
        assertThat(fields.given(INNER).orElseThrow().what()).isEqualTo("\"inner\" of a ring");
        assertThat(fields.given(NAMED).orElseThrow()).extracting(Field::name).containsExactly("e");
        assertThat(fields.given(ANY).orElseThrow()).isInstanceOf(NullNode.class);
        assertThat(shown()).isEmpty();
    }

    @Test
    void givesNothingOrTheDefaultForAnAbsentField() {
        Fields fields = fields("{\"count\": 1}");
        assertThat(fields.given(NAME)).isEmpty();
        assertThat(fields.given(RADIUS)).isEmpty();
        assertThat(fields.value(RADIUS)).isEqualTo(0.5);
        assertThat(fields.value(DIRECTION)).isEqualTo("clockwise");
        assertThat(fields.has(CLOSED)).isFalse();
        assertThat(fields.node(ANY)).isEmpty();
        assertThat(fields.numbers(AT, 0, 1, 0, 1)).isEmpty();
        assertThat(shown()).isEmpty();
    }

    @Test
    void givesTheDefaultInPlaceOfAWrongValue() {
        assertThat(fields("{\"count\": 1, \"radius\": 3}").value(RADIUS)).isEqualTo(0.5);
        assertThat(shown())
                .containsExactly("in.json:1:24: error: \"radius\" of a ring is 3; allowed: a number from -2 to 2");
    }

    @Test
    void missesRequiredFields() {
        fields("{\"cuont\": 3, \"radius\": 1}");
        assertThat(shown())
                .containsExactly(
                        "in.json:1:1: error: a ring lacks the field \"count\"; is \"cuont\" meant for it?",
                        "in.json:1:2: error: a ring has no field \"cuont\"; did you mean \"count\"?");
    }

    @Test
    void missesFieldsThatOnlySometimesAreRequired() {
        Fields fields = fields("{\"count\": 3}");
        assertThat(fields.require(COUNT, NAME)).isFalse();
        assertThat(fields.require(COUNT)).isTrue();
        assertThat(shown()).containsExactly("in.json:1:1: error: a ring lacks the field \"name\"");
    }

    @Test
    void refusesFieldsThatAreNotDeclared() {
        Fields fields = fields("{\"count\": 1, \"zzzz\": 2, \"raduis\": 3}");
        assertThat(fields.hasUnknown()).isTrue();
        assertThat(fields("{\"count\": 1}").hasUnknown()).isFalse();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:14: error: a ring has no field \"zzzz\"; allowed: count, radius, closed, direction,"
                                + " name, on, at, steps, inner, named, any",
                        "in.json:1:25: error: a ring has no field \"raduis\"; did you mean \"radius\"?");
    }

    @Test
    void cannotBeAskedForWhatIsNotDeclared() {
        DeclaredField<Boolean> other = DeclaredField.of("closed", new ValueKind.Flag(), true, "another one");
        Fields fields = fields("{\"count\": 1}");
        assertThatThrownBy(() -> fields.value(other)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> fields.value(NAME)).isInstanceOf(IllegalStateException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {}                  ~ 1:1: error: a wire has neither "a" nor "b"; give one of them
            {"a": 1}            ~ ``
            {"b": 1, "d": 1}    ~ ``
            {"b": 1, "a": 2}    ~ 1:15: error: a wire has both "a" and "b"; give one of them
            {"a": 1, "c": 1, "d": 2} ~ 1:23: error: a wire has both "c" and "d"; leave one out
            """)
    void knowsFieldsThatExcludeEachOther(String json, String problem) {
        DeclaredField<?>[] each = List.of("a", "b", "c", "d").stream()
                .map(name -> DeclaredField.optional(name, new ValueKind.Whole("", 0, 9), "", ""))
                .toArray(DeclaredField[]::new);
        DeclaredObject wire = DeclaredObject.of("wire", each)
                .needsOne("give one of them", each[0], each[1])
                .allowsOne("leave one out", each[2], each[3]);
        Fields.of(Inputs.json(json), wire, "a wire", problems);
        assertThat(shown()).isEqualTo(problem.isEmpty() ? List.of() : List.of("in.json:" + problem));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            {}                       ~ 1:1: error: the map lacks the field "duskloom"; add "duskloom": "map/1"
            {"duskloon": "map/1"}    ~ 1:1: error: the map lacks the field "duskloom"; is "duskloon" meant for it?
            {"duskloom": "map/1"}    ~ ``
            {"duskloom": "map/2"}    ~ 1:14: error: "duskloom" of the map is "map/2"; this version reads "duskloom": "map/1"
            {"duskloom": 1}          ~ 1:14: error: "duskloom" of the map must be a text, not the number 1; write "1" in quotes
            """)
    void checksTheFormat(String json, String problem) {
        DeclaredField<String> format = ValueKind.Format.field("map/1");
        Fields.of(Inputs.json(json), DeclaredObject.of("map", format), "the map", problems)
                .ifPresent(fields -> fields.given(format));
        List<String> said =
                shown().stream().filter(line -> !line.contains("has no field")).toList();
        assertThat(said).isEqualTo(problem.isEmpty() ? List.of() : List.of("in.json:" + problem));
    }

    @Test
    void givesThePlaceOfAValueOrOfTheObject() {
        Fields fields = fields(" {\"count\": 1}");
        assertThat(fields.location()).hasToString("in.json:1:2");
        assertThat(fields.location(COUNT)).hasToString("in.json:1:12");
        assertThat(fields.location(RADIUS)).hasToString("in.json:1:2");
        assertThat(fields.label(RADIUS)).isEqualTo("\"radius\" of a ring");
    }

    @Test
    void wantsAnObject() {
        Optional<Fields> fields = Fields.of(Inputs.json("[1]"), RING, "a ring", problems);
        assertThat(fields).isEmpty();
        assertThat(shown()).containsExactly("in.json:1:1: error: a ring must be an object { }, not a list");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            "40"   ~ must be a whole number, not the text "40"   ~ write 40 without quotes
            "1,5"  ~ must be a whole number, not the text "1,5"  ~ write it without decimals and without quotes
            "1.5"  ~ must be a whole number, not the text "1.5"  ~ write it without decimals and without quotes
            "40mm" ~ must be a whole number, not the text "40mm" ~ write the number alone, without quotes; its unit is not written here
            "4 °"  ~ must be a whole number, not the text "4 °"  ~ write the number alone, without quotes; its unit is not written here
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
        assertThat(fields("{\"count\": " + value + "}").given(COUNT)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:11: error: \"count\" of a ring " + message + (hint.isEmpty() ? "" : "; " + hint));
    }

    @Test
    void readsAWholeNumberWithADotOrAnExponent() {
        assertThat(fields("{\"count\": 3.0}").given(COUNT)).contains(3L);
        assertThat(fields("{\"count\": 1e2}").given(COUNT)).contains(100L);
    }

    @Test
    void teachesTheOtherTypes() {
        Fields fields = fields("""
                {"count": 1, "name": 3, "closed": "true", "at": 5, "radius": "fast", "direction": "clokwise",
                 "steps": [], "named": [], "on": 7}""");
        RING.fields().forEach(fields::given);
        assertThat(shown())
                .containsExactly(
                        "in.json:1:22: error: \"name\" of a ring must be a text, not the number 3; write \"3\" in quotes",
                        "in.json:1:35: error: \"closed\" of a ring must be true or false, not the text \"true\";"
                                + " write true without quotes",
                        "in.json:1:49: error: \"at\" of a ring must be a list [ ], not the number 5;"
                                + " put it in brackets: [ ]",
                        "in.json:1:62: error: \"radius\" of a ring must be a number, not the text \"fast\"",
                        "in.json:1:83: error: \"direction\" of a ring is \"clokwise\"; did you mean \"clockwise\"?"
                                + " allowed: clockwise, counter-clockwise",
                        "in.json:2:11: error: \"steps\" of a ring is empty; put steps in it",
                        "in.json:2:24: error: \"named\" of a ring must be an object { }, not a list",
                        "in.json:2:34: error: \"on\" of a ring must be a text or a list of texts, not the number 7;"
                                + " write \"7\" in quotes");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            30%   ~ ; 1 is all: write 0.3 without quotes
            100 % ~ ; 1 is all: write 1 without quotes
            200%  ~ ''
            most  ~ ''
            """)
    void teachesThatAShareIsNoPercentage(String written, String hint) {
        Node node = Inputs.json("\"" + written + "\"");
        assertThat(Expected.number(node, "\"cap\"", 0, 1, problems)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:1: error: \"cap\" must be a number, not the text \"" + written + "\"" + hint);
    }

    /** Where 1 is not all, nobody knows what a percentage is of. */
    @Test
    void doesNotGuessWhatAPercentageIsOf() {
        assertThat(Expected.number(Inputs.json("\"30%\""), "\"turn\"", -360, 360, problems))
                .isEmpty();
        assertThat(shown()).containsExactly("in.json:1:1: error: \"turn\" must be a number, not the text \"30%\"");
    }

    @Test
    void showsHowNumbersInOneTextAreWritten() {
        assertThat(Expected.list(Inputs.json("\"-20.5,3 ; 4\""), "\"at\"", problems))
                .isEmpty();
        assertThat(Expected.list(Inputs.json("\"left\""), "\"at\"", problems)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:1: error: \"at\" must be a list [ ], not the text \"-20.5,3 ; 4\"; write [-20.5, 3, 4],"
                                + " without quotes",
                        "in.json:1:1: error: \"at\" must be a list [ ], not the text \"left\"; put it in brackets: [ ]");
    }

    @Test
    void namesTheFieldsOfASmallObject() {
        DeclaredObject fade = DeclaredObject.of("fade", RADIUS, COUNT);
        assertThat(Fields.of(Inputs.json("\"1s\""), fade, "\"fade\"", problems)).isEmpty();
        assertThat(shown())
                .containsExactly("in.json:1:1: error: \"fade\" must be an object { }, not the text \"1s\";"
                        + " its fields are radius, count");
    }

    @Test
    void countsTheItemsOfAList() {
        assertThat(fields("{\"count\": 1, \"at\": [1]}").given(AT)).isEmpty();
        assertThat(fields("{\"count\": 1, \"at\": [1, 2, 3, 4]}").given(AT)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:20: error: \"at\" of a ring has 1 item; allowed: 2 to 3",
                        "in.json:1:20: error: \"at\" of a ring has 4 items; allowed: 2 to 3");
    }

    @ParameterizedTest
    @CsvSource({"-Infinity, Infinity, a number", "0, Infinity, a number from 0", "-Infinity, 0.5, a number up to 0.5"})
    void namesHalfOpenRanges(double min, double max, String range) {
        assertThat(Expected.range("a number", min, max)).isEqualTo("allowed: " + range);
    }

    @Test
    void teachesListsOfNumbers() {
        Fields fields = fields("{\"count\": 1, \"at\": [1], \"steps\": [1, \"2\", 99]}");
        assertThat(fields.numbers(AT, 2, 3, 0, 9)).isEmpty();
        assertThat(fields.numbers(STEPS, 2, 3, 0, 9)).isEmpty();
        assertThat(shown())
                .containsExactly(
                        "in.json:1:20: error: \"at\" of a ring has 1 item; allowed: 2 to 3 numbers",
                        "in.json:1:38: error: item 2 of \"steps\" of a ring must be a number, not the text \"2\";"
                                + " write 2 without quotes",
                        "in.json:1:43: error: item 3 of \"steps\" of a ring is 99; allowed: a number from 0 to 9");
    }

    @Test
    void keepsTheSoundTextsOfAList() {
        List<TextNode> texts =
                fields("{\"count\": 1, \"on\": [\"fence\", 7]}").given(ON).orElseThrow();
        assertThat(texts).extracting(TextNode::value).containsExactly("fence");
        assertThat(shown())
                .singleElement()
                .asString()
                .contains("1:30", "an item of \"on\" of a ring must be a text, not the number 7");
    }

    @Test
    void saysNothingAgainOfANumberTheReaderRefused() {
        Problems reading = new Problems();
        Node node = JsonReader.read(Inputs.source("in.json", "{\"count\": NaN, \"radius\": NaN}"), reading)
                .orElseThrow();
        Fields fields = Fields.of(node, RING, "a ring", problems).orElseThrow();
        assertThat(fields.given(COUNT)).isEmpty();
        assertThat(fields.given(RADIUS)).isEmpty();
        assertThat(shown()).isEmpty();
        assertThat(reading.errorCount()).isEqualTo(2);
    }
}
