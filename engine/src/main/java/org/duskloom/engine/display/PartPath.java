package org.duskloom.engine.display;

import java.util.Optional;
import org.duskloom.engine.map.Names;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** The path of a part within its shape: names with slashes between them, the outer first. */
final class PartPath {
    /** One less than a pixel map allows, so that a numbered part fits inside. */
    private static final int MAX_NAMES = 15;

    private PartPath() {}

    /** Whether it can be a path; else an error is added. */
    static boolean isSound(String path, Location location, Problems problems) {
        String[] names = path.split("/", -1);
        for (String name : names) {
            Optional<String> fault = Names.fault(name);
            if (fault.isPresent()) {
                String message = names.length == 1
                        ? "the part name " + Quoted.of(path) + " " + fault.get()
                        : "a part name of " + Quoted.of(path) + " " + fault.get();
                problems.error(location, message, "parts are nested with /, as in petals/1");
                return false;
            }
        }
        if (names.length > MAX_NAMES) {
            problems.error(location, Quoted.of(path) + " is nested deeper than " + MAX_NAMES);
            return false;
        }
        return true;
    }

    /** The path of the part round it; empty where there is none. */
    static String parent(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('/')));
    }

    /** The name at its end. */
    static String name(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
