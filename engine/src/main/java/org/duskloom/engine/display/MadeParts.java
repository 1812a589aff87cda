package org.duskloom.engine.display;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.duskloom.engine.map.Part;

/**
 * The parts that build steps make. Steps that name the same part share it; a pixel of an inner part is a pixel of
 * those round it. Lines get the next numbers that are free.
 */
final class MadeParts {
    private final Map<String, List<int[]>> stretches = new HashMap<>();
    private final Map<String, Integer> highestNumbers = new HashMap<>();

    /** Adds the pixels of a step to the part of that path, and its lines to numbered parts inside. */
    void add(String path, int firstPixel, int pixelCount, List<int[]> lines) {
        int[] all = IntStream.range(firstPixel, firstPixel + pixelCount).toArray();
        for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
            addTo(path.substring(0, slash), all);
        }
        addTo(path, all);
        for (int[] line : lines) {
            int number = highestNumbers.getOrDefault(path, 0) + 1;
            addTo(
                    path + "/" + number,
                    Arrays.stream(line).map(pixel -> firstPixel + pixel).toArray());
        }
    }

    private void addTo(String path, int[] pixels) {
        stretches.computeIfAbsent(path, key -> new ArrayList<>()).add(pixels);
        int slash = path.lastIndexOf('/');
        String name = path.substring(slash + 1);
        if (slash > 0 && name.matches("[1-9][0-9]{0,6}")) {
            highestNumbers.merge(path.substring(0, slash), Integer.valueOf(name), Math::max);
        }
    }

    /** The pixels of every part by its path. */
    TreeMap<String, int[]> byPath() {
        TreeMap<String, int[]> joined = new TreeMap<>();
        stretches.forEach((path, list) ->
                joined.put(path, list.stream().flatMapToInt(Arrays::stream).toArray()));
        return joined;
    }

    /** The same for parts that are made already. */
    static TreeMap<String, int[]> byPath(List<Part> parts) {
        TreeMap<String, int[]> byPath = new TreeMap<>();
        collect(parts, "", byPath);
        return byPath;
    }

    private static void collect(List<Part> parts, String prefix, Map<String, int[]> byPath) {
        for (Part part : parts) {
            byPath.put(prefix + part.name(), part.pixels());
            collect(part.children(), prefix + part.name() + "/", byPath);
        }
    }
}
