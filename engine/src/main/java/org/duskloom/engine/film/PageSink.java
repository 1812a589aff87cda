package org.duskloom.engine.film;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.frame.EncodedBytes;
import org.duskloom.engine.frame.EncodingSink;
import org.duskloom.engine.frame.FrameBatch;
import org.duskloom.engine.frame.FrameEncoder;
import org.duskloom.engine.frame.RunInfo;

/**
 * Writes the page: what comes before the film, the facts, a piece for every few frames as they come, what comes after.
 * The page may ask the network for nothing: its policy says so.
 */
final class PageSink implements EncodingSink {
    private static final String FILM = "film";
    private static final String POLICY =
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'unsafe-inline';"
                    + " style-src 'unsafe-inline'; img-src data:; media-src data: blob:\">";

    private final StagedFile file;
    private final PageKind kind;
    private final PageText text;
    private RunInfo run;

    PageSink(StagedFile file, PageKind kind) {
        this.file = file;
        this.kind = kind;
        this.text = kind.text().filled(Map.of("policy", POLICY));
    }

    @Override
    public void begin(RunInfo info) throws IOException {
        run = info;
        write(text.before(FILM));
        write("<script type=\"application/json\" id=\"facts\">"
                + PageText.harmless(kind.facts().json(run)) + "</script>\n");
        write("<script type=\"text/plain\" id=\"table\">"
                + base64(deflated(kind.facts().table(run))) + "</script>\n");
        if (kind.sound().isPresent()) {
            write(kind.sound().get().html());
        }
    }

    @Override
    public FrameEncoder encoder() {
        return new PieceEncoder(run.pixelCount());
    }

    /** Each batch is a piece. */
    @Override
    public boolean hangsOnBatches() {
        return true;
    }

    @Override
    public void take(FrameBatch frames, EncodedBytes encoded) throws IOException {
        byte[] packed = Arrays.copyOfRange(encoded.array(), PieceEncoder.HEAD_BYTES, encoded.length());
        long crc = Integer.toUnsignedLong(ByteBuffer.wrap(encoded.array()).getInt());
        write("<script type=\"text/plain\" class=\"piece\" data-first=\"" + frames.place(0) + "\" data-frames=\""
                + frames.count() + "\" data-crc=\"" + crc + "\">" + base64(packed) + "</script>\n");
        if (file.bytesTaken() > kind.mostBytes()) {
            throw PageEstimate.refusal(run, kind.mostBytes(), frames.place(frames.count() - 1));
        }
    }

    @Override
    public void finish() throws IOException {
        write(text.after(FILM));
        file.finish();
    }

    @Override
    public void close() {
        file.close();
    }

    private void write(String html) throws IOException {
        byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
        file.write(bytes, 0, bytes.length);
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    /** How many bytes packed frames take in the page. */
    static long bytesInPage(long packedBytes) {
        return (packedBytes + 2) / 3 * 4;
    }

    private static byte[] deflated(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater raw = new Deflater(Deflater.BEST_COMPRESSION, true);
        try (DeflaterOutputStream deflating = new DeflaterOutputStream(packed, raw)) {
            deflating.write(bytes);
        } finally {
            raw.end();
        }
        return packed.toByteArray();
    }
}
