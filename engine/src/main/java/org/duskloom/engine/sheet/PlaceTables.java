package org.duskloom.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.Display;
import org.duskloom.engine.display.Mirror;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.display.Shape;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.document.CsvText;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Tables for whoever hangs props and wires them: CSV with a header row, lengths in the display's unit, lines
 * end with LF.
 */
public final class PlaceTables {
    private final CsvStyle style;

    /** @param style what stands between cells and in numbers */
    public PlaceTables(CsvStyle style) {
        this.style = style;
    }

    /**
     * A row for every prop: how it is placed, and which pixel is its first and where that hangs. Pixels count from 1.
     */
    public String places(Display display) {
        CsvText rows = new CsvText(
                style,
                "prop,shape,x,y,z,turn,tilt,yaw,scale,mirror,reverse,pixels,first_pixel,first_x,first_y,first_z");
        Positions stage = display.map().stage();
        for (PlacedProp prop : display.props()) {
            Placement at = prop.placement();
            int first = prop.prop().firstPixel();
            rows.row(
                    prop.prop().name(),
                    prop.shape().name(),
                    number(at.x()),
                    number(at.y()),
                    number(at.z()),
                    number(at.turnDegrees()),
                    number(at.tiltDegrees()),
                    number(at.yawDegrees()),
                    number(at.scale()),
                    at.mirror() == Mirror.NONE ? "" : at.mirror().word(),
                    prop.reversed() ? "yes" : "",
                    String.valueOf(prop.prop().pixelCount()),
                    String.valueOf(first + 1),
                    number(stage.x(first)),
                    number(stage.y(first)),
                    number(stage.z(first)));
        }
        return rows.toString();
    }

    /** A row for every pixel of every shape: where it is in the shape's own axes, and all parts that it is in. */
    public String parts(List<Shape> shapes) {
        CsvText rows = new CsvText(style, "shape,pixel,x,y,z,parts");
        for (Shape shape : shapes) {
            List<List<String>> paths = new ArrayList<>();
            for (int i = 0; i < shape.pixels().size(); i++) {
                paths.add(new ArrayList<>());
            }
            shape.parts().forEach(part -> collect(paths, part, part.name()));
            for (int i = 0; i < paths.size(); i++) {
                rows.row(
                        shape.name(),
                        String.valueOf(i + 1),
                        number(shape.pixels().x(i)),
                        number(shape.pixels().y(i)),
                        number(shape.pixels().z(i)),
                        String.join("; ", paths.get(i)));
            }
        }
        return rows.toString();
    }

    private static void collect(List<List<String>> paths, Part part, String path) {
        for (int pixel : part.pixels()) {
            paths.get(pixel).add(path);
        }
        part.children().forEach(child -> collect(paths, child, path + "/" + child.name()));
    }

    /** Places that come of turns have digits beyond any ruler: a millionth of the unit is enough. */
    private String number(double value) {
        double rounded = Math.rint(value * 1e6) / 1e6;
        return style.number(ShortestDecimal.of(rounded == 0 ? 0 : rounded));
    }
}
