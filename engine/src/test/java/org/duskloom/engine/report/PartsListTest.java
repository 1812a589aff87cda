package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What to buy and to cut, measured on paper: the fence has its pixels at 0, 1, 2 and 3 m, the post stands 1 m
 * to the left of it and has its two pixels 1 m apart.
 */
class PartsListTest {
    @TempDir
    private Path folder;

    /** From fence to post it is 4 m: 3 + 4 + 1 m, and a tenth more. */
    @Test
    void measuresADataLineFromPlaceToPlace() throws IOException {
        String port = "{\"name\": \"all\", \"chain\": [\"fence\", \"post\"]}";
        PartLine line = only(parts(Reported.ports(port)), "data line");
        assertThat(line.item()).isEqualTo("port all");
        assertThat(line.count()).isCloseTo(8.8, within(1e-9));
        assertThat(line.unit()).isEqualTo("m");
        assertThat(line.note()).startsWith("from place to place, and a tenth more");
    }

    /** A pixel of which nobody knows the place adds no way: from the last of the fence straight to the post. */
    @Test
    void passesOverPixelsWithoutAPlace() throws IOException {
        String port = "{\"name\": \"all\", \"chain\": [{\"skip\": 2}, \"fence\", {\"skip\": 3}, \"post\"]}";
        List<PartLine> parts = parts(Reported.ports(port));
        assertThat(only(parts, "data line").count()).isCloseTo(8.8, within(1e-9));
        assertThat(only(parts, "pixels").count()).isEqualTo(11);
        assertThat(only(parts, "pixels").note()).isEqualTo("5 of them stay dark on the line");
    }

    /** Said lengths are taken as they are: four segments of 1 m, for data once and for power twice. */
    @Test
    void takesLengthsThatAreSaid() throws IOException {
        List<PartLine> parts = parts(Reported.KIND + Reported.ports(Reported.FENCE));
        assertThat(only(parts, "data line").count()).isCloseTo(4, within(1e-9));
        assertThat(only(parts, "data line").note()).startsWith("as the display says");
        assertThat(only(parts, "supply wire, from pixel to pixel").count()).isCloseTo(8, within(1e-9));
    }

    /** Leads of one size are cut from one reel: 2 x (2 + 3) m, and a tenth more; another size is another line. */
    @Test
    void addsUpLeadsBySize() throws IOException {
        String feeds = lead(1, "1.5", 2000) + ", " + lead(3, "1.5", 3000) + ", " + lead(5, "2.5", 500);
        List<PartLine> leads = parts(Reported.KIND + Reported.ports(Reported.FENCE)
                        + ", \"supplies\": [{\"name\": \"shed\", \"volts\": 12, \"amps\": 2.5, \"feeds\": ["
                        + feeds + "]}]")
                .stream()
                .filter(part -> part.group().equals("supply wire, leads"))
                .toList();
        assertThat(leads).extracting(PartLine::item).containsExactly("1.5 mm2", "2.5 mm2");
        assertThat(leads.get(0).count()).isCloseTo(11, within(1e-9));
        assertThat(leads.get(0).note()).endsWith("; 2 leads");
        assertThat(leads.get(1).count()).isCloseTo(1.1, within(1e-9));
        assertThat(leads.get(1).note()).endsWith("; 1 lead");
    }

    /** A supply is named with what is printed on it. */
    @Test
    void namesSupplies() throws IOException {
        PartLine supply =
                only(parts(Reported.KIND + Reported.ports(Reported.FENCE) + ", " + Reported.supply(12.5)), "supplies");
        assertThat(supply.item()).endsWith(": 12 V, 12.5 A");
        assertThat(supply.count()).isEqualTo(1);
        assertThat(supply.note()).isEqualTo("feeds 2 places");
    }

    private List<PartLine> parts(String fields) throws IOException {
        return Reported.of(folder, fields).report().parts();
    }

    private static PartLine only(List<PartLine> parts, String group) {
        List<PartLine> found =
                parts.stream().filter(part -> part.group().equals(group)).toList();
        assertThat(found).as(group).hasSize(1);
        return found.get(0);
    }

    private static String lead(int pixel, String size, int length) {
        return "{\"port\": \"left\", \"at\": [" + pixel + "], \"lead\": {\"mm2\": " + size + ", \"length\": " + length
                + "}}";
    }
}
