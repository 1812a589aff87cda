package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code render --as ports,packets}, and what {@code check} says of ports. */
class PortsRenderTest {
    @TempDir
    private Path folder;

    @Test
    void writesPortsAndPacketsInOnePass() throws IOException {
        Path show = WiredGarden.show(
                folder,
                200,
                40,
                "{\"name\": \"left\", \"chain\": [\"fence\"], \"colors\": \"GRB\", \"curve\": \"codes\"}");
        Path out = folder.resolve("out");
        Ran ran = Ran.with("render", show, "-o", out, "--as", "packets,rgb,ports");
        assertThat(ran.code()).as(ran.err()).isZero();
        byte[] rgb = Files.readAllBytes(out.resolve("frames.rgb"));
        byte[] left = Files.readAllBytes(out.resolve("ports/left.bin"));
        for (int pixel = 0; pixel < 200 * 80; pixel++) {
            assertThat(left[3 * pixel]).isEqualTo(rgb[3 * pixel + 1]);
            assertThat(left[3 * pixel + 1]).isEqualTo(rgb[3 * pixel]);
            assertThat(left[3 * pixel + 2]).isEqualTo(rgb[3 * pixel + 2]);
        }
        byte[] packets = Files.readAllBytes(out.resolve("packets.pcap"));
        int secondFrame = 24 + 58 + 126 + 510 + 58 + 126 + 90;
        assertThat(packets).hasSize(24 + 83 * (secondFrame - 24));
        assertThat(Arrays.copyOfRange(packets, secondFrame + 58 + 126, secondFrame + 58 + 126 + 510))
                .isEqualTo(Arrays.copyOfRange(left, 600, 1110));
        assertThat(Files.readAllLines(out.resolve("patch.csv"))).hasSize(201).contains("left,fence,171,2,1,GRB");
        assertThat(Files.readString(out.resolve("frames.json")))
                .contains("\"file\": \"packets.pcap\"", "\"file\": \"ports/left.bin\"", "\"file\": \"patch.csv\"");
    }

