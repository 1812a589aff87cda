package org.duskloom.engine.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.duskloom.engine.document.CsvReader;
import org.duskloom.engine.document.CsvRow;
import org.duskloom.engine.document.CsvTable;
import org.duskloom.engine.document.DeclaredField;
import org.duskloom.engine.document.DeclaredObject;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.ValueKind;
import org.duskloom.engine.map.MapFields;
import org.duskloom.engine.map.OwnTable;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Reads measurements: CSV with the columns {@code prop,pixel,x,y} and, where depth was measured, {@code z}. A row for
 * each measured pixel, in any order; pixels that were not measured have none. The other columns of a pixel map may
 * stay, so that a map can be the template: they are not read. Neither is {@code sure}, by which places in pictures are
 * known.
 */
public final class MeasurementReader {
    /** How sure a place is that a picture was asked for. */
    public static final DeclaredField<Double> SURE = DeclaredField.optional(
            "sure",
            new ValueKind.Number("", 0, 1),
            "measured otherwise",
            "what `locate` writes of places in pictures, by which they are known as such: how sure it is, 1 is quite");

    /** The columns: those of a pixel map, so that one can be the template, and what is known of places in pictures. */
    public static final DeclaredObject COLUMNS = new DeclaredObject(
            "measurements",
            Stream.concat(MapFields.MAP.fields().stream(), Stream.of(SURE)).toList(),
            List.of());

    private static final String TEMPLATE =
            "measurements have the columns prop,pixel,x,y; \"duskloom map DISPLAY.json\" writes such a table, to be filled"
                    + " in";

    /** Any two points can be brought to any two others. */
    private static final int LEAST_PIXELS_OF_A_PHOTO = 3;

    private final PixelMap map;
    private final CsvTable table;
    private final Problems problems;
    private final Dimensions dimensions;
    private final boolean fromPhoto;
    private final TreeMap<Integer, TreeMap<Integer, Row>> rows = new TreeMap<>();
    private final Set<String> unknown = new HashSet<>();
    private List<String> names;

    /** The first row of a pixel, and where it starts in the file. */
    private record Row(int start, double x, double y, double z) {}

    private MeasurementReader(PixelMap map, CsvTable table, boolean fromPhoto, Problems problems) {
        this.map = map;
        this.table = table;
        this.fromPhoto = fromPhoto || table.column(SURE).isPresent();
        this.problems = problems;
        this.dimensions = table.column(MapFields.Z).isPresent() ? Dimensions.DEEP : Dimensions.FLAT;
    }

    /**
     * Reads measurements.
     *
     * @param source the file
     * @param map the pixels that may be named
     * @param fromPhoto whether they are places in a photo, of which there must be three at least, without depth; they
     *     are too where they have the column {@code sure}
     * @param problems where errors go
     * @return the measurements; nothing if an error was added
     */
    public static Optional<Measurements> read(SourceText source, PixelMap map, boolean fromPhoto, Problems problems) {
        if (OwnTable.refusedWithOtherSigns(source, TEMPLATE, problems)) {
            return Optional.empty();
        }
        int errorsBefore = problems.errorCount();
        Optional<Measurements> measurements = CsvReader.read(source, problems)
                .filter(table -> !OwnTable.refused(table, TEMPLATE, problems) && table.expectColumns(COLUMNS))
                .flatMap(table -> new MeasurementReader(map, table, fromPhoto, problems).measurements(source));
        return problems.errorCount() > errorsBefore ? Optional.empty() : measurements;
    }

    private Optional<Measurements> measurements(SourceText source) {
        int errorsBefore = problems.errorCount();
        if (fromPhoto && dimensions == Dimensions.DEEP) {
            problems.error(
                    table.header().get(column(MapFields.Z)).location(),
                    "measurements from a photo have a column \"z\"",
                    "a photo shows no depth: leave the column out");
        }
        table.forEachRow(this::take);
        if (rows.isEmpty()) {
            if (problems.errorCount() == errorsBefore) {
                problems.error(
                        source.end(),
                        "the file has a header, but no measurements",
                        "add one row for each measured pixel");
            }
            return Optional.empty();
        }
        List<MeasuredProp> measured = new ArrayList<>();
        rows.forEach((propIndex, ofProp) -> measured.add(inOrder(propIndex, ofProp)));
        Measurements all = new Measurements(measured, dimensions, fromPhoto);
        if (fromPhoto && problems.errorCount() == errorsBefore && !canLieOnTheStage(all)) {
            problems.error(
                    source.end(),
                    "there are not enough measurements to lay a photo on the stage: " + all.pixelCount(),
                    "measure " + LEAST_PIXELS_OF_A_PHOTO + " pixels at different places at least, better many of"
                            + " several props");
        }
        return Optional.of(all);
    }

