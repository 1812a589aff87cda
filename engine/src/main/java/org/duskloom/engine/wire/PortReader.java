package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/** Reads the ports of a display. What they may hold stands in {@link PortFields}. */
public final class PortReader {
    private final Problems problems;
    private final PortNames names;
    private final ChainReader chains;
    private final KindReader kinds;
    private final WireReader wires;
    private final UniverseUse universes;
    private final List<Port> ports = new ArrayList<>();

    /** The universe after the port before; 0 where that is not known. */
    private int nextUniverse = 1;

    private PortReader(GroupTree groups, KindReader kinds, WireReader wires, Problems problems) {
        this.problems = problems;
        this.kinds = kinds;
        this.wires = wires;
        this.names = new PortNames(problems);
        this.chains = new ChainReader(groups, problems);
        this.universes = new UniverseUse(problems);
    }

    /**
     * What a display says of its outputs.
     *
     * @param kinds of pixels; may be empty
     * @param ports as written; nothing where there are none
     * @param supplies as written; nothing where there are none
     */
    public record Written(List<Field> kinds, Optional<ListNode> ports, Optional<ListNode> supplies) {}

    /**
     * Reads all ports and what feeds them.
     *
     * @param written as it stands in the display
     * @param groups what chains may name
     * @param metresPerUnit how many metres the unit of lengths is
     * @param problems where errors go
     * @return the ports and supplies without errors, which are all of them if no error was added
     */
    public static Ports read(Written written, GroupTree groups, double metresPerUnit, Problems problems) {
        int errorsBefore = problems.errorCount();
        WireReader wires = new WireReader(groups.map().stage(), metresPerUnit, problems);
        PortReader reader = new PortReader(groups, new KindReader(written.kinds(), problems), wires, problems);
        Set<String> names = new HashSet<>();
        Set<String> twice = new HashSet<>();
        int number = 1;
        for (Node item : written.ports().map(ListNode::items).orElse(List.of())) {
            reader.read(item, number++);
            name(item).map(TextNode::value).filter(name -> !names.add(name)).ifPresent(twice::add);
        }
        if (problems.errorCount() == errorsBefore) {
            reader.kinds.warnOfUnused();
        }
        Ports ports = new Ports(reader.ports);
        return written.supplies()
                .map(list -> new Ports(reader.ports, new SupplyReader(ports, names, twice, wires, problems).read(list)))
                .orElse(ports);
    }

    private static Optional<TextNode> name(Node item) {
        return item instanceof ObjectNode object
                ? object.value(PortFields.NAME.name())
                        .filter(TextNode.class::isInstance)
                        .map(TextNode.class::cast)
                : Optional.empty();
    }

    private void read(Node item, int number) {
        String shown = name(item).map(text -> Quoted.of(text.value())).orElse(String.valueOf(number));
        int errorsBefore = problems.errorCount();
        Optional<Port> port = Fields.of(item, PortFields.PORT, "port " + shown, problems)
                .flatMap(fields -> port(fields, errorsBefore));
        port.ifPresent(ports::add);
        nextUniverse = port.map(Port::runs)
                .map(runs -> runs.get(runs.size() - 1).universe() + 1)
                .orElse(0);
    }

    private Optional<Port> port(Fields fields, int errorsBefore) {
        Optional<TextNode> name = fields.given(PortFields.NAME).filter(names::accept);
        Optional<List<Link>> chain = fields.given(PortFields.CHAIN)
                .flatMap(list -> chains.read(name.map(TextNode::value).orElse(""), list));
        Signal signal = signal(fields);
        Optional<PixelKind> kind =
                fields.given(PortFields.KIND).flatMap(text -> kinds.find(text, signal.colors(), fields.what()));
        Optional<PowerLine> line = fields.given(PortFields.LINE).flatMap(wire -> line(wire, chain));
        Optional<Long> universe = fields.given(PortFields.UNIVERSE);
        int slot = fields.value(PortFields.SLOT).intValue();
        boolean whole = fields.value(PortFields.WHOLE);
        int first = universe.map(Long::intValue).orElse(nextUniverse);
        if (problems.errorCount() > errorsBefore || name.isEmpty() || chain.isEmpty() || first == 0) {
            return Optional.empty();
        }
        int pixels = chain.get().stream().mapToInt(Link::pixelCount).sum();
        Location place = fields.location(universe.isPresent() ? PortFields.UNIVERSE : PortFields.NAME);
        Packing packing = new Packing(Math.min(first, UniverseRun.LAST_UNIVERSE), slot, whole);
        if (!fits(fields, packing, first, pixels, signal.bytesPerPixel(), place)) {
            return Optional.empty();
        }
        Port port = new Port(
                name.get().value(),
                chain.get(),
                signal,
                packing,
                kind,
                line,
                name.get().location());
        boolean ofWrongKind = fields.has(PortFields.KIND) && kind.isEmpty();
        return universes.claim(port, place) && !ofWrongKind ? Optional.of(port) : Optional.empty();
    }

