package org.duskloom.cli;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.preview.SongPicture;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.sound.SoundEndings;
import org.duskloom.engine.sound.SoundStream;
import org.duskloom.engine.sound.music.Song;
import org.duskloom.engine.sound.music.SongListener;
import org.duskloom.engine.sound.music.Wishes;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeContext;
import org.duskloom.engine.time.TimeText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom listen}. */
@Command(
        name = "listen",
        sortOptions = false,
        sortSynopsis = false,
        header = "Find the beats, bars and sections of a song.",
        description = {
            "",
            "Writes a label track, a text of times that a timeline reads as its beats and markers, and that every editor"
                    + " of sounds opens beside the song. Beside it a picture, with the ending .png: loudness, low, middle"
                    + " and high sound over time, beats, bars and sections. What is found is a proposal: listen to it, and"
                    + " move in the editor what is wrong. The commonest slip is a tempo twice or half as fast as people"
                    + " would clap; --tempo sets that right.",
            "",
            "Reads WAV, AIFF and AU. Of anything else, ffmpeg makes a WAV: ffmpeg -i song.mp3 song.wav",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom listen song.wav",
            "      Only tells what is found.",
            "  duskloom listen song.wav -o song.txt",
            "  duskloom listen song.wav -o song.txt --tempo 60..90 --bar 3 --force",
            "  ffmpeg -i song.mp3 -f wav - | duskloom listen - -o song.txt"
        })
