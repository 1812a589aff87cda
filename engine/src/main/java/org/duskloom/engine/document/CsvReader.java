package org.duskloom.engine.document;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * Reads CSV (RFC 4180) with a header row: commas, double quotes, any line ends. Beyond the standard, blanks round a cell
 * are dropped, lines that are empty or begin with {@code #} are skipped, and so are rows in which every cell is empty, as
 * spreadsheets leave them.
 */
public final class CsvReader {
    /** The longest row that is read, in UTF-16 units; a quote that is never closed runs into it. */
    public static final int MAX_ROW_CHARS = 1 << 20;

    private static final int MAX_QUOTE_FAULTS = 20;
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    private final SourceText source;
    private final Problems problems;
    private final CsvScan scan;
    private int quoteFaults;

    private CsvReader(SourceText source, Problems problems) {
        this.source = source;
        this.problems = problems;
        this.scan = new CsvScan(source.text());
    }

    /**
     * Reads the header row. The other rows are read when the table is asked for them.
     *
     * @param source the file
     * @param problems where errors go, those of later rows too
     * @return the table, or nothing if there is no usable header
     */
    public static Optional<CsvTable> read(SourceText source, Problems problems) {
        return new CsvReader(source, problems).table();
    }

    static void forEachRow(CsvTable table, SourceText source, int offset, Problems problems, Consumer<CsvRow> action) {
        new CsvReader(source, problems)
                .forEachRecord(
                        offset, (values, start) -> table.row(values, start).ifPresent(action));
    }

    private Optional<CsvTable> table() {
        int start = scan.skipIdleLines(0);
        if (start >= source.text().length() || source.text().isBlank()) {
            problems.error(source.end(), "the file holds nothing but white space or comments");
            return Optional.empty();
        }
        List<CsvTable> found = new ArrayList<>(1);
        try (LimitedReader in = new LimitedReader(source.text(), start);
                CSVParser parser = CSVParser.parse(in, FORMAT)) {
            in.allowRecordAt(start);
            header(parser.iterator().next().values(), start).ifPresent(found::add);
        } catch (IOException | UncheckedIOException | IllegalStateException | IllegalArgumentException fault) {
            reportFault(start, fault);
        }
        return found.stream().findFirst();
    }

    private Optional<CsvTable> header(String[] names, int start) {
        List<Cell> header = new ArrayList<>();
        for (int i = 0; i < names.length; i++) {
            header.add(new Cell(names[i], source.locationAt(scan.cellStart(start, i))));
        }
        CsvTable table = new CsvTable(source, scan, header, scan.nextRecord(start), problems);
        return CsvHeader.check(header, problems) ? Optional.of(table) : Optional.empty();
    }

    /** Takes one record: its values, and the offset at which it starts. */
    @FunctionalInterface
    private interface RecordAction {
        void accept(String[] values, int start);
    }

    private void forEachRecord(int firstOffset, RecordAction action) {
        int offset = firstOffset;
        while (offset >= 0 && offset < source.text().length()) {
            offset = recordsUntilFault(offset, action);
        }
    }

    /** Reads on until the end, which gives -1, or past a wrong quote, which gives the offset of the next sound line. */
    private int recordsUntilFault(int firstOffset, RecordAction action) {
        int offset = scan.skipIdleLines(firstOffset);
        try (LimitedReader in = new LimitedReader(source.text(), offset);
                CSVParser parser = CSVParser.parse(in, FORMAT)) {
            in.allowRecordAt(offset);
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                action.accept(records.next().values(), offset);
                offset = scan.skipIdleLines(scan.nextRecord(offset));
                in.allowRecordAt(offset);
            }
            return -1;
        } catch (IOException | UncheckedIOException | IllegalStateException | IllegalArgumentException fault) {
            return reportFault(offset, fault);
        }
    }

    private int reportFault(int recordStart, Exception fault) {
        CsvScan.QuoteFault quote = scan.quoteFault(recordStart, recordStart + MAX_ROW_CHARS);
        if (quote == null) {
            problems.error(source.locationAt(recordStart), "this row cannot be read: " + fault.getMessage());
            return scan.nextLine(recordStart);
        }
        Location opened = source.locationAt(quote.opened());
        if (quote.noticed() < 0) {
            problems.error(opened, "the quote that opens here is not closed", "add the closing \" or remove this one");
        } else {
            problems.error(
                    source.locationAt(quote.noticed()),
                    "text follows a closing quote",
                    "the quote opened at " + opened + "; a quote inside a cell is written twice: \"\"");
        }
        quoteFaults++;
        return quoteFaults < MAX_QUOTE_FAULTS ? scan.nextLine(Math.max(quote.opened(), quote.noticed())) : -1;
    }

    /** Hands out the text from an offset on, and fails where one record asks for more than a record may hold. */
    private static final class LimitedReader extends Reader {
        private static final int LOOKAHEAD_CHARS = 1 << 16;

        private final String text;
        private int position;
        private long limit;

        LimitedReader(String text, int start) {
            this.text = text;
            this.position = start;
        }

        void allowRecordAt(int offset) {
            limit = (long) offset + MAX_ROW_CHARS + LOOKAHEAD_CHARS;
        }

        @Override
        public int read(char[] target, int at, int length) throws IOException {
            if (position >= text.length()) {
                return length == 0 ? 0 : -1;
            }
            if (position > limit) {
                throw new IOException("longer than " + MAX_ROW_CHARS + " characters");
            }
            int count = Math.min(length, text.length() - position);
            text.getChars(position, position + count, target, at);
            position += count;
            return count;
        }

        @Override
        public void close() {
            // Nothing is held.
        }
    }
}
