package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class DeclaredObjectTest {
    private static final DeclaredField<TextNode> NAME =
            DeclaredField.required("name", new ValueKind.Text("name"), "what it is called");
    private static final DeclaredObject SEED = DeclaredObject.of("seed", NAME);

    @Test
    void findsFieldsByTheirNames() {
        assertThat(SEED.field("name").orElseThrow()).isSameAs(NAME);
        assertThat(SEED.field("nam")).isEmpty();
        assertThat(SEED.names()).containsExactly("name");
    }

    @Test
    void listsAllThatMayStandInIt() {
        DeclaredObject bed = DeclaredObject.of(
                "bed",
                DeclaredField.optional("one", new ValueKind.Nested(SEED), "", ""),
                DeclaredField.optional("many", ValueKind.Items.any(new ValueKind.Nested(SEED)), "", ""));
        DeclaredObject garden = DeclaredObject.of(
                "garden",
                DeclaredField.optional(
                        "beds",
                        new ValueKind.Named(
                                "bed", ValueKind.Own.of("bed", new ValueKind.Flag(), new ValueKind.Nested(bed))),
                        "",
                        ""));
        assertThat(garden.all()).containsExactly(garden, bed, SEED);
    }

    @Test
    void refusesTwoFieldsOfOneNameAndChoicesAmongOthers() {
        assertThatThrownBy(() -> DeclaredObject.of("seed", NAME, NAME)).isInstanceOf(IllegalArgumentException.class);
        DeclaredField<?> other = DeclaredField.optional("other", new ValueKind.Flag(), "", "");
        assertThatThrownBy(() -> SEED.needsOne("", NAME, other)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void saysWhatEachKindAllows() {
        assertThat(List.of(
                        new ValueKind.Number("", 0, 0.5),
                        new ValueKind.Number("degrees", -3600, 3600),
                        new ValueKind.Whole("pixels", 1, 1_000_000),
                        new ValueKind.Flag(),
                        ValueKind.Choice.of(List.of("x", "y"), Function.identity()),
                        new ValueKind.Texts("address"),
                        ValueKind.Items.any(new ValueKind.Text("step")),
                        new ValueKind.Items(new ValueKind.Flag(), 2, 2, ""),
                        new ValueKind.Items(new ValueKind.Flag(), 2, 3, ""),
                        new ValueKind.Items(new ValueKind.Flag(), 2, Integer.MAX_VALUE, ""),
                        new ValueKind.Nested(SEED),
                        new ValueKind.Named("bed", new ValueKind.Nested(SEED)),
                        new ValueKind.Format("map/1")))
                .extracting(ValueKind::phrase)
                .containsExactly(
                        "number, 0 to 0.5",
                        "number of degrees, -3,600 to 3,600",
                        "whole number of pixels, 1 to 1,000,000",
                        "true or false",
                        "one of \"x\", \"y\"",
                        "address, or a list of them",
                        "list; each item: step",
                        "list of 2; each item: true or false",
                        "list of 2 to 3; each item: true or false",
                        "list of 2 or more; each item: true or false",
                        "object: seed",
                        "object; for each name of a bed: object: seed",
                        "\"map/1\"");
    }

    @Test
    void writesDefaultsAsAFileHasThem() {
        assertThat(DeclaredField.of("a", new ValueKind.Number("", 0, 1), 1.0, "")
                        .standardText())
                .contains("1");
        assertThat(DeclaredField.of("a", new ValueKind.Whole("", 0, 1), 0L, "").standardText())
                .contains("0");
        assertThat(DeclaredField.of("a", new ValueKind.Flag(), false, "").standardText())
                .contains("false");
        assertThat(DeclaredField.of("a", ValueKind.Choice.of(List.of(7, 8), n -> "w" + n), 8, "")
                        .standardText())
                .contains("\"w8\"");
        assertThat(NAME.standardText()).isEmpty();
    }
}
