package org.duskloom.engine.locate;

import java.util.Locale;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;

/** Writes the places that were found as CSV with the columns {@code prop,pixel,x,y,sure}; lines end with LF. */
public final class MeasuredText {
    private MeasuredText() {}

    /** The text, a row for each pixel that was found, in wiring order. */
    public static String of(Located located, PixelMap map, CsvStyle style) {
        StringBuilder text = new StringBuilder(style.start());
        text.append("# Places in a picture of ")
                .append(located.size())
                .append(" dots: x to the right, y down, 0 and 0");
        text.append(" is the middle of its top left dot.\n");
        text.append(style.header("prop,pixel,x,y,sure\n"));
        for (Sighting sighting : located.seen()) {
            Prop prop = map.props().get(map.propIndexOf(sighting.pixel()));
            text.append(style.cell(prop.name()));
            text.append(style.separator()).append(sighting.pixel() - prop.firstPixel() + 1);
            for (double number : new double[] {sighting.x(), sighting.y(), sighting.sure()}) {
                text.append(style.separator()).append(style.number(String.format(Locale.ROOT, "%.2f", number)));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
