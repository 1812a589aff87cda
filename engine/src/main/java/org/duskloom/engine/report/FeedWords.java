package org.duskloom.engine.report;

import java.util.Locale;
import org.duskloom.engine.meter.LeadFigures;
import org.duskloom.engine.wire.Feed;
import org.duskloom.engine.wire.Lead;

/** What is said of the cables that feed a line, wherever it is said. */
public final class FeedWords {
    /** Stands beside {@link #compared}. */
    public static final String CAUTION =
            "To compare, not as advice: circuits whose power is limited are protected by 5 A at most up to 20 V, and by"
                    + " 100 VA up to 30 V, as a note on UL 508 in a machine's manual says; at 12 V a fuse of 5 A lets 60 W pass. A"
                    + " fuse has to open before its wire is overloaded. Which limits hold is for the local code.";

    private static final double LOW_VOLTS = 20;
    private static final double LOW_AMPS = 5;
    private static final double LIMITED_VOLTS = 30;
    private static final double LIMITED_WATTS = 100;

    private FeedWords() {}

    /** Its size and length: {@code 1.5 mm2, 4.00 m}. */
    public static String wire(Feed feed) {
        return feed.lead().map(FeedWords::wire).orElse("not said");
    }

    private static String wire(Lead lead) {
        return lead.conductor().name() + String.format(Locale.ROOT, ", %.2f m", lead.metres());
    }

    /**
     * Its peak, and what flows with all on, beside what protects a circuit whose power is limited; empty where there is
     * no such circuit.
     *
     * @param volts what its supply gives
     */
    public static String compared(double volts, LeadFigures lead) {
        if (volts > LIMITED_VOLTS) {
            return "";
        }
        double limit = volts <= LOW_VOLTS ? LOW_AMPS : LIMITED_WATTS / volts;
        String amps = String.format(Locale.ROOT, "%.2f A", limit);
        if (lead.peakAmps() > limit) {
            return "more than " + amps;
        }
        return lead.fullAmps() > limit ? "peak within " + amps + ", all on more" : "within " + amps;
    }
}
