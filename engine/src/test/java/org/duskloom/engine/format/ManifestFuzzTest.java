package org.duskloom.engine.format;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/** Any bytes at all as manifests. What was read is written, and read again, as the same. */
class ManifestFuzzTest {
    @FuzzTest(maxDuration = "6h", maxExecutions = 1_000_000)
    @DictionaryEntries({"frames", "rate", "pixels", "sha256", "files", "props", "inputs", "9007199254740991", "-1", "0"
    })
    void manifest(byte[] input) {
        Problems problems = new Problems();
        Optional<FrameManifest> read = read(input, problems);
        assertThat(read.isPresent() || problems.hasErrors()).isTrue();
        if (read.isPresent()) {
            String json = read.get().json();
            Problems none = new Problems();
            assertThat(read(json.getBytes(StandardCharsets.UTF_8), none).map(FrameManifest::json))
                    .contains(json);
        }
    }

    private static Optional<FrameManifest> read(byte[] input, Problems problems) {
        return SourceText.of(input, "frames.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .flatMap(root -> ManifestReader.read(root, problems))
                .map(ManifestReader.Located::manifest);
    }
}
