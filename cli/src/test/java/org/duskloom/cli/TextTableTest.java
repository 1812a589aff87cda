package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {
    @Test
    void columnsAreAsWideAsTheirWidestCell() {
        TextTable table = new TextTable(80, 1);
        table.row("chase", "lights running");
        table.row("a", "");
        table.row("sweep", "bands");
        assertThat(text(table)).isEqualTo("chase  lights running\na\nsweep  bands\n");
    }

    /** 26 wide: 5 + 2 + 19 characters, so that the second column breaks behind "running", at 14. */
    @Test
    void cellsBreakBetweenWords() {
        TextTable table = new TextTable(26, 1);
        table.row("chase", "lights running along the order");
        table.row("x", "y");
        assertThat(text(table)).isEqualTo("chase  lights running\n       along the order\nx      y\n");
    }

    /** Each of the two gives way to 12, and no further: the table then is 12 + 2 + 12 wide. */
    @Test
    void columnsAreNotSqueezedToNothing() {
        TextTable table = new TextTable(10, 0, 1);
        table.row("one two three four", "five six seven eight nine");
        assertThat(text(table)).isEqualTo("""
                one two       five six
                three four    seven eight
                              nine
                """);
    }

    @Test
    void longWordsStayWhole() {
        TextTable table = new TextTable(14, 0);
        table.row("#123456789abcdef0 x", "1");
        assertThat(text(table)).isEqualTo("#123456789abcdef0  1\nx\n");
    }

    private static String text(TextTable table) {
        return table.text().replace(System.lineSeparator(), "\n");
    }
}
