package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.FlagNode;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.effect.PlainEffects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What hangs together within each schema, by JSON Schema draft-07: draft-handrews-json-schema-01 (core) and
 * draft-handrews-json-schema-validation-01 (validation).
 */
class DocumentSchemaTest {
    private static ObjectNode schema(DocumentSchema kind) {
        return (ObjectNode) Inputs.json(kind.json(PlainEffects.all()));
    }

    /** All objects in a value, itself too. */
    private static List<ObjectNode> objects(Node node) {
        List<ObjectNode> found = new ArrayList<>();
        if (node instanceof ListNode list) {
            list.items().forEach(item -> found.addAll(objects(item)));
        } else if (node instanceof ObjectNode object) {
            found.add(object);
            object.fields().forEach(field -> found.addAll(objects(field.value())));
        }
        return found;
    }

    private static Optional<String> text(ObjectNode object, String name) {
        return object.value(name).filter(TextNode.class::isInstance).map(node -> ((TextNode) node).value());
    }

    private static List<Field> fields(ObjectNode object, String name) {
        return object.value(name)
                .filter(ObjectNode.class::isInstance)
                .map(node -> ((ObjectNode) node).fields())
                .orElse(List.of());
    }

    private static List<String> texts(ObjectNode object, String name) {
        return object.value(name).stream()
                .flatMap(list -> ((ListNode) list).items().stream())
                .map(item -> ((TextNode) item).value())
                .toList();
    }

    /** The parts of a schema whose fields have the names of a user's fields, as against conditions on some of them. */
    private static Stream<ObjectNode> declared(DocumentSchema kind) {
        ObjectNode schema = schema(kind);
        return Stream.concat(
                Stream.of(schema),
                fields(schema, "definitions").stream()
                        .map(field -> (ObjectNode) field.value())
                        .filter(object -> object.value("properties").isPresent()));
    }

    /** A reference that leads nowhere is an error of a validator (core, section 8.3); what nothing names is no use. */
    @ParameterizedTest
    @EnumSource
    void everyReferenceLeadsToADefinitionAndEveryDefinitionIsReferredTo(DocumentSchema kind) {
        Set<String> defined = new TreeSet<>();
        fields(schema(kind), "definitions").forEach(field -> defined.add("#/definitions/" + field.name()));
        Set<String> named = new TreeSet<>();
        objects(schema(kind)).forEach(object -> text(object, "$ref").ifPresent(named::add));
        assertThat(named).isEqualTo(defined).isNotEmpty();
    }

    /** "required" holds names once each (validation, section 6.5.3), and here only such as are fields. */
    @ParameterizedTest
    @EnumSource
    void whatMustBeThereMayBeThere(DocumentSchema kind) {
        assertThat(declared(kind)).allSatisfy(object -> {
            List<String> names =
                    fields(object, "properties").stream().map(Field::name).toList();
            assertThat(names).doesNotHaveDuplicates().containsAll(texts(object, "required"));
            assertThat(texts(object, "required")).doesNotHaveDuplicates();
            assertThat(((FlagNode) object.value("additionalProperties").orElseThrow()).value())
                    .isFalse();
        });
    }

    /** An editor shows a description over each field; the signs of Markdown would stand in it as they are. */
    @ParameterizedTest
    @EnumSource
    void everyFieldIsExplained(DocumentSchema kind) {
        assertThat(declared(kind).flatMap(object -> fields(object, "properties").stream()))
                .isNotEmpty()
                .allSatisfy(field -> assertThat(text((ObjectNode) field.value(), "description"))
                        .as(field.name())
                        .hasValueSatisfying(
                                words -> assertThat(words).isNotBlank().doesNotContain("`")));
    }

    /** "default" should be valid against its own schema (validation, section 10.2): an editor puts it in. */
    @ParameterizedTest
    @EnumSource(names = {"TIMELINE", "DISPLAY"})
    void whatIsTakenUnlessWrittenMayBeWritten(DocumentSchema kind) {
        List<ObjectNode> withDefault = declared(kind)
                .flatMap(object -> fields(object, "properties").stream())
                .map(field -> (ObjectNode) field.value())
                .filter(field -> field.value("default").isPresent())
                .toList();
        assertThat(withDefault).isNotEmpty().allSatisfy(field -> {
            Node standard = field.value("default").orElseThrow();
            if (field.value("type").isPresent()) {
                assertThat(typesOf(field)).containsAnyElementsOf(types(standard));
            }
            if (standard instanceof NumberNode number) {
                assertThat(number.value())
                        .isGreaterThanOrEqualTo(bound(field, "minimum", Double.NEGATIVE_INFINITY))
                        .isLessThanOrEqualTo(bound(field, "maximum", Double.POSITIVE_INFINITY));
            }
            if (standard instanceof TextNode word && field.value("enum").isPresent()) {
                assertThat(texts(field, "enum")).contains(word.value());
            }
        });
    }

    private static List<String> typesOf(ObjectNode field) {
        return text(field, "type").map(List::of).orElseGet(() -> texts(field, "type"));
    }

    /** A whole number is of both types of numbers (validation, section 6.1.1). */
    private static List<String> types(Node node) {
        if (node instanceof NumberNode number) {
            return number.written().matches("-?\\d+") ? List.of("integer", "number") : List.of("number");
        }
        if (node instanceof TextNode) {
            return List.of("string");
        }
        return List.of(node instanceof FlagNode ? "boolean" : node instanceof ListNode ? "array" : "object");
    }

    private static double bound(ObjectNode field, String keyword, double without) {
        return field.value(keyword).map(node -> ((NumberNode) node).value()).orElse(without);
    }

    /** Words of one list are all different (validation, section 6.1.2), and each has its explanation, if any has. */
    @ParameterizedTest
    @EnumSource
    void wordsAreGivenOnce(DocumentSchema kind) {
        List<ObjectNode> choices = objects(schema(kind)).stream()
                .filter(object ->
                        object.value("enum").filter(ListNode.class::isInstance).isPresent())
                .toList();
        assertThat(choices).isNotEmpty().allSatisfy(choice -> {
            assertThat(texts(choice, "enum")).isNotEmpty().doesNotHaveDuplicates();
            assertThat(texts(choice, "enumDescriptions").size())
                    .isIn(0, texts(choice, "enum").size());
        });
    }

    /** The file may lie in a repository: the same schema has the same bytes, and ends its last line. */
    @ParameterizedTest
    @EnumSource
    void isWrittenAlikeEachTime(DocumentSchema kind) {
        assertThat(kind.json(PlainEffects.all()))
                .isEqualTo(kind.json(PlainEffects.all()))
                .endsWith("\n}\n")
                .doesNotContain("\r", "\t");
    }
}
