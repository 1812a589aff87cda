package org.duskloom.cli;

import org.duskloom.engine.document.CsvStyle;
import picocli.CommandLine.Option;

/** How tables are written, the same option for each command that writes some. */
final class TableOptions {
    @Option(
            names = "--semicolons",
            description = "Tables as spreadsheets open them where a comma is the decimal sign: with semicolons between"
                    + " cells. Maps and measurements are read in either form.")
    private boolean semicolons;

    CsvStyle style() {
        return semicolons ? CsvStyle.SEMICOLONS : CsvStyle.COMMAS;
    }

    /** Whether something was asked for that only a table has. */
    boolean areGiven() {
        return semicolons;
    }
}
