package org.duskloom.engine.report;

import java.util.List;

/** What stands in every report: what such figures are, what they are not, and who decides. */
public final class Caution {
    /** In one line. */
    public static final String SHORT =
            "estimates, no permission: mains, fire, heat, water and flashing light are for local codes and licensed people";

    /** One matter each. */
    public static final List<String> LINES = List.of(
            "These are estimates from what the display says and from nominal wire. They are not an electrical design, and"
                    + " no figure here gives leave to switch anything on.",
            "Mains can kill. Follow the local electrical code and the instructions of the equipment, and leave mains wiring"
                    + " to a licensed electrician.",
            "Currents of this size can set fire to wires, plugs and props that are too thin, loose, coiled up or covered."
                    + " Size fuses and wires for the worst case; a controller that hangs may light everything at full, whatever"
                    + " \"cap\" says.",
            "Outdoors, use only what is made for it, keep supplies dry and cool, and let a residual-current device guard"
                    + " the mains.",
            "Flashing light can cause seizures. Passing a check is no guarantee for anyone.");

    private Caution() {}
}
