package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Caps of ports that share a supply. White takes 4 x 30 mA of light on the fence and 2 x 30 mA on the post; 5
 * and 2 mA flow in the dark, and 80 % of a supply may be used.
 */
class CapAdviceTest {
    private static final String POST = "{\"name\": \"right\", \"chain\": [\"post\"], \"kind\": \"bullet\"}";

    @TempDir
    private Path folder;

    /** 0.8 x 0.15 A less 7 mA are 113 mA for 180 mA of light: 0.6278, and no port is treated better. */
    @Test
    void lowersAllPortsOfASupplyAlike() throws IOException {
        assertThat(advice(POST, supply("shed", 0.15, "left", "right")).get(0).ports())
                .extracting(port -> port.port().name(), CapAdvice.PortCap::cap)
                .containsExactly(tuple("left", 0.62), tuple("right", 0.62));
    }

    /** The post capped at a half takes 30 mA: 113 of 150 mA are 0.7533, and 0.37 for the post. */
    @Test
    void keepsPortsAsBrightBesideEachOtherAsTheyAre() throws IOException {
        String capped = POST.replace("}", ", \"cap\": 0.5}");
        assertThat(advice(capped, supply("shed", 0.15, "left", "right")).get(0).ports())
                .extracting(port -> port.port().name(), CapAdvice.PortCap::cap)
                .containsExactly(tuple("left", 0.75), tuple("right", 0.37));
    }

    /** What another supply feeds is left in peace: 0.8 x 0.1 A less 5 mA are 75 mA for 120 mA. */
    @Test
    void leavesPortsOfOtherSuppliesAsTheyAre() throws IOException {
        List<CapAdvice> advice = advice(POST, supply("shed", 0.1, "left") + ", " + supply("arbour", 1, "right"));
        assertThat(advice).extracting(each -> each.supply().supply().name()).containsExactly("shed", "arbour");
        assertThat(advice.get(0).ports())
                .extracting(port -> port.port().name(), CapAdvice.PortCap::cap)
                .containsExactly(tuple("left", 0.62));
        assertThat(advice.get(0).isKept()).isFalse();
        assertThat(advice.get(1).isKept()).isTrue();
        assertThat(advice.get(1).ports()).isEmpty();
    }

    /** What is written down after advice keeps within the share: the same show once more, with the caps. */
    @Test
    void holdsWhenItIsTaken() throws IOException {
        String post = POST.replace("}", ", \"cap\": 0.62}");
        String fence = Reported.FENCE.replace("}}", "}, \"cap\": 0.62}");
        assertThat(CapAdvice.of(report(fence, post, supply("shed", 0.15, "left", "right"))))
                .singleElement()
                .satisfies(after -> assertThat(after.isKept()).isTrue());
    }

    private List<CapAdvice> advice(String post, String supplies) throws IOException {
        return CapAdvice.of(report(Reported.FENCE, post, supplies));
    }

    private Report report(String fence, String post, String supplies) throws IOException {
        return Reported.of(folder, Reported.KIND + Reported.ports(fence, post) + ", \"supplies\": [" + supplies + "]")
                .report();
    }

    private static String supply(String name, double amps, String... ports) {
        List<String> feeds = List.of(ports).stream()
                .map(port -> "{\"port\": \"" + port + "\", \"at\": [1]}")
                .toList();
        return "{\"name\": \"" + name + "\", \"volts\": 12, \"amps\": " + amps + ", \"feeds\": " + feeds + "}";
    }
}
