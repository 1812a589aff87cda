package org.duskloom.engine.sound;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.duskloom.engine.document.NearbyFile;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/**
 * The samples of a WAV, AIFF or AU file one after the other, from a file or a pipe: memory does not grow with the song.
 * Reads to the end of the samples or of the file, whichever comes first, and warns where the header says something
 * else.
 * Not safe for use by several threads.
 */
public final class SoundStream implements Closeable {
    /** No show is longer than a day. */
    private static final int MOST_HOURS = 25;

    private static final String TOO_LONG = "up to " + MOST_HOURS + " hours are read; cut out what belongs to the show";

    private final ByteSource source;
    private final SoundHeader header;
    private final String shownName;
    private final Problems problems;
    private byte[] raw = new byte[0];
    private long bytesLeft;
    private long framesRead;
    private long oddSamples;
    private boolean ended;
    private boolean failed;

    private SoundStream(ByteSource source, SoundHeader header, String shownName, Problems problems) {
        this.source = source;
        this.header = header;
        this.shownName = shownName;
        this.problems = problems;
        this.bytesLeft = header.dataBytes() == SoundHeader.UNKNOWN ? Long.MAX_VALUE : header.dataBytes();
    }

    /**
     * Opens a file and reads its header. Errors: missing, a folder, a pipe, unreadable, another kind of file (with the
     * command that converts it), a header that is damaged or says what is not read, by the byte from 0; longer than
     * {@value #MOST_HOURS} hours, which of a pipe is told once they have been read.
     *
     * @param shownName its name as the user would type it
     * @param problems where errors go, now and while samples are read
     * @return the sound before its first sample, to be closed; nothing if an error was added
     */
    public static Optional<SoundStream> open(Path file, String shownName, Problems problems) {
        Location whole = Location.ofFile(shownName);
        if (Files.isDirectory(file)) {
            problems.error(whole, "is a folder, not a sound", "name the file inside it");
        } else if (Files.notExists(file)) {
            problems.error(whole, "there is no such file", NearbyFile.hint(file, ""));
        } else if (Files.exists(file) && !Files.isRegularFile(file)) {
            // Opening a pipe would wait until somebody writes into it.
            problems.error(whole, "is a pipe or a device, not a file", "save what it gives and name that file");
        } else {
            return openRegular(file, shownName, problems);
        }
        return Optional.empty();
    }

    /**
     * The same for bytes that come from elsewhere, such as the standard input stream.
     *
     * @param in read up to the end of the samples; closed with the sound, or when it cannot be used
     */
    public static Optional<SoundStream> open(InputStream in, String shownName, Problems problems) {
        String bare = OtherSounds.bare(shownName);
        return open(in, shownName, ending -> shownName.equals(bare + ending), problems);
    }

    /** @param isTaken see {@link OtherSounds#fault} */
    private static Optional<SoundStream> open(
            InputStream in, String shownName, Predicate<String> isTaken, Problems problems) {
        ByteSource source = new ByteSource(in);
        try {
            return Optional.of(new SoundStream(source, header(source, shownName, isTaken), shownName, problems));
        } catch (SoundException e) {
            problems.error(Location.ofFile(shownName), e.getMessage(), e.hint());
        } catch (IOException e) {
            problems.error(Location.ofFile(shownName), "cannot be read: " + e.getMessage());
        }
        closeQuietly(source);
        return Optional.empty();
    }

    private static Optional<SoundStream> openRegular(Path file, String shownName, Problems problems) {
        try {
            long bytes = Files.size(file);
            String bare = OtherSounds.bare(file.getFileName().toString());
            Optional<SoundStream> sound = open(
                    Files.newInputStream(file),
                    shownName,
                    ending -> Files.exists(file.resolveSibling(bare + ending)),
                    problems);
            if (sound.isPresent() && sound.get().header.isLongerThan(MOST_HOURS, bytes)) {
                closeQuietly(sound.get());
                tellTooLong(Location.ofFile(shownName), problems);
                return Optional.empty();
            }
            return sound;
        } catch (AccessDeniedException denied) {
            problems.error(Location.ofFile(shownName), "there is no right to read this file");
        } catch (IOException e) {
            problems.error(Location.ofFile(shownName), "cannot be read: " + e.getMessage());
        }
        return Optional.empty();
    }

    private static void tellTooLong(Location place, Problems problems) {
        problems.error(place, "the sound is longer than " + MOST_HOURS + " hours", TOO_LONG);
    }

