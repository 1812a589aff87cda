package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.sheet.Drawing;
import org.duskloom.engine.sheet.PngSheet;
import org.duskloom.engine.sheet.ShapeSheet;
import org.duskloom.engine.sheet.SheetOptions;
import org.duskloom.engine.sheet.SheetPicture;
import org.duskloom.engine.sheet.StageSheet;
import org.duskloom.engine.sheet.SvgSheet;
import org.duskloom.engine.sheet.View;

/** The files of one {@code sheet}: they get their names together. */
final class SheetOutputs implements AutoCloseable {
    private final LoadedDisplay display;
    private final SheetOptions options;
    private final Path folder;
    private final OutputGroup group;
    private int files;

    SheetOutputs(LoadedDisplay display, SheetOptions options, Path folder, IfExists ifExists) {
        this.display = display;
        this.options = options;
        this.folder = folder;
        this.group = new OutputGroup(ifExists);
    }

    /** Draws everything; gives how many files there are. */
    int write() throws IOException {
        for (Shape shape : usedShapes()) {
            for (View view : View.values()) {
                String name = shape.name() + "-" + view.word();
                double unit = display.display().units().millimetres();
                write(
                        name,
                        ShapeSheet.draw(shape, unit, view, options),
                        ShapeSheet.picture(shape, unit, view, options));
            }
        }
        write("stage", StageSheet.draw(display.display()), StageSheet.picture(display.display()));
        group.publish();
        return files;
    }

    /** The shapes that a prop has, in the order of the props. */
    List<Shape> usedShapes() {
        List<Shape> used = new ArrayList<>();
        for (PlacedProp prop : display.display().props()) {
            if (!used.contains(prop.shape())) {
                used.add(prop.shape());
            }
        }
        return used;
    }

    private void write(String name, Drawing toPrint, SheetPicture toLookAt) throws IOException {
        byte[] svg = SvgSheet.of(toPrint, name).getBytes(StandardCharsets.UTF_8);
        StagedFile file = open(name + ".svg");
        file.write(svg, 0, svg.length);
        file.finish();
        PngSheet.write(toLookAt, open(name + ".png"));
        files += 2;
    }

    private StagedFile open(String name) throws IOException {
        Path target = folder.resolve(name);
        display.refuseAsOutput(target);
        return group.open(target);
    }

    @Override
    public void close() {
        group.close();
    }
}
