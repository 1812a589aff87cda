package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalTraitsTest {
    @ParameterizedTest
    @CsvSource({"'', false, false", "out, true, false", "',err', false, true", "'out,err', true, true"})
    void believesTheLauncher(String told, boolean out, boolean err) {
        TerminalTraits traits = TerminalTraits.of(Optional.of(told), () -> !out, false, name -> null);
        assertThat(traits).isEqualTo(new TerminalTraits(out, err, err));
    }

    @ParameterizedTest
    @CsvSource({"true", "false"})
    void asksForAConsoleWithoutALauncher(boolean console) {
        TerminalTraits traits = TerminalTraits.of(Optional.empty(), () -> console, false, name -> null);
        assertThat(traits).isEqualTo(new TerminalTraits(console, console, console));
    }

    /** no-color.org: any value that is not empty. */
    @ParameterizedTest
    @CsvSource({
        "NO_COLOR, 1, false, true",
        "NO_COLOR, 0, false, true",
        "NO_COLOR, '', true, true",
        "TERM, dumb, false, false",
        "TERM, xterm, true, true"
    })
    void obeysTheEnvironment(String name, String value, boolean colored, boolean live) {
        TerminalTraits traits = TerminalTraits.of(Optional.of("out,err"), () -> false, false, Map.of(name, value)::get);
        assertThat(traits).isEqualTo(new TerminalTraits(colored, colored, live));
    }

    @Test
    void theOlderConsoleOfWindowsIsNotColored() {
        TerminalTraits older = TerminalTraits.of(Optional.empty(), () -> true, true, name -> null);
        assertThat(older).isEqualTo(new TerminalTraits(false, false, true));
        TerminalTraits newer = TerminalTraits.of(Optional.empty(), () -> true, true, Map.of("WT_SESSION", "x")::get);
        assertThat(newer).isEqualTo(new TerminalTraits(true, true, true));
    }
}
