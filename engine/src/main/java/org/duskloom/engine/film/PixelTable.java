package org.duskloom.engine.film;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.wire.Link;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.UniverseRun;

/**
 * What a page knows of every pixel that is seen, column after column, four bytes each, least significant first: x, y
 * and z from the middle of those seen, as floats; then, as whole numbers, the prop among those seen, the number in the
 * prop from 1, the port (-1 for none), its universe and its slot.
 */
final class PixelTable {
    private static final int COLUMNS = 8;

    private final ByteBuffer bytes;
    private final int[] seen;

    private PixelTable(int[] seen) {
        this.seen = seen;
        this.bytes = ByteBuffer.allocate(Math.multiplyExact(4 * COLUMNS, seen.length))
                .order(ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * The table of a film.
     *
     * @param seen the global indices of the pixels that the run has, in its order
     */
    static byte[] of(Show show, RunInfo run, int[] seen) {
        PixelTable table = new PixelTable(seen);
        table.addPlaces(run.pixels().places().orElseThrow());
        table.addNames(run, show.map());
        table.addWire(show.display().map(display -> display.ports().ports()).orElse(List.of()), show.map());
        return table.bytes.array();
    }

    /** The middle of the box round the pixels of a run: x, y, z. */
    static double[] centre(Positions places) {
        return new double[] {
            middle(places, places::x), middle(places, places::y), middle(places, places::z),
        };
    }

    private static double middle(Positions places, IntToDoubleFunction axis) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < places.size(); i++) {
            least = Math.min(least, axis.applyAsDouble(i));
            most = Math.max(most, axis.applyAsDouble(i));
        }
        return least + (most - least) / 2;
    }

    private void addPlaces(Positions places) {
        double[] centre = centre(places);
        for (int i = 0; i < seen.length; i++) {
            bytes.putFloat((float) (places.x(i) - centre[0]));
        }
        for (int i = 0; i < seen.length; i++) {
            bytes.putFloat((float) (places.y(i) - centre[1]));
        }
        for (int i = 0; i < seen.length; i++) {
            bytes.putFloat((float) (places.z(i) - centre[2]));
        }
    }

    private void addNames(RunInfo run, PixelMap map) {
        for (int prop = 0; prop < run.pixels().props().size(); prop++) {
            for (int i = 0; i < run.pixels().props().get(prop).pixelCount(); i++) {
                bytes.putInt(prop);
            }
        }
        for (int pixel : seen) {
            Prop prop = map.props().get(map.propIndexOf(pixel));
            bytes.putInt(pixel - prop.firstPixel() + 1);
        }
    }

    private void addWire(List<Port> ports, PixelMap map) {
        Wire wire = new Wire(new int[map.pixelCount()], new int[map.pixelCount()], new int[map.pixelCount()]);
        Arrays.fill(wire.port, -1);
        for (int index = 0; index < ports.size(); index++) {
            wire.fill(index, ports.get(index));
        }
        for (int[] column : List.of(wire.port, wire.universe, wire.slot)) {
            for (int pixel : seen) {
                bytes.putInt(column[pixel]);
            }
        }
    }

    /** Where each pixel of the show gets its data from; its first byte. */
    private record Wire(int[] port, int[] universe, int[] slot) {
        void fill(int index, Port from) {
            List<UniverseRun> runs = from.runs();
            int[] chain = from.pixels();
            int run = 0;
            for (int i = 0; i < chain.length; i++) {
                int at = i * from.signal().bytesPerPixel();
                while (at >= runs.get(run).firstByte() + runs.get(run).byteCount()) {
                    run++;
                }
                if (chain[i] != Link.DARK) {
                    port[chain[i]] = index;
                    universe[chain[i]] = runs.get(run).universe();
                    slot[chain[i]] =
                            runs.get(run).firstSlot() + at - runs.get(run).firstByte();
                }
            }
        }
    }
}
