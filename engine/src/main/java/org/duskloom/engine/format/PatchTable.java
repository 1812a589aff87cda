package org.duskloom.engine.format;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortMap;
import org.duskloom.engine.wire.UniverseRun;

/**
 * Which pixel lies where: a row for each pixel of each port in the order of the line, with the universe and the slot of
 * its first colour. Pixels that stay dark have no prop. CSV as in RFC 4180, but for semicolons.
 */
final class PatchTable {
    private final PortMap wiring;
    private final CsvStyle style;
    private final StringBuilder text = new StringBuilder();

    private PatchTable(PortMap wiring, CsvStyle style) {
        this.wiring = wiring;
        this.style = style;
    }

    static byte[] of(PortMap wiring, CsvStyle style) {
        PatchTable table = new PatchTable(wiring, style);
        table.text.append(style.start()).append(style.header("port,prop,pixel,universe,slot,colors\r\n"));
        wiring.ports().ports().forEach(table::append);
        return table.text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void append(Port port) {
        List<UniverseRun> runs = port.runs();
        int bytesPerPixel = port.signal().bytesPerPixel();
        int firstByte = 0;
        int run = 0;
        for (Link link : port.chain()) {
            for (int pixel : link.pixels()) {
                while (firstByte >= runs.get(run).firstByte() + runs.get(run).byteCount()) {
                    run++;
                }
                UniverseRun in = runs.get(run);
                cell(style.cell(port.name()));
                appendPixel(link, pixel);
                cell(in.universe());
                cell(in.firstSlot() + firstByte - in.firstByte());
                text.append(port.signal().colors()).append("\r\n");
                firstByte += bytesPerPixel;
            }
        }
    }

    private void appendPixel(Link link, int pixel) {
        if (link.isDark()) {
            cell("");
            cell("");
        } else {
            Prop prop = wiring.map().props().get(link.propIndex());
            cell(style.cell(prop.name()));
            cell(pixel - prop.firstPixel() + 1);
        }
    }

    private void cell(Object written) {
        text.append(written).append(style.separator());
    }
}