    private static MeasuredProp inOrder(int propIndex, TreeMap<Integer, Row> byPixel) {
        Row[] inOrder = byPixel.values().toArray(Row[]::new);
        return new MeasuredProp(
                propIndex,
                byPixel.keySet().stream().mapToInt(Integer::intValue).toArray(),
                new Positions(
                        Arrays.stream(inOrder).mapToDouble(Row::x).toArray(),
                        Arrays.stream(inOrder).mapToDouble(Row::y).toArray(),
                        Arrays.stream(inOrder).mapToDouble(Row::z).toArray()));
    }

    /** Whether there are several places, both in the photo and as described. */
    private boolean canLieOnTheStage(Measurements all) {
        boolean isApartInPhoto = false;
        boolean isApartAsDescribed = false;
        Positions stage = map.stage();
        MeasuredProp any = all.props().get(0);
        int anyPixel = map.props().get(any.propIndex()).firstPixel() + any.pixel(0);
        for (MeasuredProp prop : all.props()) {
            int first = map.props().get(prop.propIndex()).firstPixel();
            for (int i = 0; i < prop.count(); i++) {
                isApartInPhoto |= isApart(prop.places(), i, any.places(), 0);
                isApartAsDescribed |= isApart(stage, first + prop.pixel(i), stage, anyPixel);
            }
        }
        return all.pixelCount() >= LEAST_PIXELS_OF_A_PHOTO && isApartInPhoto && isApartAsDescribed;
    }

    /** Whether there is something left of the distance when it is squared, as in fits. */
    private static boolean isApart(Positions a, int i, Positions b, int j) {
        double dx = a.x(i) - b.x(j);
        double dy = a.y(i) - b.y(j);
        return dx * dx + dy * dy > 0;
    }

    private void take(CsvRow row) {
        OptionalDouble x = coordinate(row, MapFields.X);
        OptionalDouble y = coordinate(row, MapFields.Y);
        OptionalDouble z = dimensions == Dimensions.DEEP ? coordinate(row, MapFields.Z) : OptionalDouble.of(0);
        OptionalInt propIndex = map.propIndex(row.text(column(MapFields.PROP)));
        if (propIndex.isEmpty()) {
            reportUnknown(row);
            row.whole(column(MapFields.PIXEL), 1, PixelMap.MAX_PIXELS);
            return;
        }
        Prop prop = map.props().get(propIndex.getAsInt());
        OptionalLong number = row.whole(column(MapFields.PIXEL), 1, prop.pixelCount());
        if (number.isEmpty() || x.isEmpty() || y.isEmpty() || z.isEmpty()) {
            return;
        }
        TreeMap<Integer, Row> ofProp = rows.computeIfAbsent(propIndex.getAsInt(), key -> new TreeMap<>());
        int pixel = (int) number.getAsLong() - 1;
        Row first = ofProp.putIfAbsent(pixel, new Row(row.start(), x.getAsDouble(), y.getAsDouble(), z.getAsDouble()));
        if (first != null) {
            problems.error(
                    row.location(column(MapFields.PIXEL)),
                    "pixel " + (pixel + 1) + " of \"" + prop.name() + "\" stands twice",
                    "first at " + table.location(first.start(), column(MapFields.PIXEL))
                            + "; keep one row for each pixel");
        }
    }

    private OptionalDouble coordinate(CsvRow row, DeclaredField<Double> axis) {
        return row.number(column(axis), MapFields.COORDINATE);
    }

    private int column(DeclaredField<?> column) {
        return table.column(column).orElseThrow();
    }

    private void reportUnknown(CsvRow row) {
        String name = row.text(column(MapFields.PROP));
        if (unknown.add(name)) {
            String hint = problems.errorCount() < Problems.LIMIT ? NearestName.hint(name, names()) : "";
            problems.error(row.location(column(MapFields.PROP)), "there is no prop " + Quoted.of(name), hint);
        }
    }

    private List<String> names() {
        if (names == null) {
            names = map.props().stream().map(Prop::name).toList();
        }
        return names;
    }
}
