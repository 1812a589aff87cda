package org.duskloom.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.report.ReportTables;

/**
 * Two commands write a table called parts.csv, each another one. Neither replaces that of the other, not even with
 * {@code --force}.
 */
enum PartsTable {
    /** The parts of every pixel. */
    OF_SHEET("sheet", "shape,pixel,"),

    /** What to buy and to cut. */
    OF_REPORT("report", ReportTables.PARTS_HEADER);

    static final String NAME = ReportTables.PARTS;

    private final String command;
    private final String begins;

    PartsTable(String command, String begins) {
        this.command = command;
        this.begins = begins;
    }

    /**
     * Makes sure that this table replaces no other.
     *
     * @param folder where it is to be written
     * @param option what names the folder
     * @throws MisuseException if the table of the other command stands there
     */
    void refuseOther(Path folder, String option) throws IOException {
        Path file = folder.resolve(NAME);
        PartsTable other = this == OF_SHEET ? OF_REPORT : OF_SHEET;
        if (Files.isRegularFile(file) && other.wrote(file)) {
            throw new MisuseException(file + " is a table that '" + other.command + "' wrote; give " + option
                    + " a folder of its own, or move it away");
        }
    }

    /** In whatever style. */
    private boolean wrote(Path file) throws IOException {
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            String first = reader.readLine();
            return first != null
                    && Arrays.stream(CsvStyle.values())
                            .anyMatch(style -> first.startsWith(style.start() + style.header(begins)));
        } catch (MalformedInputException notOurs) {
            // Whatever it is, it is not that table; --force decides.
            return false;
        }
    }
}
