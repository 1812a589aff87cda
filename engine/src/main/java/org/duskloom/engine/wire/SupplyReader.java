package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.ObjectNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** Reads the supplies of a display, and sees to it that each port has one only and gets the volts it is made for. */
final class SupplyReader {
    /** By so much the volts of a supply may differ from those of the pixels: common practice, no source. */
    private static final double VOLTS_TOLERANCE = 0.1;

    private final Ports ports;
    private final Set<String> writtenPorts;
    private final Set<String> twinPorts;
    private final WireReader wires;
    private final Problems problems;
    private final Map<String, Location> names = new HashMap<>();
    private final Map<String, Use> supplyOfPort = new HashMap<>();
    private final List<Supply> supplies = new ArrayList<>();

    /** Which supply feeds a port, and where that is written first. */
    private record Use(Object supply, String name, Location location) {}

    /**
     * A reader.
     *
     * @param ports those without errors
     * @param writtenPorts the names of all that are written; of those with errors nothing is said twice
     * @param twinPorts the names that several have, so that nobody knows which of them is fed
     */
    SupplyReader(Ports ports, Set<String> writtenPorts, Set<String> twinPorts, WireReader wires, Problems problems) {
        this.ports = ports;
        this.writtenPorts = writtenPorts;
        this.twinPorts = twinPorts;
        this.wires = wires;
        this.problems = problems;
    }

    /** All supplies; those with errors are left out. */
    List<Supply> read(ListNode list) {
        int number = 1;
        for (Node item : list.items()) {
            String shown = item instanceof ObjectNode object
                    ? object.value(PowerFields.SUPPLY_NAME.name())
                            .filter(TextNode.class::isInstance)
                            .map(text -> Quoted.of(((TextNode) text).value()))
                            .orElse(String.valueOf(number))
                    : String.valueOf(number);
            int errorsBefore = problems.errorCount();
            Fields.of(item, PowerFields.SUPPLY, "supply " + shown, problems)
                    .flatMap(this::supply)
                    .filter(supply -> problems.errorCount() == errorsBefore)
                    .ifPresent(supplies::add);
            number++;
        }
        return List.copyOf(supplies);
    }

    private Optional<Supply> supply(Fields fields) {
        Optional<TextNode> name = fields.given(PowerFields.SUPPLY_NAME).filter(this::accept);
        Optional<Double> volts = fields.given(PowerFields.SUPPLY_VOLTS);
        Optional<Double> amps = fields.given(PowerFields.AMPS);
        amps.ifPresent(given -> LikelyFigures.warnOfAmps(given, fields, problems));
        double share = fields.value(PowerFields.SHARE);
        List<Feed> feeds = new ArrayList<>();
        for (Node item : fields.given(PowerFields.FEEDS).map(ListNode::items).orElse(List.of())) {
            Fields.of(item, PowerFields.FEED, "a feed of " + fields.what(), problems)
                    .ifPresent(feed -> feeds.addAll(feeds(feed, fields, volts)));
        }
        if (name.isEmpty() || volts.isEmpty() || amps.isEmpty()) {
            return Optional.empty();
        }
        refuseTwice(feeds, fields);
        return Optional.of(new Supply(
                name.get().value(),
                volts.get(),
                amps.get(),
                share,
                feeds,
                name.get().location()));
    }

    private boolean accept(TextNode name) {
        Optional<String> fault = Names.fault(name.value());
        if (fault.isPresent()) {
            problems.error(name.location(), "the supply name " + Quoted.of(name.value()) + " " + fault.get());
            return false;
        }
        Location first = names.putIfAbsent(name.value(), name.location());
        if (first != null) {
            problems.error(
                    name.location(),
                    "two supplies are called " + Quoted.of(name.value()),
                    "the first stands at " + first);
        }
        return first == null;
    }

