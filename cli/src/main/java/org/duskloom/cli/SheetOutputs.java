package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.sheet.Drawing;
import org.duskloom.engine.sheet.PlaceTables;
import org.duskloom.engine.sheet.PngSheet;
import org.duskloom.engine.sheet.ScaledShape;
import org.duskloom.engine.sheet.ShapeSheet;
import org.duskloom.engine.sheet.SheetNames;
import org.duskloom.engine.sheet.SheetOptions;
import org.duskloom.engine.sheet.SheetPicture;
import org.duskloom.engine.sheet.StageSheet;
import org.duskloom.engine.sheet.SvgSheet;
import org.duskloom.engine.sheet.View;

/** The files of one {@code sheet}: they get their names together. */
final class SheetOutputs implements AutoCloseable {
    private final LoadedDisplay display;
    private final List<ScaledShape> shapes;
    private final SheetOptions options;
    private final PlaceTables tables;
    private final OutputFolder folder;
    private int files;

    /** @throws MisuseException if they may not be written there */
    SheetOutputs(LoadedDisplay display, SheetOptions options, CsvStyle style, Path folder, IfExists ifExists)
            throws IOException {
        PartsTable.OF_SHEET.refuseOther(folder, "-o");
        this.display = display;
        this.shapes = ScaledShape.of(display.display().props());
        this.options = options;
        this.tables = new PlaceTables(style);
        this.folder = new OutputFolder(folder, ifExists, display::refuseAsOutput);
    }

    /** Draws everything; gives how many files there are. */
    int write() throws IOException {
        double unit = display.display().units().millimetres();
        SheetNames names = new SheetNames(shapes);
        for (int place = 0; place < shapes.size(); place++) {
            ScaledShape shape = shapes.get(place);
            for (View view : View.values()) {
                write(
                        names.shape(place, view),
                        ShapeSheet.draw(shape, unit, view, options),
                        ShapeSheet.picture(shape, unit, view, options));
            }
        }
        for (View view : View.values()) {
            write(
                    names.stage(view),
                    StageSheet.draw(display.display(), view),
                    StageSheet.picture(display.display(), view));
        }
        write("places.csv", tables.places(display.display()));
        write(
                PartsTable.NAME,
                tables.parts(shapes.stream().map(ScaledShape::shape).distinct().toList()));
        folder.publish();
        return files;
    }

    /** What is drawn: every shape that a prop has, in every scale. */
    List<ScaledShape> shapes() {
        return shapes;
    }

    private void write(String name, Drawing toPrint, SheetPicture toLookAt) throws IOException {
        write(name + ".svg", SvgSheet.of(toPrint, name));
        PngSheet.write(toLookAt, folder.open(name + ".png"));
        files++;
    }

    private void write(String name, String text) throws IOException {
        folder.open(name).writeWhole(text);
        files++;
    }

    @Override
    public void close() {
        folder.close();
    }
}
