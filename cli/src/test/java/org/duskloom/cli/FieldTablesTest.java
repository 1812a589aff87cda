package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.junit.jupiter.api.Test;

/**
 * The tables of fields in the documentation are those of the declarations. A table stands between {@code <!-- fields:
 * NAME -->} or {@code <!-- fields in brief: NAME -->} and {@code <!-- end of fields -->}, on any page; {@value
 * #RENEWAL} writes them anew.
 */
class FieldTablesTest {
    private static final String RENEWAL = "mvn -q -pl cli -am test -Dtest=FieldTablesTest -Dfields.renew=true";
    private static final boolean RENEW = Boolean.getBoolean("fields.renew");
    private static final String ALL = "demos/reference/fields.md";
    private static final Pattern TABLE = Pattern.compile(
            "(<!-- fields(?<brief> in brief)?: (?<name>[a-z ]+) -->\n)(?<table>.*?)(<!-- end of fields -->)",
            Pattern.DOTALL);

    @Test
    void thePageOfAllFieldsIsThatOfTheDeclarations() throws IOException {
        Path page = Project.file(ALL);
        if (RENEW) {
            Files.writeString(page, FieldTables.page());
        }
        assertThat(page).as(RENEWAL).exists();
        assertThat(Files.readString(page)).as(RENEWAL).isEqualTo(FieldTables.page());
    }

    @Test
    void theTablesOfTheGuidesAreThoseOfTheDeclarations() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path page : pages()) {
            String text = Files.readString(page);
            if (RENEW) {
                Files.writeString(
                        page,
                        TABLE.matcher(text)
                                .replaceAll(table -> Matcher.quoteReplacement(
                                        table.group(1) + tableOf(page, table) + table.group(5))));
                text = Files.readString(page);
            }
            TABLE.matcher(text).results().forEach(table -> {
                found.add(table.group(3));
                assertThat(table.group(4))
                        .as("%s, fields of a %s: %s", page.getFileName(), table.group(3), RENEWAL)
                        .isEqualTo(tableOf(page, table));
            });
            assertThat(text.split("<!-- fields", -1))
                    .as("every table of %s is closed", page)
                    .hasSize(text.split("<!-- end of fields -->", -1).length);
        }
        assertThat(found).contains("timeline", "layer", "cue", "build step", "prop", "group");
    }

    /**
     * A row can be understood: each declared thing says what it means, and what holds without it unless that is plain.
     */
    @Test
    void everyFieldSaysWhatItMeans() {
        for (DeclaredObject object : FieldTables.objects()) {
            for (DeclaredField<?> field : object.fields()) {
                assertThat(field.meaning())
                        .as("%s of a %s", field, object.name())
                        .isNotBlank()
                        .doesNotContain("|", "\n");
                assertThat(field.kind().phrase()).isNotBlank().doesNotContain("|", "\n");
            }
        }
        assertThat(FieldTables.objects().stream().map(DeclaredObject::name)).doesNotHaveDuplicates();
    }

    private static String tableOf(Path page, MatchResult table) {
        Path all = Project.file(ALL);
        FieldTables tables =
                new FieldTables(page.getParent().relativize(all).toString().replace('\\', '/'));
        DeclaredObject object = FieldTables.object(table.group(3));
        return table.group(2) == null ? tables.full(object) : tables.brief(object);
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> demos = Files.walk(Project.file("demos"))) {
            return Stream.concat(Stream.of(Project.file("README.md"), Project.file("DEVELOPERS.md")), demos)
                    .filter(file -> file.toString().endsWith(".md") && !file.endsWith("fields.md"))
                    .sorted()
                    .toList();
        }
    }
}
