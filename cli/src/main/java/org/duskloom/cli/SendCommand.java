package org.duskloom.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.duskloom.engine.format.FrameManifest;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.live.LiveClock;
import org.duskloom.engine.live.LiveStream;
import org.duskloom.engine.live.Pacing;
import org.duskloom.engine.live.UdpSocket;
import org.duskloom.engine.packet.CapturedShow;
import org.duskloom.engine.packet.PacketsKind;
import org.duskloom.engine.packet.StreamSource;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.wire.UniverseRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom send}. */
@Command(
        name = "send",
        sortOptions = false,
        sortSynopsis = false,
        header = "Send a show to the lights, in real time.",
        description = {
            "",
            "Sends the bytes of the display's ports as E1.31 packets, every frame when it is due. A show is rendered while"
                    + " it is sent; a folder that 'render --as packets' or 'proof --as packets' has written is sent as it is, with less work."
                    + " At the end, and after Ctrl-C, all lights are told to be dark, and the receivers that nothing more"
                    + " comes. Without --to or --multicast nothing leaves this"
                    + " machine.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom send garden/show.json",
            "      To receivers on this machine.",
            "  duskloom send garden/show.json --to 192.168.1.20 --loop 10",
            "      To one receiver, ten times.",
            "  duskloom send out --multicast --interface eth0 --at 0:30",
            "      What was rendered before, from half a minute on, to whoever wants it."
        })
final class SendCommand implements Callable<Integer> {
    private static final int MOST_LOOPS = 1_000_000;

    private final Streams streams;

    @Parameters(
            paramLabel = "SHOW.json|DIR",
            description = "The timeline, or a folder with frames.json and packets.pcap.")
    private Path file;

    @Option(
            names = "--to",
            paramLabel = "ADDRESS",
            description = "Send to one receiver, by its address or name; :PORT may follow. 127.0.0.1, port 5568, unless"
                    + " written.")
    private String to;

    @Option(names = "--multicast", description = "Send every universe to its multicast group.")
    private boolean multicast;

    @Option(
            names = "--interface",
            paramLabel = "NAME",
            description = "The network interface to send over, such as eth0.")
    private String interfaceName;

    @Option(names = "--at", paramLabel = "TIME", description = "Begin at this time of the show, such as 0:30.")
    private String at;

    @Option(names = "--loop", paramLabel = "N", description = "Play the show so many times; once unless written.")
    private int loops = 1;

    @Option(names = "--priority", paramLabel = "N", description = "Which sender wins, 0 to 200; 100 unless written.")
    private Integer priority;

    @Option(
            names = "--sync",
            paramLabel = "UNIVERSE",
            description = "Make receivers show a frame at once, by synchronization packets to this universe.")
    private Integer syncUniverse;

    @Option(
            names = "--leave-last",
            description = "At the end leave the lights as the last frame has them, instead of dark.")
    private boolean leaveLast;

    @Mixin
    private HelpOptions helpOptions;

    SendCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        requireInRange();
        SendTarget target = SendTarget.of(to, multicast, interfaceName);
        return Files.isDirectory(file) ? sendFolder(target) : sendShow(target);
    }

    private void requireInRange() {
        require("--loop", loops, 1, MOST_LOOPS);
        require("--priority", priority == null ? 0 : priority, 0, StreamSource.HIGHEST_PRIORITY);
        require("--sync", syncUniverse == null ? 1 : syncUniverse, 1, UniverseRun.LAST_UNIVERSE);
    }

    private static void require(String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw new MisuseException(option + " is " + value + "; allowed: " + least + " to " + most);
        }
    }

    private int sendShow(SendTarget target) throws IOException {
        Problems problems = new Problems();
        Optional<LoadedShow> show = LoadedShow.load(file, problems);
        show.ifPresent(loaded -> loaded.wired().require("send", problems));
        show.ifPresent(loaded -> loaded.wired().warnOfStreamLimits(problems));
        ProblemPrinter.print(problems, streams);
        if (problems.hasErrors() || show.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        StreamSource source = chosen(show.get().streamSource());
        send(
                new LivePlay.OfShow(show.get(), show.get().wired().wiring().orElseThrow(), source),
                source,
                show.get().show().timeline().times(),
                target);
        return ExitCode.DONE;
    }

    private int sendFolder(SendTarget target) throws IOException {
        Problems problems = new Problems();
        Optional<FrameManifest> manifest = FrameManifest.in(file, problems);
        Optional<CapturedShow> show = manifest.isEmpty()
                ? Optional.empty()
                : CapturedShow.open(
                        file.resolve(PacketsKind.FILE), manifest.get().run(), problems);
        ProblemPrinter.print(problems, streams);
        if (show.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        StreamSource source = chosen(show.get().source());
        RunInfo run = manifest.get().run();
        try (LivePlay play = new LivePlay.OfCapture(show.get(), run, source)) {
            send(play, source, TimeContext.NONE.withRate(run.rate()), target);
        }
        return ExitCode.DONE;
    }

    private StreamSource chosen(StreamSource source) {
        return new StreamSource(
                source.cid(),
                source.name(),
                priority == null ? source.priority() : priority,
                syncUniverse == null ? 0 : syncUniverse);
    }

    private void send(LivePlay play, StreamSource source, TimeContext times, SendTarget target) throws IOException {
        RunInfo run = play.info();
        long firstFrame = firstFrame(times, run);
        StopRequest stop = new StopRequest();
        try (UdpSocket socket = target.open();
                LiveStream stream = new LiveStream(play.packets(), source, socket, LiveClock.SYSTEM, run.rate())) {
            if (target.isMulticast()) {
                stream.announce(source);
            }
            if (leaveLast) {
                stream.leaveLast();
            }
            streams.tell("sends " + Counted.of(play.packets().size(), "universe") + ", " + run.rate()
                    + " frames a second, " + target.words());
            play(play, stream, firstFrame);
            stream.end();
            tell(stream);
        } finally {
            stop.close();
        }
    }

    private void play(LivePlay play, LiveStream stream, long firstFrame) throws IOException {
        try {
            play.play(stream, firstFrame, loops, streams);
        } catch (InterruptedException | InterruptedIOException | ClosedByInterruptException stopped) {
            streams.tell("stopped");
        }
    }

    private long firstFrame(TimeContext times, RunInfo run) {
        try {
            return TimeWindow.frame(times, run.rate(), run.frames().count(), at);
        } catch (TextFormatException fault) {
            throw new MisuseException(fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
        }
    }

    private void tell(LiveStream stream) {
        Pacing pacing = stream.pacing();
        streams.tell(String.format(
                Locale.ROOT,
                "%s sent, %d of them late, %d left out; delay %.2f ms in the median, %.2f ms at worst",
                Counted.of(pacing.frames(), "frame"),
                pacing.lateFrames(),
                pacing.skippedFrames(),
                pacing.medianNanos() / 1e6,
                pacing.worstNanos() / 1e6));
        if (stream.refusedPackets() > 0) {
            streams.tell(
                    Counted.of(stream.refusedPackets(), "packet") + " could not be sent: " + stream.firstRefusal());
        }
    }
}