    private Optional<PowerLine> line(Fields wire, Optional<List<Link>> chain) {
        if (chain.isEmpty()) {
            wires.check(wire);
        }
        return chain.flatMap(links -> wires.line(wire, Link.pixels(links)));
    }

    private boolean fits(Fields fields, Packing packing, int first, int pixels, int bytesPerPixel, Location place) {
        if (packing.startsTooLate(bytesPerPixel)) {
            problems.error(
                    fields.location(PortFields.SLOT),
                    "a pixel of " + fields.what() + " takes " + bytesPerPixel + " slots, and from slot "
                            + packing.slot() + " on there are " + (UniverseRun.SLOTS + 1 - packing.slot()),
                    "allowed: up to " + (UniverseRun.SLOTS + 1 - bytesPerPixel) + ", or any with \"whole\": false");
            return false;
        }
        long last = packing.lastUniverse(pixels, bytesPerPixel) + first - packing.universe();
        if (last > UniverseRun.LAST_UNIVERSE) {
            problems.error(
                    place,
                    fields.what() + " takes universes " + first + " to " + last,
                    "the last one there is is " + UniverseRun.LAST_UNIVERSE);
        }
        return last <= UniverseRun.LAST_UNIVERSE;
    }

    private Signal signal(Fields fields) {
        double cap = fields.value(PortFields.CAP);
        Brightness brightness = fields.numbers(PortFields.WHITE, 3, 3, 0, 1)
                .map(factors -> new Brightness(factors[0], factors[1], factors[2], cap))
                .orElse(new Brightness(1, 1, 1, cap));
        Curve curve = fields.node(PortFields.CURVE)
                .flatMap(node -> CurveReader.read(node, fields.label(PortFields.CURVE), problems))
                .orElse(Signal.USUAL.curve());
        ColorOrder colors =
                fields.given(PortFields.COLORS).flatMap(this::colors).orElse(ColorOrder.RGB);
        Signal signal = new Signal(colors, bits(fields), brightness, curve, fields.value(PortFields.DITHER));
        if (fields.given(PortFields.DITHER).orElse(false) && !signal.dither()) {
            problems.error(
                    fields.location(PortFields.DITHER),
                    fields.label(PortFields.DITHER) + " is true, and does nothing"
                            + (signal.bits() == 8 ? " to codes" : " at 16 bits"),
                    "leave it out");
        }
        return signal;
    }

    private Optional<ColorOrder> colors(TextNode written) {
        try {
            return Optional.of(ColorOrder.parse(written.value()));
        } catch (TextFormatException fault) {
            problems.error(written.location(), fault.getMessage(), fault.hint());
            return Optional.empty();
        }
    }

    private int bits(Fields fields) {
        Optional<Node> written = fields.node(PortFields.BITS);
        if (written.isEmpty()) {
            return Signal.USUAL.bits();
        }
        if (written.get() instanceof NumberNode number && (number.value() == 8 || number.value() == 16)) {
            return (int) number.value();
        }
        String found = written.get() instanceof NumberNode number
                ? number.written()
                : written.get().kind();
        problems.error(written.get().location(), fields.label(PortFields.BITS) + " is " + found, "allowed: 8 or 16");
        return Signal.USUAL.bits();
    }
}
