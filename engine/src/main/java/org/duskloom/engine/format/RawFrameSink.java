package org.duskloom.engine.format;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.FrameSink;

/**
 * Frame after frame without a header: what readers of raw video take as rgb24, as wide as there are pixels and one line
 * high. Keeps the SHA-256 of all bytes for the manifest.
 */
public final class RawFrameSink implements FrameSink {
    private final StagedFile file;
    private final long firstFrame;
    private final int frameBytes;
    private final MessageDigest digest = sha256();
    private long frames;
    private String sha256Hex = "";

    /**
     * @param file where the bytes go; the sink finishes or abandons it
     * @param firstFrame the number of the first frame that will come
     * @param pixelCount how many pixels a frame has
     */
    public RawFrameSink(StagedFile file, long firstFrame, int pixelCount) {
        this.file = file;
        this.firstFrame = firstFrame;
        this.frameBytes = Math.multiplyExact(3, pixelCount);
    }

    /**
     * {@inheritDoc}
     *
     * @throws IllegalArgumentException if a frame was left out, as a reader could not know, or has another size
     */
    @Override
    public void frame(long frameNumber, byte[] rgb) throws IOException {
        if (frameNumber != firstFrame + frames || rgb.length != frameBytes) {
            throw new IllegalArgumentException("frame " + frameNumber + " of " + rgb.length + " bytes, expected "
                    + (firstFrame + frames) + " of " + frameBytes);
        }
        digest.update(rgb);
        file.write(rgb, 0, frameBytes);
        frames++;
    }

    @Override
    public void finish() throws IOException {
        file.finish();
        sha256Hex = HexFormat.of().formatHex(digest.digest());
    }

    @Override
    public void close() {
        file.close();
    }

    /** How many frames came so far. */
    public long frames() {
        return frames;
    }

    /**
     * The SHA-256 of all bytes, in lower-case hexadecimal.
     *
     * @throws IllegalStateException before {@link #finish}
     */
    public String sha256Hex() {
        if (sha256Hex.isEmpty()) {
            throw new IllegalStateException("frames are still coming");
        }
        return sha256Hex;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
