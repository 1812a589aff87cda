package org.duskloom.engine.wire;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.LookAlike;
import org.duskloom.engine.text.Quoted;

/** The names of the ports of one display. Each is the name of a file too, on any system. */
final class PortNames {
    /** Kept by Windows for devices, whatever follows after a dot; raised digits 1 to 3 count as digits. */
    private static final Pattern DEVICE =
            Pattern.compile("(?i)(con|prn|aux|nul|(com|lpt)[0-9\u00B9\u00B2\u00B3])(\\..*)?");

    private static final Pattern NOT_IN_FILE_NAMES = Pattern.compile("[\\\\:<>\"|]|\\.$");

    private final Problems problems;
    private final Map<String, TextNode> byFileName = new HashMap<>();

    PortNames(Problems problems) {
        this.problems = problems;
    }

    /** Whether a port may have that name; an error if not. */
    boolean accept(TextNode name) {
        Optional<String> fault = fault(name.value());
        if (fault.isPresent()) {
            problems.error(name.location(), "the port name " + Quoted.of(name.value()) + " " + fault.get());
            return false;
        }
        TextNode first = byFileName.putIfAbsent(LookAlike.composed(name.value()).toLowerCase(Locale.ROOT), name);
        if (first == null) {
            return true;
        }
        Location there = first.location();
        if (first.value().equals(name.value())) {
            problems.error(
                    name.location(), "two ports are called " + Quoted.of(name.value()), "the first stands at " + there);
        } else {
            String how = LookAlike.are(first.value(), name.value())
                    ? " look the same: a letter with its mark is one character in one, and two in the other"
                    : " differ by upper and lower case"
                            + (first.value().equalsIgnoreCase(name.value()) ? "" : " and by how accents are stored")
                            + " only";
            problems.error(
                    name.location(),
                    "the port names " + Quoted.of(first.value()) + " and " + Quoted.of(name.value()) + how,
                    "the first stands at " + there + "; their files would be one on many disks");
        }
        return false;
    }

    private static Optional<String> fault(String name) {
        if (NOT_IN_FILE_NAMES.matcher(name).find()) {
            return Optional.of("cannot be the name of a file: no \\ : < > \" | and no dot at its end");
        }
        if (DEVICE.matcher(name).matches()) {
            return Optional.of("cannot be the name of a file: Windows keeps it for a device");
        }
        return Names.fault(name);
    }
}
