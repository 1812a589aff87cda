package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.ValueKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The keywords are those of JSON Schema draft-07 (draft-handrews-json-schema-validation-01, section 6). */
class KindSchemaTest {
    private static final ValueKind<?> TEXT = new ValueKind.Text("name");
    private static final ValueKind<?> WORDS = ValueKind.Choice.of(List.of("up", "down"), Function.identity());
    private static final DeclaredObject KEYS =
            DeclaredObject.of("keys", DeclaredField.required("keys", ValueKind.Items.any(TEXT), "some"));
    private static final DeclaredObject FOLLOW =
            DeclaredObject.of("following", DeclaredField.required("follow", TEXT, "what"));

    private final KindSchema kinds = new ObjectSchemas(new EffectSchemas(List.of())).kinds();

    static Stream<Arguments> kinds() {
        return Stream.of(
                Arguments.of(
                        new ValueKind.Number("", 0, 0.5), "{\"type\": \"number\", \"minimum\": 0, \"maximum\": 0.5}"),
                Arguments.of(new ValueKind.Number("", -Double.MAX_VALUE, Double.MAX_VALUE), "{\"type\": \"number\"}"),
                Arguments.of(new ValueKind.Whole("", 1, 8), "{\"type\": \"integer\", \"minimum\": 1, \"maximum\": 8}"),
                Arguments.of(new ValueKind.Flag(), "{\"type\": \"boolean\"}"),
                Arguments.of(WORDS, "{\"type\": \"string\", \"enum\": [\"up\", \"down\"]}"),
                Arguments.of(TEXT, "{\"type\": \"string\"}"),
                Arguments.of(
                        new ValueKind.Texts("name"),
                        "{\"type\": [\"string\", \"array\"], \"items\": {\"type\": \"string\"}}"),
                Arguments.of(new ValueKind.Format("timeline/1"), "{\"type\": \"string\", \"enum\": [\"timeline/1\"]}"),
                Arguments.of(
                        new ValueKind.Items(TEXT, 2, 3, ""),
                        "{\"type\": \"array\", \"items\": {\"type\": \"string\"}, \"minItems\": 2, \"maxItems\": 3}"),
                Arguments.of(ValueKind.Items.any(ValueKind.Own.of("anything")), "{\"type\": \"array\"}"),
                Arguments.of(
                        new ValueKind.Named("part", TEXT),
                        "{\"type\": \"object\", \"additionalProperties\": {\"type\": \"string\"}}"),
                Arguments.of(ValueKind.Own.of("anything"), "{}"),
                Arguments.of(new ValueKind.Nested(KEYS), "{\"$ref\": \"#/definitions/keys\"}"),
                Arguments.of(
                        ValueKind.Own.of("either", new ValueKind.Number("", 0, 1), TEXT),
                        "{\"type\": [\"number\", \"string\"], \"minimum\": 0, \"maximum\": 1}"),
                Arguments.of(
                        ValueKind.Own.of(
                                "either",
                                ValueKind.Own.of("number", new ValueKind.Number("", 0, 1)),
                                new ValueKind.Nested(KEYS)),
                        "{\"type\": [\"number\", \"object\"], \"minimum\": 0, \"maximum\": 1,"
                                + " \"if\": {\"type\": \"object\"}, \"then\": {\"$ref\": \"#/definitions/keys\"}}"),
                Arguments.of(
                        ValueKind.Own.of("either", TEXT, new ValueKind.Nested(KEYS), new ValueKind.Nested(FOLLOW)),
                        "{\"type\": [\"string\", \"object\"], \"if\": {\"type\": \"object\"},"
                                + " \"then\": {\"$ref\": \"#/definitions/keys-or-following\"}}"),
                Arguments.of(
                        ValueKind.Own.of("either", WORDS, new ValueKind.Nested(KEYS)),
                        "{\"anyOf\": [{\"type\": \"string\", \"enum\": [\"up\", \"down\"]}, {\"$ref\": \"#/definitions/keys\"}]}"));
    }

    @ParameterizedTest
    @MethodSource
    void kinds(ValueKind<?> kind, String json) {
        String written = new JsonText().field("x", kinds.of(kind).json()).end();
        assertThat(written.replaceAll("\\s+", "")).isEqualTo(("{\"x\": " + json + "}").replaceAll("\\s+", ""));
    }

    /** One of them may be anything, so all together are. */
    @Test
    void aFormThatIsNotKnownAllowsEverything() {
        assertThat(kinds.of(ValueKind.Own.of("either", TEXT, ValueKind.Own.of("or so")))
                        .allowsEverything())
                .isTrue();
    }

    @Test
    void twoFormsOfOneTypeAreAFaultOfTheDeclaration() {
        ValueKind<?> twice = ValueKind.Own.of("either", TEXT, new ValueKind.Texts("name"));
        assertThatThrownBy(() -> kinds.of(twice))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("string");
    }
}
