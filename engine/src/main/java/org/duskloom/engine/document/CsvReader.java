package org.duskloom.engine.document;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.duskloom.engine.problem.Problems;

/**
 * Reads CSV (RFC 4180) with a header row: commas, double quotes, any line ends. Beyond the standard, blanks round a
 * cell are dropped, lines that are empty or begin with {@code #} are skipped, and so are rows in which every cell is
 * empty, as spreadsheets leave them; a remark that has a row to itself may stand in quotes, as they save it. Where the
 * header has semicolons and no comma, semicolons part the cells of the file, and the decimal sign of its numbers is a
 * comma.
 */
public final class CsvReader {
    /** The longest row that is read, in UTF-16 units; a quote that is never closed runs into it. */
    public static final int MAX_ROW_CHARS = 1 << 20;

    private static final int MAX_FAULTS = 20;
    private static final CSVFormat COMMAS = format(CsvStyle.COMMAS);
    private static final CSVFormat SEMICOLONS = format(CsvStyle.SEMICOLONS);

    /** A remark in the first cell of a row, as a spreadsheet saves it in quotes; without quotes that are doubled. */
    private static final Pattern QUOTED_REMARK = Pattern.compile("\"#[^\"]*+\"[,;\\s]*");

    private final SourceText source;
    private final Problems problems;
    private final CsvStyle style;
    private final CsvScan scan;
    private int faults;

    private CsvReader(SourceText source, CsvStyle style, Problems problems) {
        this.source = source;
        this.style = style;
        this.problems = problems;
        this.scan = new CsvScan(source.text(), style);
    }

    private static CSVFormat format(CsvStyle style) {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(style.separator())
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }

    private CSVFormat format() {
        return style == CsvStyle.COMMAS ? COMMAS : SEMICOLONS;
    }

