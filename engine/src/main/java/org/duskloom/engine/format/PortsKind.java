package org.duskloom.engine.format;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.wire.Port;
import org.duskloom.engine.wire.PortMap;

/**
 * {@code ports/NAME.bin}: the bytes that each port sends, frame after frame; and {@code patch.csv}, which says which
 * pixel lies where.
 */
public final class PortsKind implements OutputKind {
    private static final String PATCH = "patch.csv";

    private final Supplier<PortMap> wiring;
    private final CsvStyle style;

    /**
     * The kind for one display.
     *
     * @param wiring what hangs where; asked for when files are begun
     * @param style of the table of pixels
     */
    public PortsKind(Supplier<PortMap> wiring, CsvStyle style) {
        this.wiring = wiring;
        this.style = style;
    }

    @Override
    public String word() {
        return "ports";
    }

    @Override
    public String help() {
        return "the bytes that each port sends, NAME.bin, and which pixel lies where";
    }

    @Override
    public List<String> files() {
        return List.of(PortsSink.FOLDER, PATCH);
    }

    @Override
    public boolean needsPorts() {
        return true;
    }

    @Override
    public long bytes(RunInfo run) {
        long perFrame =
                wiring.get().ports().ports().stream().mapToLong(Port::byteCount).sum();
        return Math.multiplyExact(perFrame, run.frames().count());
    }

    @Override
    public Optional<Seam> seam(String name) {
        if (name.equals(PATCH)) {
            return Optional.of(new Seam.Same(PortsKind::options));
        }
        return PortsSink.isFile(name)
                ? Optional.of(new Seam.Bodies(run -> new byte[0], false, Optional.of(PortsSink.MEMBERS)))
                : Optional.empty();
    }

    @Override
    public FrameSink open(OutputFolder folder) throws IOException {
        return PortsSink.open(wiring.get(), folder, PATCH, style);
    }

    /** Only a table with semicolons begins with a mark. */
    private static String options(byte[] patch) {
        byte[] mark = CsvStyle.SEMICOLONS.start().getBytes(StandardCharsets.UTF_8);
        return Arrays.equals(mark, 0, mark.length, patch, 0, Math.min(mark.length, patch.length)) ? "--semicolons" : "";
    }
}
