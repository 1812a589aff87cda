package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.font.PixelFont;
import org.duskloom.engine.output.IfExists;
import org.duskloom.engine.output.OutputGroup;
import org.duskloom.engine.output.StagedFile;
import org.duskloom.engine.sheet.Drawing;
import org.duskloom.engine.sheet.PngSheet;
import org.duskloom.engine.sheet.ShapeSheet;
import org.duskloom.engine.sheet.SheetOptions;
import org.duskloom.engine.sheet.StageSheet;
import org.duskloom.engine.sheet.SvgSheet;
import org.duskloom.engine.sheet.View;

/** The files of one {@code sheet}: they get their names together. */
final class SheetOutputs implements AutoCloseable {
    /** The longer side of a picture, in dots. */
    private static final double LONGEST_SIDE = 3000;

    /** Letters of two dots for each of the font are easy to read. */
    private static final int LETTER_DOTS = 2 * PixelFont.CAPITAL_ROWS;

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
                write(name, letterMm -> ShapeSheet.draw(shape, unit, view, options, letterMm));
            }
        }
        write("stage", letterMm -> StageSheet.draw(display.display(), letterMm));
        group.publish();
        return files;
    }

    private List<Shape> usedShapes() {
        List<Shape> used = new ArrayList<>();
        for (PlacedProp prop : display.display().props()) {
            if (!used.contains(prop.shape())) {
                used.add(prop.shape());
            }
        }
        return used;
    }

    private void write(String name, DoubleFunction<Drawing> drawing) throws IOException {
        Drawing chosen = drawing.apply(0);
        byte[] svg = SvgSheet.of(chosen, name).getBytes(StandardCharsets.UTF_8);
        StagedFile file = open(name + ".svg");
        file.write(svg, 0, svg.length);
        file.finish();
        // On a picture the letters have a fixed number of dots, so what a millimetre is decides their height.
        double dotsPerMm = Math.min(2, LONGEST_SIDE / Math.max(chosen.widthMm(), chosen.heightMm()));
        PngSheet.write(drawing.apply(LETTER_DOTS / dotsPerMm), dotsPerMm, open(name + ".png"));
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
