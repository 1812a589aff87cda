package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.Origin.Input;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FramePixels;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.time.FrameRate;
import org.duskloom.engine.time.FrameSpan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

class FrameManifestTest {
    @TempDir
    private Path folder;

    @Test
    void readsWell() {
        FramePixels pixels = new FramePixels(
                78, List.of(new PropSpan("daisy-1", 0, 61), new PropSpan("fence", 61, 17)), Optional.empty());
        RunInfo run = RunInfo.ofWhole("Longest day", new FrameRate(30000, 1001), 2000, pixels)
                .only(FrameList.of(new FrameSpan(60, 1500)));
        Origin origin = new Origin("1.2", List.of(new Input("garden.json", "aa"), new Input("shapes/fence.csv", "bb")));
        FrameManifest manifest = new FrameManifest(run, "00ff", List.of(new WrittenFile("frames.rgb", 336960)), origin);
        assertThat(manifest.json()).isEqualTo("""
                {
                  "duskloom": "frames/1",
                  "version": "1.2",
                  "title": "Longest day",
                  "rate": {"num": 30000, "den": 1001},
                  "frames": 1440,
                  "pixels": 78,
                  "order": "RGB",
                  "encoding": "srgb",
                  "sha256": "00ff",
                  "firstFrame": 60,
                  "showFrames": 2000,
                  "files": [
                    {"file": "frames.rgb", "bytes": 336960}
                  ],
                  "props": [
                    {"name": "daisy-1", "first": 0, "count": 61},
                    {"name": "fence", "first": 61, "count": 17}
                  ],
                  "inputs": [
                    {"file": "garden.json", "sha256": "aa"},
                    {"file": "shapes/fence.csv", "sha256": "bb"}
                  ]
                }
                """);
    }

    @Test
    void emptyListsAreStillLists() {
        assertThat(manifest(List.of()).json())
                .contains("\"files\": [],\n", "\"props\": [],\n")
                .endsWith("\"inputs\": []\n}\n");
    }

    /** RFC 8259, section 7: what must be escaped comes back from an independent reader as it went in. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a \"quoted\" name",
                "back\\slash",
                "tab\t, line feed\n, return\r, NUL \u0000, unit separator \u001f",
                "G\u00e4nsebl\u00fcmchen \uD83C\uDF3C",
                "\u2028 and \u007f",
                "lone \uD83C surrogate"
            })
    void namesComeBack(String name) {
        assertThat(texts(manifest(List.of(new PropSpan(name, 0, 1))).json())).contains(name);
    }

    @Test
    void isWrittenAsUtf8() throws IOException {
        FrameManifest manifest = manifest(List.of(new PropSpan("G\u00e4nsebl\u00fcmchen", 0, 1)));
        Path target = folder.resolve("frames.json");
        manifest.writeTo(StagedFile.open(target, IfExists.REFUSE));
        assertThat(target).hasContent(manifest.json());
    }

    private static FrameManifest manifest(List<PropSpan> props) {
        RunInfo run = RunInfo.ofWhole("", FrameRate.of(40), 1, new FramePixels(1, props, Optional.empty()));
        return new FrameManifest(run, "", List.of(), new Origin("", List.of()));
    }

    private static List<String> texts(String json) {
        List<String> texts = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    texts.add(parser.getString());
                }
            }
        }
        return texts;
    }
}