    /** That of the first line that could be a header: not empty, no comment, not all separators. */
    private static CsvStyle styleOf(String text) {
        for (int start = 0; start < text.length(); ) {
            int end = start;
            while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
                end++;
            }
            String line = text.substring(start, end).strip();
            if (!line.startsWith("#")
                    && !isQuotedRemark(line)
                    && !line.replaceAll("[,;\"\\s]", "").isEmpty()) {
                return CsvStyle.ofHeader(line.startsWith("\"#") ? line.replaceAll("\"[^\"]*+\"", "") : line);
            }
            start = end + 1;
        }
        return CsvStyle.COMMAS;
    }

    /**
     * Reads the header row. The other rows are read when the table is asked for them.
     *
     * @param source the file
     * @param problems where errors go, those of later rows too
     * @return the table, or nothing if there is no usable header
     */
    public static Optional<CsvTable> read(SourceText source, Problems problems) {
        return new CsvReader(source, styleOf(source.text()), problems).table();
    }

    /** Reads the records from an offset on; gives whether all of them had sound quotes. */
    static boolean forEachRecord(
            SourceText source, CsvStyle style, int offset, Problems problems, RecordAction action) {
        CsvReader reader = new CsvReader(source, style, problems);
        reader.forEachRecord(offset, action);
        return reader.faults == 0;
    }

    private Optional<CsvTable> table() {
        int start = scan.skipIdleLines(0);
        LimitedReader in = new LimitedReader(source.text(), start);
        try (CSVParser parser = CSVParser.parse(in, format())) {
            Iterator<CSVRecord> records = parser.iterator();
            String[] doubtful = null;
            int doubtfulStart = 0;
            for (String[] row = next(records, in, start); row != null; row = next(records, in, start)) {
                if (!isIdle(row, start)) {
                    if (doubtful != null && holdsNumber(row)) {
                        return header(doubtful, doubtfulStart);
                    }
                    if (!row[0].startsWith("#")) {
                        return header(row, start);
                    }
                    doubtful = row;
                    doubtfulStart = start;
                }
                start = scan.skipIdleLines(scan.nextRecord(start));
            }
            if (doubtful != null) {
                return header(doubtful, doubtfulStart);
            }
            problems.error(source.end(), "the file holds nothing but white space or comments");
        } catch (IOException fault) {
            reportFault(start, fault);
        }
        return Optional.empty();
    }

    /** The next record, which starts there; null at the end. */
    private static String[] next(Iterator<CSVRecord> records, LimitedReader in, int start) throws IOException {
        in.allowRecordAt(start);
        try {
            return records.hasNext() ? records.next().values() : null;
        } catch (UncheckedIOException fault) {
            throw fault.getCause();
        } catch (IllegalStateException | IllegalArgumentException fault) {
            throw new IOException(fault.getMessage(), fault);
        }
    }

    /**
     * Whether every cell is empty, or the row is a remark: one that is indented, or one in the first cell alone, which
     * a spreadsheet may have put into quotes.
     */
    private boolean isIdle(String[] values, int start) {
        boolean isRemark = values[0].startsWith("#");
        if (!isRemark && !values[0].isEmpty()) {
            return false;
        }
        return isEmptyBehindFirst(values) || isRemark && source.text().charAt(scan.cellStart(start, 0)) == '#';
    }

    private static boolean isEmptyBehindFirst(String[] values) {
        for (int i = 1; i < values.length; i++) {
            if (!values[i].isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private static boolean isQuotedRemark(String line) {
        return QUOTED_REMARK.matcher(line.replace("\"\"", "")).matches();
    }

    /**
     * Whether a row holds places rather than names of columns: then the row before it is the header, though its first
     * cell is a note; else that row was a remark over several cells.
     */
    private boolean holdsNumber(String[] values) {
        return Arrays.stream(values)
                .anyMatch(value -> CellNumber.parse(value, style).isPresent());
    }

    private Optional<CsvTable> header(String[] names, int start) {
        List<Cell> header = new ArrayList<>();
        LineCursor places = new LineCursor(source);
        for (int i = 0; i < names.length; i++) {
            header.add(new Cell(names[i], places.at(scan.cellStart(start, i))));
        }
        CsvTable table = new CsvTable(source, style, scan, header, scan.nextRecord(start), problems);
        return CsvHeader.check(header, style, problems) ? Optional.of(table) : Optional.empty();
    }

    /** Takes one record: its values, and the offset at which it starts. Gives whether to go on. */
    @FunctionalInterface
    interface RecordAction {
        boolean accept(String[] values, int start);
    }

    private void forEachRecord(int firstOffset, RecordAction action) {
        int offset = firstOffset;
        while (offset >= 0 && offset < source.text().length()) {
            offset = recordsUntilFault(offset, action);
        }
    }

    /**
     * Hands over the rows from an offset on, up to the first that holds a quote: most files have none, and without
     * quotes a row is what stands between separators, which takes a tenth of the library's time to find.
     *
     * @return where the row with a quote starts, or a very long one; the text's length if there is none; -1 if the
     *     action wants no more
     */
    private int plainRecords(int firstOffset, RecordAction action) {
        PlainRows rows = new PlainRows(source.text(), style.separator());
        int start = firstOffset;
        while (start < source.text().length()) {
            String[] row = rows.read(start);
            if (row == null) {
                return start;
            }
            if (!isIdle(row, start) && !action.accept(row, start)) {
                return -1;
            }
            start = scan.skipIdleLines(scan.nextLine(rows.end()));
        }
        return start;
    }

    /** Reads on until the end, which gives -1, or past a wrong quote, which gives the offset of the next sound line. */
    private int recordsUntilFault(int firstOffset, RecordAction action) {
        int start = plainRecords(scan.skipIdleLines(firstOffset), action);
        if (start < 0) {
            return -1;
        }
        LimitedReader in = new LimitedReader(source.text(), start);
        try (CSVParser parser = CSVParser.parse(in, format())) {
            Iterator<CSVRecord> records = parser.iterator();
            for (String[] row = next(records, in, start); row != null; row = next(records, in, start)) {
                if (!isIdle(row, start) && !action.accept(row, start)) {
                    return -1;
                }
                start = scan.skipIdleLines(scan.nextRecord(start));
            }
            return -1;
        } catch (IOException fault) {
            return reportFault(start, fault);
        }
    }

    private int reportFault(int recordStart, Exception fault) {
        CsvScan.QuoteFault quote = scan.quoteFault(recordStart, recordStart + MAX_ROW_CHARS);
        if (quote == null) {
            faults = MAX_FAULTS;
            problems.error(source.locationAt(recordStart), "this row cannot be read: " + fault.getMessage());
            problems.stopReading(source.locationAt(recordStart));
            return -1;
        }
        boolean oneLine = quote.noticed() >= 0 && scan.nextLine(quote.opened()) > quote.noticed();
        if (oneLine) {
            problems.error(
                    source.locationAt(quote.noticed()),
                    "text follows a closing quote",
                    "the quote opened at " + source.locationAt(quote.opened())
                            + "; a quote inside a cell is written twice: \"\"");
        } else {
            problems.error(
                    source.locationAt(quote.opened()),
                    "the quote that opens here is not closed in its line",
                    "add the closing \" or remove this one");
        }
        faults++;
        int next = scan.nextLine(quote.opened());
        if (faults == MAX_FAULTS && scan.skipIdleLines(next) < source.text().length()) {
            problems.stopReading(source.locationAt(quote.opened()));
        }
        return faults < MAX_FAULTS ? next : -1;
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
