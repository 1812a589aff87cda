package org.duskloom.engine.timeline;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;

/**
 * The scenes of a timeline. Where beats are not everywhere as long, the times in a scene depend on where it is played:
 * it is then read anew for each start. For one thread.
 */
public final class Scenes {
    private final Map<String, Scene> byName;
    private final Optional<Reader> reader;
    private final Map<Start, Scene> read = new HashMap<>();

    /** A scene from a start on. */
    private record Start(String name, ExactTime at) {}

    /** Reads a scene as it is from a start on. */
    interface Reader {
        Scene read(String name, ExactTime start, Problems problems);
    }

    /** @param reader nothing if scenes are the same wherever they are played */
    Scenes(Map<String, Scene> byName, Optional<Reader> reader) {
        this.byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
        this.reader = reader;
    }

    /** All of them, as they are where they start on the first beat. */
    public Collection<Scene> all() {
        return byName.values();
    }

    /** The scene of a name; nothing if there is none that can be played. */
    public Optional<Scene> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * The scene as it is from a start on.
     *
     * @param start by the clock of the show
     * @param problems where an error goes that there is only from that start on
     */
    public Scene startingAt(Scene scene, ExactTime start, Problems problems) {
        Objects.requireNonNull(start, "start");
        Start key = new Start(scene.name(), start);
        return reader.map(anew -> read.computeIfAbsent(key, missing -> named(scene, start, anew, problems)))
                .orElse(scene);
    }

    private static Scene named(Scene scene, ExactTime start, Reader anew, Problems problems) {
        Scene there = anew.read(scene.name(), start, problems);
        return new Scene(scene.name(), scene.location(), there.length(), scene.same(), there.layers(), scene.names());
    }
}
