package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packets of the garden as the analyser tshark reads them; skipped, and said so, where it is not installed. */
@Timeout(300)
class AnalyserTest {
    private static final int FRAMES = 400;

    @TempDir
    private Path folder;

    @Test
    void readsEveryPacketOfTheGardenWithGoodChecksums() throws IOException, InterruptedException {
        assumeTrue(isInstalled(), "SKIPPED: tshark is not installed, so no analyser has looked at the packets");
        Path out = folder.resolve("out");
        Ran ran = Ran.with(
                "render",
                Project.file("demos/garden/show.json"),
                "-o",
                out,
                "--as",
                "packets",
                "--frames",
                "3440..3840");
        assertThat(ran.code()).as(ran.err()).isZero();
        List<String> rows = lines(
                "tshark",
                "-r",
                out.resolve("packets.pcap").toString(),
                "--enable-heuristic",
                "acn",
                "-o",
                "acn.dmx_enable:TRUE",
                "-o",
                "ip.check_checksum:TRUE",
                "-o",
                "udp.check_checksum:TRUE",
                "-T",
                "fields",
                "-e",
                "frame.time_epoch",
                "-e",
                "ip.checksum.status",
                "-e",
                "udp.checksum.status",
                "-e",
                "_ws.malformed",
                "-e",
                "acn.dmx.universe",
                "-e",
                "acn.dmx.seq_number",
                "-e",
                "acn.dmx.priority",
                "-e",
                "acn.dmx.source_name",
                "-e",
                "acn.dmx.start_code2",
                "-e",
                "acn.dmx.count",
                "-e",
                "udp.dstport",
                "-e",
                "ip.dst");
        assertThat(rows).hasSize(10 * (FRAMES + 3));
        for (int i = 0; i < rows.size(); i++) {
            int frame = 3440 + i / 10;
            int universe = 1 + i % 10;
            String[] fields = rows.get(i).split("\t", -1);
            assertThat(fields[0]).isEqualTo(frame / 40 + "." + String.format("%09d", frame % 40 * 25_000_000));
            // In tshark's words 1 is good, 0 bad, 2 not looked at.
            assertThat(List.of(fields).subList(1, 4)).as(rows.get(i)).containsExactly("1", "1", "");
            assertThat(List.of(fields).subList(4, 9))
                    .containsExactly(String.valueOf(universe), String.valueOf(frame & 0xFF), "100", "Longest day", "0");
            assertThat(Integer.parseInt(fields[9])).isBetween(25, 513);
            assertThat(fields[10]).isEqualTo("5568");
            assertThat(fields[11]).isEqualTo("239.255.0." + universe);
        }
    }

    private static boolean isInstalled() throws InterruptedException {
        try {
            return new ProcessBuilder("tshark", "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException absent) {
            return false;
        }
    }

    private static List<String> lines(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return new ArrayList<>(text.lines().toList());
    }
}
