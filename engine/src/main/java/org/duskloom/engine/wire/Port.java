package org.duskloom.engine.wire;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.problem.Location;

/**
 * A data output with the props on its line.
 *
 * @param name its name; as a file name it is the same on every system
 * @param chain what hangs on the line, in the order in which the data run through it; at least one pixel together
 * @param signal how light becomes bytes
 * @param packing where the bytes lie in universes
 * @param kind what its pixels need; nothing where the display does not say
 * @param line the wire from pixel to pixel; nothing where the display does not say
 * @param definedAt where its name stands
 */
public record Port(
        String name,
        List<Link> chain,
        Signal signal,
        Packing packing,
        Optional<PixelKind> kind,
        Optional<PowerLine> line,
        Location definedAt) {
    /**
     * @throws IllegalArgumentException if there is no pixel
     */
    public Port {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(signal, "signal");
        Objects.requireNonNull(packing, "packing");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(definedAt, "definedAt");
        chain = List.copyOf(chain);
        if (chain.stream().noneMatch(link -> link.pixelCount() > 0)) {
            throw new IllegalArgumentException("port \"" + name + "\" has no pixel");
        }
    }

    /** A port of whose current nothing is known. */
    public Port(String name, List<Link> chain, Signal signal, Packing packing, Location definedAt) {
        this(name, chain, signal, packing, Optional.empty(), Optional.empty(), definedAt);
    }

    /** What its pixels need; the figures of common practice where the display does not say. */
    public PixelKind pixelKind() {
        return kind.orElseGet(() -> PixelKind.usual(signal.colors().count()));
    }

    /** How many pixels are on the line, dark ones too. */
    public int pixelCount() {
        return chain.stream().mapToInt(Link::pixelCount).sum();
    }

    /** How many bytes a frame takes. */
    public int byteCount() {
        return pixelCount() * signal.bytesPerPixel();
    }

    /** Where the bytes of a frame lie, in their order. */
    public List<UniverseRun> runs() {
        return packing.runs(pixelCount(), signal.bytesPerPixel());
    }

    /** The global index of each pixel in the order of the line; {@link Link#DARK} for those that stay dark. */
    public int[] pixels() {
        return Link.pixels(chain);
    }
}
