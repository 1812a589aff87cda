package org.duskloom.engine.film;

import java.util.Base64;
import java.util.Objects;
import org.duskloom.engine.text.ShortestDecimal;

/**
 * Sound that a page plays in step with the show.
 *
 * @param mediaType what the bytes are, such as {@code audio/wav}
 * @param bytes the whole file
 * @param startSeconds at which time of the show it begins; may be below 0
 */
public record PageSound(String mediaType, byte[] bytes, double startSeconds) {
    /** @throws IllegalArgumentException if the media type is none */
    public PageSound {
        Objects.requireNonNull(bytes, "bytes");
        if (!mediaType.matches("[a-z]+/[a-z0-9.+-]+")) {
            throw new IllegalArgumentException(mediaType + " is no media type");
        }
    }

    /** The element that holds it. */
    String html() {
        return "<audio id=\"sound\" preload=\"auto\" data-starts=\"" + ShortestDecimal.of(startSeconds)
                + "\" src=\"data:" + mediaType + ";base64,"
                + Base64.getEncoder().encodeToString(bytes) + "\"></audio>\n";
    }
}
