package org.duskloom.engine.film;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.sound.SoundStream;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Sound that a page plays in step with the show.
 *
 * @param mediaType what the bytes are, such as {@code audio/wav}
 * @param bytes the whole file
 * @param startSeconds at which time of the show it begins; may be below 0
 */
public record PageSound(String mediaType, byte[] bytes, double startSeconds) {
    private static final String WAVE = "audio/wav";

    /** @throws IllegalArgumentException if the media type is none */
    public PageSound {
        Objects.requireNonNull(bytes, "bytes");
        if (!mediaType.matches("[a-z]+/[a-z0-9.+-]+")) {
            throw new IllegalArgumentException(mediaType + " is no media type");
        }
    }

    /**
     * The sound of a show, or of a part of it, as every browser plays it.
     *
     * @param file WAV, AIFF or AU
     * @param shownName its name as the user would type it
     * @param startSeconds at which time of the show it begins
     * @param fromSeconds from which time of the show on it is wanted
     * @param toSeconds up to which
     * @return nothing if it is not heard in that time
     * @throws IOException if it cannot be read, though it could when the show was
     */
    public static Optional<PageSound> read(
            Path file, String shownName, double startSeconds, double fromSeconds, double toSeconds) throws IOException {
        try (SoundStream sound = open(file, shownName)) {
            double rate = sound.format().rateHz();
            long first = Math.max(0, (long) Math.floor((fromSeconds - startSeconds) * rate));
            long end = (long) Math.ceil((toSeconds - startSeconds) * rate);
            if (end <= first) {
                return Optional.empty();
            }
            byte[] bytes = WaveBytes.of(sound, first, end);
            boolean isHeard = !sound.failed() && sound.framesRead() > first;
            return isHeard ? Optional.of(new PageSound(WAVE, bytes, startSeconds + first / rate)) : Optional.empty();
        }
    }

    private static SoundStream open(Path file, String shownName) throws IOException {
        return SoundStream.open(file, shownName, new Problems())
                .orElseThrow(() ->
                        new IOException(shownName + " is not the sound any more that it was when the show was read"));
    }

    /** The element that holds it. */
    String html() {
        return "<audio id=\"sound\" preload=\"auto\" data-starts=\"" + ShortestDecimal.of(startSeconds)
                + "\" src=\"data:" + mediaType + ";base64,"
                + Base64.getEncoder().encodeToString(bytes) + "\"></audio>\n";
    }
}