    private List<Feed> feeds(Fields fields, Fields supply, Optional<Double> volts) {
        Optional<Lead> lead = fields.given(PowerFields.FEED_LEAD).flatMap(wires::lead);
        Optional<TextNode> name = fields.given(PowerFields.PORT);
        if (name.isEmpty() || twinPorts.contains(name.get().value())) {
            return List.of();
        }
        Optional<Port> port = port(name.get());
        boolean claimed = !writtenPorts.contains(name.get().value()) || claim(name.get(), supply);
        if (port.isEmpty() || !claimed) {
            return List.of();
        }
        volts.ifPresent(given -> checkVolts(port.get(), given, supply));
        return places(fields, port.get()).stream()
                .map(pixel -> new Feed(port.get().name(), pixel, lead))
                .toList();
    }

    private Optional<Port> port(TextNode name) {
        Optional<Port> port = ports.port(name.value());
        if (port.isEmpty() && !writtenPorts.contains(name.value())) {
            problems.error(
                    name.location(),
                    "there is no port " + Quoted.of(name.value()),
                    writtenPorts.isEmpty()
                            ? "\"ports\" of the display says what ports there are, and it has none"
                            : NearestName.hint(name.value(), writtenPorts));
        }
        return port;
    }

    private boolean claim(TextNode port, Fields supply) {
        Use use = new Use(supply, supply.what(), port.location());
        Use first = supplyOfPort.putIfAbsent(port.value(), use);
        if (first == null || first.supply == supply) {
            return true;
        }
        problems.error(
                port.location(),
                "port " + Quoted.of(port.value()) + " is fed by two supplies: " + first.name + " and " + use.name,
                "the first time at " + first.location + "; supplies that are not made for it must not be joined");
        return false;
    }

    /** From far too much pixels break at once; with far too little they stay dark. */
    private void checkVolts(Port port, double volts, Fields supply) {
        double made = port.pixelKind().volts();
        if (Math.abs(volts - made) <= VOLTS_TOLERANCE * made) {
            return;
        }
        String needs = port.kind()
                .map(kind -> ", whose pixels of kind " + Quoted.of(kind.name()) + " are made for "
                        + ShortestDecimal.of(made) + " V")
                .orElse("; that port has no \"kind\", and its pixels are taken for such of " + ShortestDecimal.of(made)
                        + " V");
        problems.error(
                supply.location(PowerFields.SUPPLY_VOLTS),
                supply.what() + " gives " + ShortestDecimal.of(volts) + " V to port " + Quoted.of(port.name()) + needs,
                "give the port the \"kind\" of its pixels, or the supply their \"volts\"");
    }

    /** From 0. */
    private List<Integer> places(Fields fields, Port port) {
        if (!fields.has(PowerFields.AT)) {
            return List.of(0);
        }
        List<Integer> places = new ArrayList<>();
        for (Node item : fields.given(PowerFields.AT).map(ListNode::items).orElse(List.of())) {
            place(item, "an item of " + fields.label(PowerFields.AT), port)
                    .ifPresent(place -> places.add((int) place - 1));
        }
        return places;
    }

    private OptionalLong place(Node item, String what, Port port) {
        int pixels = port.pixelCount();
        if (item instanceof NumberNode number
                && number.value() == Math.rint(number.value())
                && (number.value() < 1 || number.value() > pixels)) {
            problems.error(
                    item.location(),
                    what + " is " + number.written() + ", and the chain of port " + Quoted.of(port.name()) + " has "
                            + Counted.of(pixels, "pixel"),
                    "allowed: 1 to " + pixels);
            return OptionalLong.empty();
        }
        return Expected.whole(item, what, 1, pixels, problems);
    }

    private void refuseTwice(List<Feed> feeds, Fields fields) {
        Set<String> seen = new HashSet<>();
        Set<String> told = new HashSet<>();
        for (Feed feed : feeds) {
            String place = feed.port() + "/" + feed.pixel();
            if (!seen.add(place) && told.add(place)) {
                problems.error(
                        fields.location(PowerFields.FEEDS),
                        fields.what() + " feeds pixel " + (feed.pixel() + 1) + " of port " + Quoted.of(feed.port())
                                + " twice",
                        "of two cables to one pixel add the \"mm2\"");
            }
        }
    }
}
