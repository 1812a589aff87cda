package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether keys of settings count beats; what is written wrong counts none. */
class BeatKeysTest {
    private static List<Field> fields(String settings) {
        return ((ObjectNode) Inputs.json("{" + settings + "}")).fields();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"size\": {\"keys\": [[\"0s\", 0], [\"2b\", 1]]}",
                "\"size\": {\"keys\": [[\"1 bar\", 0]]}",
                "\"arms\": 3, \"color\": {\"mix\": \"oklch\", \"keys\": [[\"0.5b\", \"red\", \"ease\"]]}"
            })
    void findsThem(String settings) {
        assertThat(BeatKeys.in(fields(settings))).isTrue();
    }

    /** A time of a setting that is no key moves nothing; a palette may be called what it wants. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\"size\": 0.5",
                "\"every\": \"2b\"",
                "\"size\": {\"keys\": [[\"0s\", 0], [\"500ms\", 1]]}",
                "\"palette\": {\"keys\": [[\"0s\", \"2b\"]]}",
                "\"palette\": {\"stops\": [[\"2b\", 1]]}",
                "\"size\": {\"follow\": \"beat\", \"from\": 0, \"to\": 1}",
                "\"size\": {\"keys\": \"2b\"}",
                "\"size\": {\"keys\": []}",
                "\"size\": {\"keys\": [[], \"2b\", [2, 1]]}"
            })
    void findsNoneElsewhere(String settings) {
        assertThat(BeatKeys.in(fields(settings))).isFalse();
    }

    @Test
    void looksAtAllSettings() {
        assertThat(BeatKeys.in(fields(
                        "\"size\": {\"keys\": [[\"1s\", 0]]}, \"arms\": {\"keys\": [[\"1s\", 1], [\"1b\", 2]]}")))
                .isTrue();
    }
}
