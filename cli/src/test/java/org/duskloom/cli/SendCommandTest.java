package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.MulticastSocket;
import java.net.NetworkInterface;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code send}, to receivers on this machine only. */
@Timeout(120)
class SendCommandTest {
    private static final String PORT = "{\"name\": \"left\", \"chain\": [\"fence\"]}";
    private static final int FRAMES = 80;
    private static final Pattern SENT = Pattern.compile("(\\d+) frames? sent, (\\d+) of them late, (\\d+) left out");

    @TempDir
    private Path folder;

    private Path show() throws IOException {
        return WiredGarden.show(folder.resolve("garden"), 200, 40, PORT);
    }

    private Path rendered(Path show) {
        Path out = folder.resolve("out");
        Ran ran = Ran.with("render", show, "-o", out, "--as", "ports,packets");
        assertThat(ran.code()).as(ran.err()).isZero();
        return out;
    }

    /** Every packet is a frame of the show, byte for byte, in order, and as many as were said to be sent. */
    private void assertSent(Receiver receiver, String said, Path out, int firstFrame, int frames) throws Exception {
        Matcher counts = SENT.matcher(said);
        assertThat(counts.find()).as(said).isTrue();
        int sent = Integer.parseInt(counts.group(1));
        assertThat(sent + Integer.parseInt(counts.group(3))).isEqualTo(frames);
        byte[] left = Files.readAllBytes(out.resolve("ports/left.bin"));
        for (int universe = 1; universe <= 2; universe++) {
            List<byte[]> packets = receiver.ofUniverse(universe);
            assertThat(packets).hasSize(sent + 3);
            for (int i = sent; i < sent + 3; i++) {
                assertDark(packets.get(i));
                assertThat(packets.get(i)[111]).isEqualTo((byte) i);
            }
            int frame = firstFrame;
            for (int i = 0; i < sent; i++) {
                assertThat(packets.get(i)[111]).isEqualTo((byte) i);
                byte[] slots = Arrays.copyOfRange(packets.get(i), 126, packets.get(i).length);
                while (!Arrays.equals(slots, slots(left, frame % FRAMES, universe)) && frame < firstFrame + frames) {
                    frame++;
                }
                assertThat(frame).as("frame of packet " + i).isLessThan(firstFrame + frames);
            }
        }
        assertThat(receiver.all().stream().filter(packet -> (packet[112] & 0x40) != 0))
                .hasSize(6);
    }

    private static void assertDark(byte[] packet) {
        assertThat(Arrays.copyOfRange(packet, 126, packet.length)).containsOnly(0);
    }

    private static byte[] slots(byte[] left, int frame, int universe) {
        int from = 600 * frame + 510 * (universe - 1);
        return Arrays.copyOfRange(left, from, Math.min(from + 510, 600 * (frame + 1)));
    }

    @Test
    void sendsAShowAsItRenders() throws Exception {
        Path show = show();
        Receiver receiver = new Receiver(2);
        Ran ran = Ran.with("send", show, "--to", receiver.address());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith("sends 2 universes, 40 frames a second, to 127.0.0.1, UDP port "
                        + receiver.address().substring(10) + "\n");
        assertSent(receiver, ran.err(), rendered(show), 0, FRAMES);
    }

    @Test
    void sendsWhatWasRenderedBefore() throws Exception {
        Path out = rendered(show());
        Receiver receiver = new Receiver(2);
        Ran ran = Ran.with("send", out, "--to", receiver.address(), "--at", "0.5s", "--loop", "2");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertSent(receiver, ran.err(), out, 20, 140);
    }

    /** Without the dark frames before it, the end of the streams leaves lit what was lit: clause 6.2.6. */
    @Test
    void canLeaveTheLastLook() throws Exception {
        Path out = rendered(show());
        Receiver receiver = new Receiver(2);
        Ran ran = Ran.with("send", out, "--to", receiver.address(), "--at", "1.9s", "--leave-last");
        assertThat(ran.code()).as(ran.err()).isZero();
        byte[] left = Files.readAllBytes(out.resolve("ports/left.bin"));
        List<byte[]> packets = receiver.ofUniverse(1);
        byte[] last = packets.get(packets.size() - 1);
        assertThat(Arrays.copyOfRange(last, 126, last.length)).isEqualTo(slots(left, FRAMES - 1, 1));
    }

