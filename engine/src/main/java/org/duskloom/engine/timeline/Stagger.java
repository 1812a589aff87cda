package org.duskloom.engine.timeline;

import java.util.Objects;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.ExactTime;

/**
 * How the starts of a cue's members are spread over time.
 *
 * @param by along what
 * @param time by members: from one member to the next; by position: from the first member to the last
 * @param location where it stands
 */
public record Stagger(StaggerBy by, ExactTime time, Location location) {
    public Stagger {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(location, "location");
    }
}