final class ListenCommand implements Callable<Integer> {
    private static final int BLOCK_FRAMES = 1 << 14;
    private static final int FEWEST_BAR_BEATS = 2;
    private static final int MOST_BAR_BEATS = 12;
    private static final double TEMPO_TOLERANCE = 1.04;
    private static final Pattern TEMPO =
            Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,6})?)(?:\\.\\.([0-9]{1,3}(?:\\.[0-9]{1,6})?))?");

    private final Streams streams;

    @Parameters(paramLabel = "SONG.wav", description = "The song; - is the standard input.")
    private Path input;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "The label track; - is the standard output, without a picture. Without -o nothing is written,"
                    + " and only told what was found.")
    private Path output;

    @Option(
            names = "--tempo",
            paramLabel = "BPM|A..B",
            description = "Beats a minute, about or from A to B, where what was found is wrong.")
    private String tempo;

    @Option(
            names = "--first",
            paramLabel = "T",
            description = "When the first beat is, which starts a bar, such as 350ms.")
    private String first;

    @Option(
            names = "--bar",
            paramLabel = "N",
            description = "How many beats a bar has; unless written, 3 or 4 by what is heard.")
    private Integer bar;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    ListenCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        Wishes wishes = wishes();
        return output == null ? listenOnly(wishes) : listenAndWrite(wishes);
    }

    private int listenOnly(Wishes wishes) throws IOException {
        Optional<Song> song = heard(wishes);
        if (song.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        streams.print(SongReport.of(song.get()).replace("\n", System.lineSeparator()));
        streams.tell("nothing is written; -o song.txt writes beats, bars and sections for a timeline");
        return ExitCode.DONE;
    }

    private int listenAndWrite(Wishes wishes) throws IOException {
        Optional<Path> picture = picture();
        if (!isStandardInput()) {
            StagedFile.refuseInput(output, List.of(input));
            if (picture.isPresent()) {
                StagedFile.refuseInput(picture.get(), List.of(input));
            }
        }
        refuseSound();
        try (OutputGroup group = new OutputGroup(OutputNames.ifExists(force))) {
            // Begun first: whoever has waited for an hour of song is not told then that a file stands there.
            StagedFile track = picture.isEmpty() ? StagedFile.standardOutput() : group.open(output);
            Optional<StagedFile> drawing = Optional.empty();
            if (picture.isPresent()) {
                drawing = Optional.of(group.open(picture.get()));
            }
            Optional<Song> song = heard(wishes);
            if (song.isEmpty()) {
                return ExitCode.BAD_INPUT;
            }
            write(song.get(), track, drawing);
            group.publish();
            tell(song.get(), picture);
        }
        return ExitCode.DONE;
    }

    /** The song; nothing if that was told to be of no use. */
    private Optional<Song> heard(Wishes wishes) throws IOException {
        Problems problems = new Problems();
        Optional<Song> song = listen(wishes, problems);
        song.filter(found -> found.sections().isEmpty())
                .ifPresent(silent -> problems.error(
                        Location.ofFile(shownName()), "is silent throughout", "is this the right file?"));
        ProblemPrinter.print(problems, streams);
        return problems.hasErrors() ? Optional.empty() : song;
    }

    private void write(Song song, StagedFile track, Optional<StagedFile> drawing) throws IOException {
        track.writeWhole(SongLabels.of(song).text());
        if (drawing.isPresent()) {
            SongPicture.draw(song, shownName(), SongReport.shortly(song)).writePng(drawing.get());
        }
    }

    private void tell(Song song, Optional<Path> picture) throws IOException {
        String report = SongReport.of(song).replace("\n", System.lineSeparator());
        if (picture.isPresent()) {
            streams.print(report);
            streams.tell(output + " and " + picture.get() + " written");
        } else {
            streams.tellPainted(report.stripTrailing());
        }
    }

    private Optional<Song> listen(Wishes wishes, Problems problems) throws IOException {
        Optional<SoundStream> opened = isStandardInput()
                ? SoundStream.open(new FileInputStream(FileDescriptor.in), shownName(), problems)
                : SoundStream.open(input, shownName(), problems);
        if (opened.isEmpty()) {
            return Optional.empty();
        }
        try (SoundStream sound = opened.get()) {
            SongListener listener = new SongListener(sound.format(), wishes);
            ProgressBar.during(streams, "second", progress -> read(sound, listener, progress));
            double seconds = sound.framesRead() / sound.format().rateHz();
            if (!sound.failed() && wishes.firstSeconds().orElse(0) > seconds) {
                throw new MisuseException(String.format(
                        Locale.ROOT, "--first is %s, after the end of the song, which lasts %.2f s", first, seconds));
            }
            return sound.failed() ? Optional.empty() : Optional.of(listener.finish());
        }
    }

    private static boolean read(SoundStream sound, SongListener listener, Progress progress) {
        double rate = sound.format().rateHz();
        double[][] block = new double[sound.format().channels()][BLOCK_FRAMES];
        long total = (long) (sound.format().declaredFrames().orElse(0) / rate);
        for (int count = sound.read(block); count > 0; count = sound.read(block)) {
            listener.take(block, count);
            long done = (long) (sound.framesRead() / rate);
            progress.at(done, Math.max(1, Math.max(done, total)));
        }
        return true;
    }

    private Wishes wishes() {
        if (bar != null && (bar < FEWEST_BAR_BEATS || bar > MOST_BAR_BEATS)) {
            throw new MisuseException("--bar is " + bar + "; allowed: " + FEWEST_BAR_BEATS + " to " + MOST_BAR_BEATS);
        }
        OptionalInt barBeats = bar == null ? OptionalInt.empty() : OptionalInt.of(bar);
        if (tempo == null) {
            return new Wishes(Wishes.NONE.slowestBpm(), Wishes.NONE.fastestBpm(), firstSeconds(), barBeats);
        }
        Matcher matcher = TEMPO.matcher(tempo);
        if (!matcher.matches()) {
            throw new MisuseException("--tempo is " + tempo + "; beats a minute are needed, such as 120 or 60..90"
                    + (tempo.indexOf(',') >= 0 ? "; the decimal sign is a dot" : ""));
        }
        double from = Double.parseDouble(matcher.group(1));
        boolean range = matcher.group(2) != null;
        double to = range ? Double.parseDouble(matcher.group(2)) : from;
        if (from > to || from < Wishes.LEAST_BPM || to > Wishes.MOST_BPM) {
            throw new MisuseException("--tempo is " + tempo + "; allowed: " + (int) Wishes.LEAST_BPM + " to "
                    + (int) Wishes.MOST_BPM + ", the slower first");
        }
        double slowest = range ? from : Math.max(Wishes.LEAST_BPM, from / TEMPO_TOLERANCE);
        double fastest = range ? to : Math.min(Wishes.MOST_BPM, to * TEMPO_TOLERANCE);
        return new Wishes(slowest, fastest, firstSeconds(), barBeats);
    }

    private OptionalDouble firstSeconds() {
        if (first == null) {
            return OptionalDouble.empty();
        }
        if (TimeText.countsMusic(first)) {
            throw new MisuseException("--first is " + first
                    + ", but the beats are yet to be found; write it in seconds or milliseconds, such as 350ms");
        }
        try {
            ExactTime time = TimeText.parse(first, TimeContext.NONE);
            return OptionalDouble.of((double) time.numerator() / time.denominator());
        } catch (TextFormatException fault) {
            throw new MisuseException(
                    "--first: " + fault.getMessage() + (fault.hint().isEmpty() ? "" : "; " + fault.hint()));
        }
    }

    /** Whoever names a song after -o has mixed up two names, and {@code --force} would cost the song. */
    private void refuseSound() {
        String name = String.valueOf(output.getFileName());
        if (SoundEndings.has(name)) {
            throw new MisuseException(output + " has the name of a sound; -o names the label track, a text such as "
                    + output.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ".txt"));
        }
    }

    /** Where the picture goes; nowhere if the track goes to the standard output. */
    private Optional<Path> picture() {
        if (OutputNames.isStandardOutput(output)) {
            return Optional.empty();
        }
        String name = String.valueOf(output.getFileName());
        if (name.toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw new MisuseException("-o names the label track, a text such as song.txt; the picture goes beside it");
        }
        int dot = name.lastIndexOf('.');
        return Optional.of(output.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".png"));
    }

    private boolean isStandardInput() {
        return OutputNames.isStandardOutput(input);
    }

    private String shownName() {
        return isStandardInput() ? "standard input" : input.toString();
    }
}
