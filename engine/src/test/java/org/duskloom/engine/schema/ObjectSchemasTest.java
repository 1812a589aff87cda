package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.document.ValueKind;
import org.junit.jupiter.api.Test;

/** Objects as JSON Schema draft-07 says them: draft-handrews-json-schema-validation-01, sections 6.5 to 6.7 and 10. */
class ObjectSchemasTest {
    private static final DeclaredField<TextNode> NAME =
            DeclaredField.required("name", new ValueKind.Text("name"), "what it is called");
    private static final DeclaredField<Double> SIZE =
            DeclaredField.of("size", new ValueKind.Number("cm", 0, 9), 2.0, "how large it is, such as `3`");
    private static final DeclaredField<TextNode> FILE =
            DeclaredField.optional("file", new ValueKind.Text("file"), "none", "where it comes from");
    private static final DeclaredField<TextNode> MAP =
            DeclaredField.optional("map", new ValueKind.Text("file"), "", "where else it comes from");

    @Test
    void saysWhatAFieldHoldsAndMeans() {
        assertThat(file(DeclaredObject.of("leaf", NAME, SIZE)))
                .contains("\"title\": \"leaf\"", "\"description\": \"A leaf.\"", "\"required\": [\"name\"]")
                .contains("\"additionalProperties\": false")
                .contains("how large it is, such as 3\\u000anumber of cm, 0 to 9\\u000aunless written: 2\"")
                .contains("\"default\": 2", "\"minimum\": 0", "\"maximum\": 9");
    }

    @Test
    void oneOfFieldsMustBeThere() {
        assertThat(file(DeclaredObject.of("leaf", FILE, MAP).needsOne("name one", FILE, MAP)))
                .containsIgnoringWhitespaces("\"oneOf\": [{\"required\": [\"file\"]}, {\"required\": [\"map\"]}]");
    }

    /** With the words that an editor shows. */
    @Test
    void oneOfFieldsMayBeThere() {
        assertThat(file(DeclaredObject.of("leaf", FILE, MAP).allowsOne("leave one out", FILE, MAP)))
                .containsIgnoringWhitespaces("\"allOf\": [{\"not\": {\"required\": [\"file\", \"map\"]},"
                        + " \"errorMessage\": \"both \\\"file\\\" and \\\"map\\\": leave one out\"}]");
    }

    /** Beside a reference all other keywords are passed over (draft-handrews-json-schema-01, section 8.3). */
    @Test
    void nestedObjectsStandAmongTheDefinitionsOnce() {
        DeclaredObject leaf = DeclaredObject.of("green leaf", NAME);
        DeclaredObject stem = DeclaredObject.of(
                "stem",
                DeclaredField.optional("first", new ValueKind.Nested(leaf), "", "the first leaf"),
                DeclaredField.optional("rest", ValueKind.Items.any(new ValueKind.Nested(leaf)), "", "the others"));
        String json = file(stem);
        assertThat(json).containsOnlyOnce("\"green-leaf\": {").contains("\"$ref\": \"#/definitions/green-leaf\"");
        assertThat(json)
                .containsIgnoringWhitespaces("\"items\": {\"$ref\": \"#/definitions/green-leaf\"}")
                .containsIgnoringWhitespaces("\"allOf\": [{\"$ref\": \"#/definitions/green-leaf\"}]");
    }

    private static String file(DeclaredObject object) {
        return new ObjectSchemas(new EffectSchemas(List.of())).file(object, "A leaf.");
    }
}