    /** What the proof of a display with ports is for: a held step goes out on them. */
    @Test
    void sendsAProof() throws Exception {
        Path display = show().resolveSibling("display.json");
        Path out = folder.resolve("proof");
        Ran proof = Ran.with(
                "proof", display, "-o", out, "--as", "ports,packets", "--step", "colour white", "--only", "fence");
        assertThat(proof.code()).as(proof.err()).isZero();
        Receiver receiver = new Receiver(2);
        Ran ran = Ran.with("send", out, "--to", receiver.address(), "--at", "1.5s");
        assertThat(ran.code()).as(ran.err()).isZero();
        byte[] left = Files.readAllBytes(out.resolve("ports/left.bin"));
        assertThat(left).hasSize(40 * 600).doesNotContain((byte) 0);
        byte[] first = receiver.ofUniverse(1).get(0);
        assertThat(Arrays.copyOfRange(first, 126, first.length)).isEqualTo(slots(left, 30, 1));
        assertThat(new String(first, 44, 21, StandardCharsets.UTF_8)).isEqualTo("Proof of display.json");
    }

    @Test
    void beginsAtATimeAndPlaysAgain() throws Exception {
        Path show = show();
        Receiver receiver = new Receiver(2);
        Ran ran = Ran.with("send", show, "--to", receiver.address(), "--at", "1.5s", "--loop", "2");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertSent(receiver, ran.err(), rendered(show), 60, 100);
    }

    /** Octets 22 to 37 are the CID, 44 the name, 108 the priority, 109 and 110 the synchronization universe. */
    @Test
    void bothWaysSendTheSameSource() throws Exception {
        Path show = show();
        Path out = rendered(show);
        Receiver first = new Receiver(2);
        Ran.with("send", show, "--to", first.address(), "--priority", "150", "--sync", "7962", "--at", "1.9s");
        Receiver second = new Receiver(2);
        Ran.with("send", out, "--to", second.address(), "--priority", "150", "--sync", "7962", "--at", "1.9s");
        byte[] live = first.ofUniverse(1).get(0);
        byte[] captured = second.ofUniverse(1).get(0);
        assertThat(Arrays.copyOf(live, 126)).isEqualTo(Arrays.copyOf(captured, 126));
        assertThat(new String(live, 44, 5, StandardCharsets.UTF_8)).isEqualTo("Fence");
        assertThat(live[108]).isEqualTo((byte) 150);
        assertThat(Arrays.copyOfRange(live, 109, 111)).containsExactly(0x1F, 0x1A);
        List<byte[]> syncs =
                first.all().stream().filter(packet -> packet.length == 49).toList();
        assertThat(syncs)
                .isNotEmpty()
                .allSatisfy(sync -> assertThat(Arrays.copyOfRange(sync, 45, 47)).containsExactly(0x1F, 0x1A));
    }

