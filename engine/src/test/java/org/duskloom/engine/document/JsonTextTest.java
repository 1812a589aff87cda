package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** What is written is the text that is expected, and the reader of RFC 8259 takes it back. */
class JsonTextTest {
    private static final DeclaredField<TextNode> NAME =
            DeclaredField.required("name", new ValueKind.Text("text"), "a name");

    @Test
    void laysOutEveryKindOfValue() {
        String json = new JsonText()
                .field("text", "a \"b\" \\ \n\u0001")
                .field("whole", 12L)
                .field("number", 0.5)
                .field("flag", true)
                .field("words", List.of("one", "two"))
                .field("none", List.of())
                .field("line", JsonText.object(NAME, "daisy", "at", JsonText.list(1, 2.5)))
                .field("lines", List.of(JsonText.object("a", 1), JsonText.object("b", List.of(2, 3))))
                .field("inner", new JsonText().field("deep", List.of(new JsonText().field("x", 1), JsonText.object())))
                .end();
        assertThat(json).isEqualTo("""
                {
                  "text": "a \\"b\\" \\\\ \\u000a\\u0001",
                  "whole": 12,
                  "number": 0.5,
                  "flag": true,
                  "words": ["one", "two"],
                  "none": [],
                  "line": {"name": "daisy", "at": [1, 2.5]},
                  "lines": [
                    {"a": 1},
                    {"b": [2, 3]}
                  ],
                  "inner": {
                    "deep": [
                      {
                        "x": 1
                      },
                      {}
                    ]
                  }
                }
                """);
        Problems problems = new Problems();
        assertThat(JsonReader.read(Inputs.source("written.json", json), problems))
                .isPresent();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    @Test
    void escapesWhatUtf8CannotHold() {
        assertThat(JsonText.quoted("\uD800 \uD83C\uDF3C")).isEqualTo("\"\\ud800 \uD83C\uDF3C\"");
        assertThat(JsonText.ascii("\"\u00e4 \uD83C\uDF3C\"")).isEqualTo("\"\\u00e4 \\ud83c\\udf3c\"");
    }
}
