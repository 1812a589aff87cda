package org.duskloom.engine.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.display.DisplayFields;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.format.ManifestFields;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.timeline.TimelineFields;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the schema says of a number or a list is what its reader does, to the last digit: a value at a bound passes
 * both, one beyond passes neither. "minimum" and "maximum" are of JSON Schema draft-07
 * (draft-handrews-json-schema-validation-01, sections 6.2.2 and 6.2.4), with the bound itself allowed, "minItems" and
 * "maxItems" (6.4) too.
 */
class DeclaredBoundsTest {
    /** Every kind that is declared for a field of some file, those inside of others too. */
    static Set<ValueKind<?>> declared() {
        Set<ValueKind<?>> kinds = new LinkedHashSet<>();
        for (DeclaredObject file : List.of(TimelineFields.TIMELINE, DisplayFields.DISPLAY, ManifestFields.MANIFEST)) {
            for (DeclaredObject object : file.all()) {
                object.fields().stream().map(DeclaredField::kind).forEach(kind -> add(kind, kinds));
            }
        }
        return kinds;
    }

    private static void add(ValueKind<?> kind, Set<ValueKind<?>> kinds) {
        if (kind instanceof ValueKind.Own own) {
            own.forms().forEach(form -> add(form, kinds));
        } else if (kind instanceof ValueKind.Named named) {
            add(named.value(), kinds);
        } else {
            kinds.add(kind);
            if (kind instanceof ValueKind.Items items) {
                add(items.item(), kinds);
            }
        }
    }

    static List<ValueKind<?>> numbers() {
        return declared().stream()
                .filter(kind -> kind instanceof ValueKind.Number || kind instanceof ValueKind.Whole)
                .toList();
    }

    static List<ValueKind<?>> lists() {
        return declared().stream().filter(ValueKind.Items.class::isInstance).toList();
    }

    @Test
    void thereAreManyOfThem() {
        assertThat(numbers()).hasSizeGreaterThan(20);
        assertThat(lists()).hasSizeGreaterThan(10);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void aNumberAtItsBoundPassesAndOneBeyondDoesNot(ValueKind<?> kind) {
        Optional<BigDecimal> minimum = number(kind, "minimum");
        Optional<BigDecimal> maximum = number(kind, "maximum");
        boolean whole = kind instanceof ValueKind.Whole;
        minimum.ifPresent(bound -> {
            assertThat(reads(kind, bound.toPlainString()))
                    .as("%s at %s", kind, bound)
                    .isTrue();
            String beyond = below(bound, whole);
            assertThat(reads(kind, beyond)).as("%s below at %s", kind, beyond).isFalse();
        });
        maximum.ifPresent(bound -> {
            assertThat(reads(kind, bound.toPlainString()))
                    .as("%s at %s", kind, bound)
                    .isTrue();
            String beyond = negated(below(bound.negate(), whole));
            assertThat(reads(kind, beyond)).as("%s above at %s", kind, beyond).isFalse();
        });
        assertThat(minimum.isPresent() || reads(kind, "-1e299"))
                .as("%s without end below", kind)
                .isTrue();
        assertThat(maximum.isPresent() || reads(kind, "1e299"))
                .as("%s without end above", kind)
                .isTrue();
    }

    /** The next whole number, or the next number that a double can be (IEEE 754). */
    private static String below(BigDecimal bound, boolean whole) {
        return whole
                ? bound.subtract(BigDecimal.ONE).toPlainString()
                : Double.toString(Math.nextDown(bound.doubleValue()));
    }

    private static String negated(String number) {
        return number.startsWith("-") ? number.substring(1) : "-" + number;
    }

    @ParameterizedTest
    @MethodSource("lists")
    void aListOfAsManyAsAreAllowedPassesAndOfOneMoreOrLessDoesNot(ValueKind<?> kind) {
        int least = number(kind, "minItems").map(BigDecimal::intValueExact).orElse(0);
        int most = number(kind, "maxItems").map(BigDecimal::intValueExact).orElse(5000);
        assertThat(readsItems(kind, least)).isTrue();
        assertThat(readsItems(kind, most)).isTrue();
        assertThat(least > 0 && readsItems(kind, least - 1)).isFalse();
        assertThat(number(kind, "maxItems").isPresent() && readsItems(kind, most + 1))
                .isFalse();
    }

    private static boolean readsItems(ValueKind<?> kind, int count) {
        List<String> items = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            items.add("1");
        }
        return reads(kind, "[" + String.join(",", items) + "]");
    }

    private static boolean reads(ValueKind<?> kind, String json) {
        Problems problems = new Problems();
        Optional<?> read =
                JsonReader.read(Inputs.source("in.json", json), problems).flatMap(it -> kind.read(it, "it", problems));
        return read.isPresent() && !problems.hasErrors();
    }

    private static Optional<BigDecimal> number(ValueKind<?> kind, String keyword) {
        Keywords keywords =
                new ObjectSchemas(new EffectSchemas(List.of())).kinds().of(kind);
        String json = new JsonText().field("schema", keywords.json()).end();
        ObjectNode schema =
                (ObjectNode) ((ObjectNode) Inputs.json(json)).value("schema").orElseThrow();
        return schema.value(keyword).map(value -> new BigDecimal(((NumberNode) value).written()));
    }
}