    /** Packets to an address of the other kind would leave over an interface that nobody named. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            10.0.0.7             | fd00::9    | eth7 has no IPv6 address to send to fd00:0:0:0:0:0:0:9 from; it has 10.0.0.7
            fe80::1, fd00::2     | 10.0.0.9   | eth7 has no IPv4 address to send to 10.0.0.9 from; it has fe80:0:0:0:0:0:0:1, fd00:0:0:0:0:0:0:2
            fe80::1              | 239.255.0.1| eth7 has no IPv4 address to send to multicast groups from; it has fe80:0:0:0:0:0:0:1
            ''                   | 10.0.0.9   | eth7 has no IPv4 address to send to 10.0.0.9 from; it has none at all
            """)
    void anInterfaceMustHaveAnAddressOfTheKind(String own, String to, String message) throws IOException {
        List<InetAddress> addresses = new ArrayList<>();
        for (String address : own.isEmpty() ? new String[0] : own.split(", ")) {
            addresses.add(InetAddress.getByName(address));
        }
        InetAddress receiver = InetAddress.getByName(to);
        assertThatThrownBy(() -> SendTarget.sender("eth7", addresses, receiver))
                .isInstanceOf(MisuseException.class)
                .hasMessage("--interface: " + message);
    }

    @Test
    void anInterfaceSendsFromItsAddressOfTheKind() throws IOException {
        InetAddress six = InetAddress.getByName("fd00::2");
        InetAddress four = InetAddress.getByName("10.0.0.7");
        List<InetAddress> both = List.of(six, four);
        assertThat(SendTarget.sender("eth7", both, InetAddress.getByName("10.0.0.9")))
                .isEqualTo(four);
        assertThat(SendTarget.sender("eth7", both, InetAddress.getByName("::1")))
                .isEqualTo(six);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --to nowhere.invalid          | --to: nobody is known as 'nowhere.invalid'
            --to 239.255.0.1              | --to 239.255.0.1 is a multicast group; --multicast sends
            --to 0.0.0.0                  | --to 0.0.0.0 is nobody's address
            --to 255.255.255.255          | --to 255.255.255.255 is nobody's address
            --to 127.0.0.1:0              | --to: there is no port 0; allowed: 1 to 65535
            --to 127.0.0.1 --multicast    | --to names one receiver, and --multicast sends to all
            --multicast --interface none0 | --interface: there is no none0; up are:
            --priority 201                | --priority is 201; allowed: 0 to 200
            --sync 0                      | --sync is 0; allowed: 1 to 63999
            --sync 64000                  | --sync is 64000; allowed: 1 to 63999
            --loop 0                      | --loop is 0; allowed: 1 to 1000000
            --at 2s                       | no frame comes at or after 2s; the show lasts 2s
            --at 1:00                     | --at 1:00 lies beyond the show; it lasts 2s
            --at soon                     | --at:
            """)
    void wrongUseSendsNothing(String options, String message) throws IOException {
        Object[] arguments = ("send " + show() + " " + options).split(" ");
        Ran ran = Ran.with(arguments);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("duskloom send: " + message).doesNotContain("a second, to");
    }

    @Test
    void aShowWithoutPortsIsWrongInput() throws IOException {
        Path show = WiredGarden.show(folder, 20, 40, "");
        Ran ran = Ran.with("send", show).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("display.json: error: the display has no \"ports\", and send needs them");
    }

    @Test
    void aFolderWithoutPacketsIsWrongInput() throws IOException {
        Path show = show();
        Path out = folder.resolve("plain");
        Ran.with("render", show, "-o", out);
        Ran ran = Ran.with("send", out).without(folder);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .contains(
                        "plain/packets.pcap: error: there is no such file; 'duskloom render' and 'duskloom proof' write it"
                                + " with --as packets");
        assertThat(Ran.with("send", folder).code()).isEqualTo(3);
    }

    @Test
    void aDamagedCaptureIsWrongInput() throws IOException {
        Path out = rendered(show());
        Path capture = out.resolve("packets.pcap");
        byte[] whole = Files.readAllBytes(capture);
        Files.write(capture, Arrays.copyOf(whole, whole.length - 100));
        assertRefused(out, "it was cut short or belongs to another rendering");
        for (int at : new int[] {0, 20, 24 + 9, 24 + 58 + 6}) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 0x55;
            Files.write(capture, damaged);
            assertRefused(out, "this is no capture of a show as --as packets writes it");
        }
        Files.write(capture, new byte[0]);
        assertRefused(out, "this is no capture of a show as --as packets writes it");
    }

    private static void assertRefused(Path out, String message) {
        Ran ran = Ran.with("send", out);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains(message).doesNotContain("a second, to");
    }

    /** signal(7): SIGTERM is 15; a JVM that it ends gives 128 and that. Ctrl-C goes the same way. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aSignalEndsTheStreams() throws Exception {
        Receiver receiver = new Receiver(2);
        Process run = ProgramProcess.of("send", show(), "--to", receiver.address(), "--loop", "1000")
                .redirectErrorStream(true)
                .start();
        receiver.awaitBegun();
        assertThat(run.isAlive()).isTrue();
        new ProcessBuilder("kill", "-TERM", Long.toString(run.pid())).start().waitFor();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).isEqualTo(143);
        assertThat(said).contains("sends 2 universes").contains("stopped\n").containsPattern(SENT);
        List<byte[]> all = receiver.all();
        assertThat(all.stream().filter(packet -> (packet[112] & 0x40) != 0)).hasSize(6);
        assertThat(all.size()).isGreaterThan(12);
        assertThat(all.subList(all.size() - 6, all.size())).allMatch(packet -> (packet[112] & 0x40) != 0);
        all.subList(all.size() - 12, all.size()).forEach(SendCommandTest::assertDark);
    }

    /** Over the loopback interface alone, to a group of the highest universes that no other sender is likely to use. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void sendsUniversesToTheirGroups() throws Exception {
        NetworkInterface loopback = NetworkInterface.getByName("lo");
        assumeThat(loopback).as("SKIPPED: no loopback interface called lo").isNotNull();
        MulticastSocket socket = new MulticastSocket(5568);
        InetAddress group = InetAddress.getByAddress(new byte[] {(byte) 239, (byte) 255, (byte) 0xF5, (byte) 0x0D});
        socket.joinGroup(new InetSocketAddress(group, 0), loopback);
        Receiver receiver = new Receiver(socket, 1);
        Path show =
                WiredGarden.show(folder, 20, 40, "{\"name\": \"left\", \"chain\": [\"fence\"], \"universe\": 62733}");
        Ran ran = Ran.with("send", show, "--multicast", "--interface", "lo", "--at", "1.5s");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err())
                .startsWith("sends 1 universe, 40 frames a second, to the multicast groups of the universes, UDP port"
                        + " 5568, over lo\n");
        assertThat(receiver.ofUniverse(62_733)).isNotEmpty();
    }
}
