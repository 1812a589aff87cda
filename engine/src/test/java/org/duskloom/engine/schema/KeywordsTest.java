package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class KeywordsTest {
    @Test
    void writesShortSchemasOnOneLine() {
        Keywords inner = new Keywords().with("type", "number").with("minimum", 0);
        Keywords list = new Keywords().with("type", "array").with("items", inner);
        assertThat(json(list)).isEqualTo("""
                {
                  "schema": {"type": "array", "items": {"type": "number", "minimum": 0}}
                }
                """);
    }

    @Test
    void writesLongOnesOverSeveral() {
        Keywords inner = new Keywords().with("description", "x".repeat(120)).with("enum", List.of("a", "b"));
        Keywords both = new Keywords().with("not", inner).with("allOf", List.of(inner));
        assertThat(json(both).lines())
                .contains(
                        "    \"not\": {",
                        "      \"enum\": [\"a\", \"b\"]",
                        "    \"allOf\": [",
                        "        \"enum\": [\"a\", \"b\"]");
    }

    @Test
    void theLastOfTwoEqualKeywordsCounts() {
        Keywords schema = new Keywords().with("type", "number").with(new Keywords().with("type", "string"));
        assertThat(schema.value("type")).isEqualTo("string");
        assertThat(schema.has("enum")).isFalse();
        assertThat(new Keywords().allowsEverything()).isTrue();
    }

    private static String json(Keywords schema) {
        return new org.duskloom.engine.document.JsonText()
                .field("schema", schema.json())
                .end();
    }
}
