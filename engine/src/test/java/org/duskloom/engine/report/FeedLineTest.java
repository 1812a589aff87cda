package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.report.page.ReportPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Five pixels of 1 mA idle, four of which draw 30 mA more when white: 125 mA, all of it through a single feed;
 * with everything on the one that is passed over is lit too: 155 mA.
 */
class FeedLineTest {
    private static final String WITHOUT_LINE =
            Reported.FENCE.replace(", \"line\": {\"mm2\": 0.5, \"pitch\": 1000}", "");

    @TempDir
    private Path folder;

    private List<FeedLine> lines(String port, String feeds) throws IOException {
        return FeedLine.of(report(port, feeds));
    }

    private Report report(String port, String feeds) throws IOException {
        return reported(port, feeds).report();
    }

    private Reported reported(String port, String feeds) throws IOException {
        String supply =
                "\"supplies\": [{\"name\": \"shed\", \"volts\": 12, \"amps\": 0.1, \"feeds\": [" + feeds + "]}]";
        return Reported.of(folder, Reported.KIND + Reported.ports(port) + ", " + supply);
    }

    @Test
    void aSingleFeedCarriesAllOfAPortWhateverItsLine() throws IOException {
        assertThat(WITHOUT_LINE).doesNotContain("line");
        String feed = "{\"port\": \"left\", \"at\": [2], \"lead\": {\"mm2\": 1.5, \"length\": 4000}}";
        for (String port : List.of(WITHOUT_LINE, Reported.FENCE)) {
            List<FeedLine> lines = lines(port, feed);
            assertThat(lines).hasSize(1);
            assertThat(lines.get(0).feed().pixel()).isEqualTo(1);
            assertThat(lines.get(0).volts()).isEqualTo(12);
            assertThat(lines.get(0).figures().orElseThrow().peakAmps()).isCloseTo(0.125, within(1e-9));
            assertThat(lines.get(0).figures().orElseThrow().fullAmps()).isCloseTo(0.155, within(1e-9));
        }
    }

    @Test
    void howSeveralFeedsShareIsNotKnownWithoutALine() throws IOException {
        String feeds = "{\"port\": \"left\", \"at\": [1, 4]}";
        assertThat(lines(WITHOUT_LINE, feeds))
                .hasSize(2)
                .allMatch(line -> line.figures().isEmpty());
        assertThat(lines(Reported.FENCE, feeds))
                .hasSize(2)
                .allMatch(line -> line.figures().isPresent());
        Reported reported = reported(WITHOUT_LINE, feeds);
        assertThat(ReportTables.of(reported.report(), reported.show().map(), CsvStyle.COMMAS)
                        .get("feeds.csv"))
                .endsWith("\nleft,1,,,,,,\nleft,4,,,,,,\n");
        assertThat(ReportPage.of(reported.report())).contains("<h2>Feeds</h2>", "not known: it has no ");
    }

    /** A supply of 0.1 A cannot give 0.125 A, which is told as long as the report is of the show. */
    @Test
    void saysWhichSuppliesCouldNotGiveEverything() throws IOException {
        Report report = report(WITHOUT_LINE, "{\"port\": \"left\", \"at\": [1]}");
        assertThat(report.power().supplies()).singleElement().matches(supply -> Concern.couldNotGive(report, supply));
        assertThat(ReportPage.of(report))
                .contains("One thing is beyond its limit, and with everything on there would be more.")
                .contains("Supply shed could not give 0.16", "which a controller that hangs may ask for; it gives 0.10")
                .contains("more than it gives");
        Report enough = Reported.of(
                        folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(0.2))
                .report();
        assertThat(enough.power().supplies()).singleElement().matches(supply -> !Concern.couldNotGive(enough, supply));
    }

    /** Of everything on the report itself says what it needs: that is no "could" any more. */
    @Test
    void whereEverythingIsOnNothingIsLeftToFear() throws IOException {
        Report all = Reported.everythingOn(
                        folder, Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(0.1))
                .report();
        assertThat(all.power().supplies())
                .singleElement()
                .matches(supply -> supply.fullAmps() > supply.supply().amps())
                .matches(supply -> !Concern.couldNotGive(all, supply));
    }
}
