package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;

class ProblemPrinterTest {
    private final Problems problems = new Problems();

    @Test
    void saysNothingWithoutProblems() {
        assertThat(printed(false)).isEmpty();
    }

    @Test
    void countsWhatItLists() {
        problems.error(new Location("map.csv", 3, 1), "the pixel is there twice");
        problems.error(new Location("map.csv", 3, 1), "the pixel is there twice");
        problems.warn(new Location("map.csv", 2, 0), "the prop has one pixel", "add more");
        problems.error(Location.ofFile("a.json"), "the file is empty");
        assertThat(printed(false)).isEqualTo("""
                a.json: error: the file is empty
                map.csv:2: warning: the prop has one pixel; add more
                map.csv:3:1: error: the pixel is there twice
                2 errors, 1 warning
                """);
    }

    @Test
    void countsWarningsAlone() {
        problems.warn(new Location("map.csv", 2, 1), "a", "");
        problems.warn(new Location("map.csv", 2, 2), "b", "");
        assertThat(printed(false)).isEqualTo("map.csv:2:1: warning: a\nmap.csv:2:2: warning: b\n2 warnings\n");
    }

    @Test
    void saysHowManyAreLeftOut() {
        for (int line = 1; line <= Problems.LIMIT + 34; line++) {
            problems.error(new Location("map.csv", line, 1), "x is missing");
        }
        String[] lines = printed(false).split("\n");
        assertThat(lines).hasSize(Problems.LIMIT + 2);
        assertThat(lines).endsWith("and 34 more errors", "234 errors");
    }

    @Test
    void saysWhereReadingStopped() {
        problems.error(new Location("map.csv", 2, 1), "x is missing");
        problems.error(new Location("map.csv", 3, 1), "x is missing");
        problems.warn(new Location("map.csv", 2, 2), "b", "");
        problems.stopReading(new Location("map.csv", 3, 1));
        assertThat(printed(false))
                .endsWith("the first 2 errors, 1 warning; map.csv was read up to line 3 and no further\n");
    }

    @Test
    void saysWhereReadingStoppedAtTheOnlyError() {
        problems.error(new Location("map.csv", 2, 1), "this row cannot be read");
        problems.stopReading(new Location("map.csv", 2, 1));
        assertThat(printed(false)).endsWith("\n1 error; map.csv was read up to line 2 and no further\n");
    }

    @Test
    void saysHowManyWarningsMadeRoomForErrors() {
        for (int line = 1; line <= Problems.LIMIT; line++) {
            problems.warn(new Location("map.csv", line, 1), "the pixel is far away", "");
        }
        problems.error(Location.ofFile("show.json"), "the file is empty");
        String[] lines = printed(false).split("\n");
        assertThat(lines).hasSize(Problems.LIMIT + 2);
        assertThat(lines)
                .endsWith("show.json: error: the file is empty", "and 1 more warning", "1 error, 200 warnings");
    }

    @Test
    void saysHowManyOfBothAreLeftOut() {
        for (int line = 1; line <= Problems.LIMIT + 2; line++) {
            problems.error(new Location("map.csv", line, 1), "x is missing");
            problems.warn(new Location("map.csv", line, 2), "the pixel is far away", "");
        }
        assertThat(printed(false).split("\n"))
                .endsWith("and 2 more errors and 202 more warnings", "202 errors, 202 warnings");
    }

    /** ECMA-48 select graphic rendition: 31 red, 33 yellow, 0 as it was. */
    @Test
    void colorsTheWord() {
        problems.error(new Location("map.csv", 3, 1), "bad", "good");
        problems.warn(new Location("map.csv", 4, 1), "odd", "");
        assertThat(printed(true)).isEqualTo("""
                map.csv:3:1: \u001b[1;31merror\u001b[0m: bad; good
                map.csv:4:1: \u001b[1;33mwarning\u001b[0m: odd
                1 error, 1 warning
                """);
    }

    private String printed(boolean colored) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        TerminalTraits traits = new TerminalTraits(false, colored, false);
        Streams streams = new Streams(OutputStream.nullOutputStream(), StandardCharsets.UTF_8, stream, traits);
        ProblemPrinter.print(problems, streams);
        return err.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
