package org.duskloom.engine.map;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.document.Cell;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problems;

/**
 * The tables that commands write for people to look at: nothing reads them, so whoever gives one where pixels or
 * measurements are read has taken one file for another. Each is known by columns that no other table has together.
 */
public enum OwnTable {
    /** Where props hang. */
    PLACES("places.csv", "sheet", "a row for each prop, not for each pixel", "shape", "first_pixel"),
    /** The pixels of shapes. */
    PARTS_OF_SHAPES("parts.csv", "sheet", "pixels of shapes, which hang nowhere yet", "shape", "parts"),
    /** Which pixel has which slot. */
    PATCH("patch.csv", "render", "channels of pixels without their places", "port", "universe", "slot"),
    /** What supplies give. */
    SUPPLIES("supplies.csv", "report", "a row for each supply", "supply", "allowed_amps"),
    /** What ports ask for. */
    PORTS("ports.csv", "report", "a row for each port", "port", "frame_ms"),
    /** What flows through cables. */
    FEEDS("feeds.csv", "report", "a row for each feed", "port", "wire"),
    /** The least voltages along lines. */
    VOLTS("volts.csv", "report", "volts of pixels without their places", "port", "place", "least_volts"),
    /** Currents in the course of the show. */
    CURRENT("current.csv", "report", "amperes over time", "supply", "from", "to"),
    /** How props flash. */
    FLASHES("flashes.csv", "report", "a row for each prop, not for each pixel", "prop", "changes_of_light"),
    /** How much props are used. */
    USE("use.csv", "report", "a row for each prop, not for each pixel", "prop", "dark_share"),
    /** What cues give. */
    CUES("cues.csv", "report", "a row for each cue", "layer", "cue"),
    /** What to buy. */
    PARTS("parts.csv", "report", "what to buy and to cut", "group", "item", "unit");

    private static final Pattern OTHER_SIGNS = Pattern.compile("[\\t|]");

    private final String file;
    private final String command;
    private final String rows;
    private final List<String> marks;

    OwnTable(String file, String command, String rows, String... marks) {
        this.file = file;
        this.command = command;
        this.rows = rows;
        this.marks = List.of(marks);
    }

    /**
     * Which of them has such columns.
     *
     * @return nothing if none has, or all of a pixel map are there: its own columns of notes are its owner's affair
     */
    public static Optional<OwnTable> of(List<String> columns) {
        List<String> names = columns.stream()
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .toList();
        boolean isMap = names.containsAll(
                List.of(MapFields.PROP.name(), MapFields.PIXEL.name(), MapFields.X.name(), MapFields.Y.name()));
        return Arrays.stream(values())
                .filter(table -> !isMap && names.containsAll(table.marks))
                .findFirst();
    }

    /** Which one it is, and what is in it. */
    public String words() {
        return file + " as \"duskloom " + command + "\" writes it: " + rows;
    }

    /**
     * Whether a table is one of them; then an error says so, and not of each column that it is unknown.
     *
     * @param hint what is wanted in its place
     */
    public static boolean refused(CsvTable table, String hint, Problems problems) {
        Optional<OwnTable> own = of(table.header().stream().map(Cell::text).toList());
        own.ifPresent(found -> problems.error(table.header().get(0).location(), "this is " + found.words(), hint));
        return own.isPresent();
    }

    /**
     * The same of one that was saved anew with tabs or bars between its cells: other signs would not make it the right
     * one.
     */
    public static boolean refusedWithOtherSigns(SourceText source, String hint, Problems problems) {
        String header = source.text()
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        Optional<OwnTable> own = OTHER_SIGNS.matcher(header).find()
                ? of(Arrays.asList(OTHER_SIGNS.split(header.replace("\"", ""))))
                : Optional.empty();
        own.ifPresent(found ->
                problems.error(source.locationAt(source.text().indexOf(header)), "this is " + found.words(), hint));
        return own.isPresent();
    }
}
