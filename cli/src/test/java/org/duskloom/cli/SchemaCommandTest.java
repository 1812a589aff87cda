package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.duskloom.engine.schema.DocumentSchema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SchemaCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void writesTheSameToAFileAndToStandardOutput(DocumentSchema kind) throws IOException {
        Path file = folder.resolve("x.schema.json");
        Ran written = Ran.with("schema", kind.word(), "-o", file);
        assertThat(written).isEqualTo(new Ran(0, "", file + ": the schema of a " + kind.word() + "\n"));
        Ran printed = Ran.with("schema", kind.word());
        assertThat(printed.err()).isEmpty();
        assertThat(printed.out()).isEqualTo(Files.readString(file));
        assertThat(Ran.with("schema", kind.word(), "-o", "-").out()).isEqualTo(printed.out());
        assertThat(printed.out())
                .startsWith("{\n  \"$schema\": \"http://json-schema.org/draft-07/schema#\",\n  \"title\": ");
    }

    @Test
    void replacesAFileOnlyIfAsked() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.json"), "mine");
        Ran ran = Ran.with("schema", "display", "-o", mine);
        assertThat(ran).isEqualTo(new Ran(1, "", "duskloom: " + mine + " exists already; use --force to replace it\n"));
        assertThat(mine).hasContent("mine");
        assertThat(Ran.with("schema", "display", "-o", mine, "--force").code()).isZero();
        assertThat(Files.readString(mine)).contains("\"props\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            schema timelin | there is no schema of "timelin"; did you mean "timeline"?
            schema frames  | there is no schema of "frames"; allowed: timeline, display, manifest
            schema         | missing required parameter: 'KIND'
            schema a b     | 'b' is one too many
            """)
    void explainsWhatThereIsNot(String line, String message) {
        Ran ran = Ran.with((Object[]) line.split(" "));
        assertThat(ran)
                .isEqualTo(new Ran(
                        2, "", "duskloom schema: " + message + "\n'duskloom schema --help' shows what it takes.\n"));
    }
}
