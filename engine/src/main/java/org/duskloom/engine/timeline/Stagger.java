package org.duskloom.engine.timeline;

import java.util.Objects;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.time.Lapse;

/**
 * How the starts of a cue's members are spread over time. Each member plays the cue by its own clock: its effect, its
 * settings that move, its opacity and its fades count from its own start. All end when the cue ends; what a late member
 * has not played by then is cut.
 *
 * @param by along what
 * @param time by members, part or prop: from one to the next; by position: from the first member to the last
 * @param location where it stands
 */
public record Stagger(StaggerBy by, Lapse time, Location location) {
    public Stagger {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(location, "location");
    }

    Stagger withoutLocation() {
        return new Stagger(by, time, Location.ofFile(""));
    }
}