    /** As of 'map' and 'sheet': for spreadsheets that take a comma for a decimal sign. */
    @Test
    void thePatchMayHaveSemicolons() throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        Path out = folder.resolve("out");
        assertThat(Ran.with("render", show, "-o", out, "--as", "ports", "--semicolons")
                        .code())
                .isZero();
        assertThat(Files.readAllLines(out.resolve("patch.csv")))
                .startsWith("\uFEFFport;prop;pixel;universe;slot;colors", "left;fence;1;1;1;RGB");
        Path proof = folder.resolve("proof");
        Ran proved =
                Ran.with("proof", folder.resolve("display.json"), "-o", proof, "--as", "ports,packets", "--semicolons");
        assertThat(proved.code()).as(proved.err()).isZero();
        assertThat(proof.resolve("patch.csv")).hasSameBinaryContentAs(out.resolve("patch.csv"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"render", "proof"})
    void semicolonsAreForTables(String command) throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        Ran ran = Ran.with(command, show, "-o", folder.resolve("out"), "--semicolons");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("--semicolons says how tables are written, and --as asks for none; one comes with ports");
    }

    /** A player that takes all files of the folder must not find one of an earlier night. */
    @Test
    void nothingIsLeftOfAPortThatHasAnotherName() throws IOException {
        Path out = folder.resolve("out");
        for (String name : List.of("left", "right")) {
            Path show = WiredGarden.show(folder, 20, 40, "{\"name\": \"" + name + "\", \"chain\": [\"fence\"]}");
            assertThat(Ran.with("render", show, "-o", out, "--as", "rgb,ports", "--force")
                            .code())
                    .isZero();
        }
        assertThat(out.resolve("ports").toFile().list()).containsExactly("right.bin");
        Path joined = folder.resolve("joined");
        Files.createDirectories(joined.resolve("ports"));
        Files.writeString(joined.resolve("ports/left.bin"), "old");
        assertThat(Ran.with("join", out, "-o", joined, "--force").code()).isZero();
        assertThat(joined.resolve("ports").toFile().list()).containsExactly("right.bin");
        assertThat(joined.resolve("ports/right.bin")).hasSameBinaryContentAs(out.resolve("ports/right.bin"));
    }

    @Test
    void refusesADisplayWithoutPorts() throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "rgb,ports")
                .without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("display.json: error: the display has no \"ports\", and --as ports needs them");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void refusesAMapWithoutPorts() throws IOException {
        Path show = Garden.in(folder);
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "packets")
                .without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("map.csv: error: a pixel map has no ports, and --as packets needs them");
    }

    @Test
    void wrongPortsStopEverything() throws IOException {
        Path show = WiredGarden.show(
                folder,
                20,
                40,
                "{\"name\": \"a\", \"chain\": [\"fence\"], \"slot\": 513}, {\"name\": \"b\", \"chain\": [\"fence\"]}");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out")).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains("\"slot\" of port \"a\" is 513")
                .contains("pixel 1 of \"fence\" and 19 more are on two ports: \"a\" and \"b\"");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void anUnknownWordIsNamedWithWhatIsAllowed() throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "port");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("\"port\" is no kind of output").contains("did you mean \"ports\"?");
    }

    /** ANSI E1.11-2008: a DMX512 line carries 375 slots at 60 frames a second, and 512 of them 44 times. */
    @Test
    void warnsOfMoreThanALineCarries() throws IOException {
        Path show = WiredGarden.show(folder, 170, 60, "{\"name\": \"a\", \"chain\": [\"fence\"]}");
        Ran ran = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "packets")
                .without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.err())
                .contains("universe 1 of 510 slots at 60 frames a second: a DMX512 line carries 375 slots then, and 510"
                        + " slots 44.2 times a second at most");
    }

    /** ANSI E1.31-2018, Appendix A: a stream is lost after 2.5 s. Sent by this program, frames are repeated. */
    @Test
    void warnsOfACaptureThatIsSilentForTooLong() throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "{\"name\": \"a\", \"chain\": [\"fence\"]}");
        Files.writeString(show, Files.readString(show).replace("\"rate\": 40", "\"rate\": \"1/3\""));
        Ran packets = Ran.with("render", show, "-o", folder.resolve("out"), "--as", "packets")
                .without(folder);
        assertThat(packets.code()).isZero();
        assertThat(packets.err()).contains("warning: the packets of a universe come 3s apart;");
        Ran ports = Ran.with("render", show, "-o", folder.resolve("ports"), "--as", "ports");
        assertThat(ports.err()).doesNotContain("warning");
    }

    /** 830 pixels at 40 frames a second: 824 is the most at 800 kbit/s with 280 us between frames; 830 run at 39.7. */
    @Test
    void checkWarnsOfLinesThatAreTooLong() throws IOException {
        Path show = WiredGarden.show(folder, 900, 40, "{\"name\": \"left\", \"chain\": [{\"skip\": 5}, \"fence/a\"]}");
        Files.writeString(
                folder.resolve("display.json"),
                Files.readString(folder.resolve("display.json"))
                        .replace("\"count\": 900}}]", "\"count\": 900}}], \"parts\": {\"a\": \"1-825\"}"));
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("ports    1");
        assertThat(ran.err())
                .contains(
                        "port \"left\" has 830 pixels, and a data line of 800 kbit/s carries 824 at 40 frames a second")
                .contains("830 pixels take 39.7 frames a second at most")
                .contains("pixels on no port: \"fence\" (75 of 900)");
    }

    /** Pixels that say 400 kbit/s take 60 us each: (25000 - 280) / 60 is 412 of them at 40 frames a second. */
    @Test
    void checkKnowsHowFastTheDataOfAKindRun() throws IOException {
        Path show = WiredGarden.show(
                folder,
                413,
                40,
                "{\"name\": \"left\", \"chain\": [\"fence\"], \"kind\": \"slow\"}], \"kinds\": {\"slow\":"
                        + " {\"volts\": 12, \"milliamps\": [9, 9, 9], \"kilobits\": 400}}, \"supplies\": [{\"name\":"
                        + " \"shed\", \"volts\": 12, \"amps\": 9, \"feeds\": [{\"port\": \"left\"}]}");
        Ran ran = Ran.with("check", show).without(folder);
        assertThat(ran.out()).contains("ports    1\nsupplies 1\n");
        assertThat(ran.err())
                .contains(
                        "port \"left\" has 413 pixels, and a data line of 400 kbit/s carries 412 at 40 frames a second");
    }

    @Test
    void checkOfADisplayWarnsOfLoosePixelsOnly() throws IOException {
        WiredGarden.show(folder, 900, 40, "{\"name\": \"left\", \"chain\": [\"fence\"]}");
        Ran ran = Ran.with("check", folder.resolve("display.json"));
        assertThat(List.of(ran.code(), ran.err())).isEqualTo(List.of(0, ""));
    }
}