    private static SoundHeader header(ByteSource source, String shownName, Predicate<String> isTaken)
            throws IOException, SoundException {
        byte[] start = source.peek(OtherSounds.SNIFFED_BYTES);
        if (WavHeader.matches(start)) {
            return WavHeader.read(source);
        }
        if (AiffHeader.matches(start)) {
            return AiffHeader.read(source);
        }
        if (AuHeader.matches(start)) {
            return AuHeader.read(source);
        }
        throw OtherSounds.fault(start, shownName, isTaken);
    }

    /** What the header says. */
    public SoundFormat format() {
        return header.format();
    }

    /** How many samples of each channel were read so far. */
    public long framesRead() {
        return framesRead;
    }

    /** Whether an error was added to the problems while samples were read; warnings do not count. */
    public boolean failed() {
        return failed;
    }

    /**
     * Takes the next samples.
     *
     * @param channels an array for each channel, all of one length; filled from 0 on with values of full scale at 1
     * @return how many samples of each channel there are; 0 only at the end, where a warning or an error has been added
     *     if the end came in another place than the header says, or the file could not be read
     */
    public int read(double[][] channels) {
        if (channels.length != header.channels()) {
            throw new IllegalArgumentException(channels.length + " arrays for " + header.channels() + " channels");
        }
        int wanted = (int) Math.min(channels[0].length, bytesLeft / header.frameBytes());
        int frames = ended || wanted == 0 ? 0 : readRaw(wanted * header.frameBytes()) / header.frameBytes();
        for (int i = 0; i < channels.length; i++) {
            int at = i * header.coding().bytes();
            oddSamples += header.coding().decode(raw, at, header.frameBytes(), channels[i], frames);
        }
        framesRead += frames;
        if (framesRead > MOST_HOURS * 3600 * header.rateHz()) {
            failed = true;
            ended = true;
            tellTooLong(place(), problems);
            return 0;
        }
        if (frames < channels[0].length && !ended) {
            ended = true;
            end(frames == wanted);
        }
        return frames;
    }

    private int readRaw(int count) {
        raw = raw.length < count ? new byte[count] : raw;
        try {
            int got = source.read(raw, count);
            bytesLeft -= got;
            return got;
        } catch (IOException e) {
            failed = true;
            problems.error(place(), "cannot be read on from byte " + source.position() + ": " + e.getMessage());
            return 0;
        }
    }

    /** @param asDeclared whether all bytes came that the header speaks of */
    private void end(boolean asDeclared) {
        if (failed) {
            return;
        }
        if (!asDeclared && header.lengthIsMeant()) {
            problems.warn(
                    place(),
                    "the sound ends after " + seconds(framesRead) + ", though its header speaks of "
                            + seconds(header.dataBytes() / header.frameBytes()),
                    "if the song is longer, it was not copied whole");
        } else if (asDeclared) {
            warnOfMore();
        }
        if (framesRead == 0) {
            failed = true;
            problems.error(place(), "there is no sound in it: not one sample", "save the song once more");
        }
        if (oddSamples > 0) {
            problems.warn(
                    place(),
                    Counted.of(oddSamples, "sample") + " of floating point are no sound (not a number, or huge)",
                    "they are taken as silence");
        }
    }

    /** A recorder that was cut off leaves the length of an earlier moment in the header. */
    private void warnOfMore() {
        try {
            source.skip(bytesLeft + header.dataBytes() % 2);
            byte[] next = source.peek(8);
            if (next.length > 0 && !isChunk(next) && !header.container().equals("AU")) {
                problems.warn(
                        place(),
                        "more follows after the " + seconds(framesRead) + " of sound that the header speaks of",
                        "if the song is longer, its length in the header is wrong: save it anew");
            }
        } catch (IOException e) {
            // The samples are complete; what follows them does not matter.
            return;
        }
    }

    private static boolean isChunk(byte[] next) {
        for (int i = 0; i < 4; i++) {
            if (next.length < 8 || next[i] < ' ' || next[i] > '~') {
                return false;
            }
        }
        return true;
    }

    private String seconds(long frames) {
        return String.format(Locale.ROOT, "%.2f s", frames / header.rateHz());
    }

    private Location place() {
        return Location.ofFile(shownName);
    }

    private static void closeQuietly(Closeable source) {
        try {
            source.close();
        } catch (IOException e) {
            // Nothing was read from it that counts.
        }
    }

    @Override
    public void close() throws IOException {
        source.close();
    }
}
