package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

/** The page that says what a report for programs holds speaks of every field that there is and of no other. */
class ReportReferenceTest {
    private static final Pattern FIELD = Pattern.compile("`([a-zA-Z0-9.\\[\\]]+)`");

    /** A field that only a report from a distance has, and those of a cap where one is needed. */
    private static final Set<String> NOT_OF_THE_GARDEN =
            Set.of("flash.seenFromMetres", "caps[].ports[].port", "caps[].ports[].cap");

    @Test
    void everyFieldHasItsLine() throws IOException {
        Ran ran = Ran.with("report", Project.file("demos/garden/show.json"), "--json", "-");
        Set<String> fields = new TreeSet<>();
        collect("", json(ran.out()), fields);
        fields.addAll(NOT_OF_THE_GARDEN);
        Set<String> told = Files.readAllLines(Project.file("demos/reference/report.md")).stream()
                .filter(line -> line.startsWith("| `") || line.startsWith("| *`"))
                .map(line -> line.split(" \\| ")[0])
                .flatMap(cell -> FIELD.matcher(cell).results().map(found -> found.group(1)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(told).isEqualTo(fields);
    }

    private static Node json(String text) {
        Problems problems = new Problems();
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "report.json", problems)
                .flatMap(source -> JsonReader.read(source, problems))
                .orElseThrow();
    }

    private static void collect(String path, Node node, Set<String> fields) {
        boolean isEmptyList = node instanceof ListNode list && list.items().isEmpty();
        if (node instanceof ObjectNode object) {
            for (Field field : object.fields()) {
                collect(path.isEmpty() ? field.name() : path + "." + field.name(), field.value(), fields);
            }
        } else if (node instanceof ListNode list && !isEmptyList && list.items().get(0) instanceof ObjectNode) {
            list.items().forEach(item -> collect(path + "[]", item, fields));
        } else if (!path.equals("caps[].ports")) {
            fields.add(path);
        }
    }
}
