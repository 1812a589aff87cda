package org.duskloom.engine.wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.document.Expected;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.text.ShortestDecimal;

/** Reads the kinds of pixels of a display, and finds them for ports. */
final class KindReader {
    private static final Pattern RESET = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(us|ms)");
    private static final double LONGEST_RESET_MICROS = 100_000;
    private static final int MOST_MILLIAMPS = 1000;

    private final Problems problems;

    /** All kinds that are written; nothing where one is wrong. */
    private final Map<String, Optional<PixelKind>> kinds = new HashMap<>();

    /** Those that no port has named so far. */
    private final Map<String, Location> unused = new LinkedHashMap<>();

    KindReader(List<Field> written, Problems problems) {
        this.problems = problems;
        for (Field field : written) {
            kinds.put(field.name(), read(field));
            unused.put(field.name(), field.nameLocation());
        }
    }

    /**
     * The kind of a port; an error if there is none of that name, or it has not the colours of the port.
     *
     * @param port what the port is, for messages
     */
    Optional<PixelKind> find(TextNode name, ColorOrder colors, String port) {
        unused.remove(name.value());
        if (!kinds.containsKey(name.value())) {
            String hint = kinds.isEmpty()
                    ? "\"kinds\" of the display says what kinds there are, and it has none"
                    : NearestName.hint(name.value(), kinds.keySet());
            problems.error(name.location(), "there is no kind " + Quoted.of(name.value()), hint);
            return Optional.empty();
        }
        Optional<PixelKind> kind = kinds.get(name.value());
        if (kind.isPresent() && kind.get().milliamps().size() != colors.count()) {
            problems.error(
                    name.location(),
                    "kind " + Quoted.of(name.value()) + " says what "
                            + kind.get().milliamps().size() + " colours draw, and " + port + " has " + colors.count()
                            + ": " + colors,
                    "\"milliamps\" has a number for each of them, in this order");
            return Optional.empty();
        }
        return kind;
    }

    /** Warns of kinds that no port names; to be called when all ports have been read. */
    void warnOfUnused() {
        unused.forEach((name, location) -> problems.warn(location, "no port is of the kind " + Quoted.of(name), ""));
    }

    private Optional<PixelKind> read(Field field) {
        String what = "kind " + Quoted.of(field.name());
        Optional<String> fault = Names.fault(field.name());
        if (fault.isPresent()) {
            problems.error(field.nameLocation(), "the name " + Quoted.of(field.name()) + " of a kind " + fault.get());
            return Optional.empty();
        }
        int errorsBefore = problems.errorCount();
        Optional<PixelKind> kind = Fields.of(field.value(), PowerFields.KIND, what, problems)
                .flatMap(fields -> kind(field.name(), fields));
        return problems.errorCount() == errorsBefore ? kind : Optional.empty();
    }

    private Optional<PixelKind> kind(String name, Fields fields) {
        Optional<Double> volts = fields.given(PowerFields.KIND_VOLTS);
        Optional<double[]> milliamps = fields.numbers(PowerFields.COLORS, 3, 4, 0, MOST_MILLIAMPS);
        Optional<Double> least = fields.given(PowerFields.LEAST);
        DataLine line = new DataLine(fields.value(PowerFields.KILOBITS), reset(fields));
        double idle = fields.value(PowerFields.IDLE);
        milliamps.ifPresent(colors -> LikelyFigures.warnOfColors(colors, fields, problems));
        LikelyFigures.warnOfIdle(idle, fields, problems);
        if (volts.isEmpty() || milliamps.isEmpty()) {
            return Optional.empty();
        }
        if (least.isPresent() && least.get() > volts.get()) {
            problems.error(
                    fields.location(PowerFields.LEAST),
                    fields.label(PowerFields.LEAST) + " is " + ShortestDecimal.of(least.get())
                            + ", which is more than its \"volts\"",
                    "allowed: up to " + ShortestDecimal.of(volts.get()));
        }
        List<Double> colors = new ArrayList<>();
        for (double color : milliamps.get()) {
            colors.add(color);
        }
        OptionalDouble leastVolts = least.isPresent() ? OptionalDouble.of(least.get()) : OptionalDouble.empty();
        return Optional.of(new PixelKind(name, volts.get(), colors, idle, leastVolts, line, assumed(fields)));
    }

    private static List<String> assumed(Fields fields) {
        List<String> assumed = new ArrayList<>();
        if (!fields.has(PowerFields.IDLE)) {
            assumed.add("1 mA idle");
        }
        if (!fields.has(PowerFields.KILOBITS)) {
            assumed.add("800 kbit/s");
        }
        if (!fields.has(PowerFields.RESET)) {
            assumed.add("280 us between frames");
        }
        return assumed;
    }

    private double reset(Fields fields) {
        double usual = DataLine.USUAL.resetMicros();
        return fields.node(PowerFields.RESET)
                .flatMap(node -> micros(node, fields.label(PowerFields.RESET)))
                .orElse(usual);
    }

    private Optional<Double> micros(Node node, String what) {
        Optional<TextNode> text = Expected.text(node, what, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher time = RESET.matcher(text.get().value());
        if (!time.matches()) {
            problems.error(
                    node.location(),
                    what + " is " + Quoted.of(text.get().value()),
                    "write a number and us or ms, such as \"280us\"");
            return Optional.empty();
        }
        double micros = Double.parseDouble(time.group(1)) * (time.group(2).equals("ms") ? 1000 : 1);
        if (micros > LONGEST_RESET_MICROS) {
            problems.error(node.location(), what + " is " + text.get().value(), "allowed: up to 100ms");
        }
        return Optional.of(micros);
    }
}
