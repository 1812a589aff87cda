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
 * its first colour. Pixels that stay dark have no prop. CSV as in RFC 4180.
 */
final class PatchTable {
    private PatchTable() {}

    static byte[] of(PortMap wiring) {
        StringBuilder text = new StringBuilder("port,prop,pixel,universe,slot,colors\r\n");
        wiring.ports().ports().forEach(port -> append(text, port, wiring.map().props()));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void append(StringBuilder text, Port port, List<Prop> props) {
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
                text.append(CsvStyle.COMMAS.cell(port.name())).append(',');
                if (link.isDark()) {
                    text.append(',');
                } else {
                    Prop prop = props.get(link.propIndex());
                    text.append(CsvStyle.COMMAS.cell(prop.name())).append(',').append(pixel - prop.firstPixel() + 1);
                }
                text.append(',').append(in.universe());
                text.append(',').append(in.firstSlot() + firstByte - in.firstByte());
                text.append(',').append(port.signal().colors()).append("\r\n");
                firstByte += bytesPerPixel;
            }
        }
    }
}
