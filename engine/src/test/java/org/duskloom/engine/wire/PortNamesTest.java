package org.duskloom.engine.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A port's name is that of a file, on a disk of any system. */
class PortNamesTest {
    private final Problems problems = new Problems();
    private final PortNames names = new PortNames(problems);

    private boolean accept(String name) {
        return names.accept((TextNode) Inputs.json("\"" + name + "\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"left", "a.b", "com10", "console", "null", "com", "lpt", "Ä 1", "aux-2", "x.con"})
    @ValueSource(strings = {"com\u2074", "lpt\u00B9\u00B9"})
    void takesOrdinaryNames(String name) {
        assertThat(accept(name)).isTrue();
        assertThat(Inputs.shown(problems)).isEmpty();
    }

    /** Names of devices: Microsoft, "Naming Files, Paths, and Namespaces", with raised digits; from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"con", "CON", "prn", "Aux", "nul", "com1", "COM9", "lpt1", "LPT9", "nul.txt", "con.a.b"})
    @ValueSource(strings = {"com0", "lpt0", "COM\u00B9", "com\u00B2", "Lpt\u00B3.txt"})
    void refusesDevicesOfWindows(String name) {
        assertThat(accept(name)).isFalse();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("Windows keeps it for a device");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a:b", "a<b", "a>b", "a|b", "a\\\\b", "a\\\"b", "left.", "left.."})
    void refusesWhatNoFileCanBeCalled(String name) {
        assertThat(accept(name)).isFalse();
        assertThat(Inputs.shown(problems)).singleElement().asString().contains("cannot be the name of a file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a/b", "a*", " a"})
    void refusesWhatNothingCanBeCalled(String name) {
        assertThat(accept(name)).isFalse();
        assertThat(problems.errorCount()).isEqualTo(1);
    }

    @Test
    void refusesASecondOneOfAName() {
        assertThat(List.of(accept("left"), accept("right"), accept("left"))).containsExactly(true, true, false);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("two ports are called \"left\"")
                .contains("the first stands at in.json:1:1");
    }

    /** On the disks of Windows and of most Macs they would be one file. */
    @Test
    void refusesNamesThatDifferByCaseOnly() {
        assertThat(List.of(accept("left"), accept("LEFT"))).containsExactly(true, false);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("the port names \"left\" and \"LEFT\" differ by upper and lower case only");
    }

    /** A letter with its mark may be one character or two (Unicode Standard Annex 15); disks of Macs see one name. */
    @Test
    void refusesNamesThatLookTheSame() {
        assertThat(List.of(accept("caf\u00E9"), accept("cafe\u0301"))).containsExactly(true, false);
        assertThat(Inputs.shown(problems))
                .containsExactly("in.json:1:1: error: the port names \"caf\u00E9\" and \"cafe\u0301\" look the same: a"
                        + " letter with its mark is one character in one, and two in the other; the first stands at"
                        + " in.json:1:1; their files would be one on many disks");
    }

    /** In Turkish a small I has no dot; names are compared as everywhere. */
    @Test
    void comparesTheSameInEveryLanguage() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("tr"));
        try {
            assertThat(List.of(accept("WILL"), accept("will"))).containsExactly(true, false);
        } finally {
            Locale.setDefault(before);
        }
    }
}
