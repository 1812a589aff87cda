package org.duskloom.engine.map;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Writes a pixel map as CSV that {@link MapReader} reads back as the same map: the same props, parts and, bit for bit,
 * the same coordinates. Columns that say nothing are left out: {@code z} where it is 0 throughout, {@code part} where
 * there are none, {@code ownx,owny,ownz} where they are the stage's.
 */
public final class MapWriter {
    private final PixelMap map;
    private final CsvStyle style;
    private final Appendable out;
    private final boolean hasZ;
    private final boolean hasParts;
    private final boolean hasOwn;

    private MapWriter(PixelMap map, CsvStyle style, Appendable out) {
        this.map = map;
        this.style = style;
        this.out = out;
        this.hasZ = !isZero(map.stage());
        this.hasParts = map.props().stream().anyMatch(prop -> !prop.parts().isEmpty());
        this.hasOwn = !map.own().equals(map.stage());
    }

    /**
     * Writes the map; lines end with LF.
     *
     * @param map what to write
     * @param style what stands between cells and in numbers
     * @param out where to; not closed
     * @throws IOException if it does not take the text
     */
    public static void write(PixelMap map, CsvStyle style, Appendable out) throws IOException {
        new MapWriter(map, style, out).write();
    }

    private void write() throws IOException {
        String columns =
                "prop,pixel,x,y" + (hasZ ? ",z" : "") + (hasParts ? ",part" : "") + (hasOwn ? ",ownx,owny,ownz" : "");
        out.append(style.start()).append(style.header(columns)).append('\n');
        for (Prop prop : map.props()) {
            List<StringBuilder> cells = partCells(prop);
            for (int i = 0; i < prop.pixelCount(); i++) {
                writeRow(prop, i, cells.get(i));
            }
        }
    }

    private void writeRow(Prop prop, int index, CharSequence parts) throws IOException {
        int pixel = prop.firstPixel() + index;
        out.append(style.cell(prop.name())).append(style.separator()).append(Integer.toString(index + 1));
        number(map.stage().x(pixel));
        number(map.stage().y(pixel));
        if (hasZ) {
            number(map.stage().z(pixel));
        }
        if (hasParts) {
            out.append(style.separator()).append(style.cell(parts.toString()));
        }
        if (hasOwn) {
            number(map.own().x(pixel));
            number(map.own().y(pixel));
            number(map.own().z(pixel));
        }
        out.append('\n');
    }

    private void number(double value) throws IOException {
        out.append(style.separator()).append(style.number(ShortestDecimal.of(value)));
    }

    private static List<StringBuilder> partCells(Prop prop) {
        List<StringBuilder> cells = new ArrayList<>(prop.pixelCount());
        for (int i = 0; i < prop.pixelCount(); i++) {
            cells.add(new StringBuilder());
        }
        prop.parts().forEach(part -> addTo(cells, part, part.name()));
        return cells;
    }

    private static void addTo(List<StringBuilder> cells, Part part, String path) {
        boolean rising = part.isRising();
        int[] pixels = part.pixels();
        for (int rank = 1; rank <= pixels.length; rank++) {
            StringBuilder cell = cells.get(pixels[rank - 1]);
            cell.append(cell.length() == 0 ? "" : ";").append(path).append(rising ? "" : "#" + rank);
        }
        part.children().forEach(child -> addTo(cells, child, path + "/" + child.name()));
    }

    private static boolean isZero(Positions positions) {
        for (int i = 0; i < positions.size(); i++) {
            if (Double.doubleToRawLongBits(positions.z(i)) != 0) {
                return false;
            }
        }
        return true;
    }
}
