package org.duskloom.engine.wire;

import java.util.List;
import java.util.Objects;
import org.duskloom.engine.problem.Location;

/**
 * A power supply with the ports that it feeds.
 *
 * @param name its name
 * @param volts what it gives, whatever is drawn
 * @param amps what it may give, as it says of itself
 * @param share how much of that is to be used, above 0 and up to 1
 * @param feeds at which pixels it feeds which ports; at least one
 * @param definedAt where its name stands
 */
public record Supply(String name, double volts, double amps, double share, List<Feed> feeds, Location definedAt) {
    /** How much of a supply is used where nothing is written: common practice, no source. */
    public static final double USUAL_SHARE = 0.8;

    public Supply {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(definedAt, "definedAt");
        feeds = List.copyOf(feeds);
    }

    /** How many amperes are to be drawn at most. */
    public double allowedAmps() {
        return share * amps;
    }

    /** The feeds of one port, in the order of the file. */
    public List<Feed> feedsOf(String port) {
        return feeds.stream().filter(feed -> feed.port().equals(port)).toList();
    }

    /** Whether it feeds that port. */
    public boolean feeds(String port) {
        return feeds.stream().anyMatch(feed -> feed.port().equals(port));
    }
}
