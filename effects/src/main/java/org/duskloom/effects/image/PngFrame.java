package org.duskloom.effects.image;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** One image of an animated PNG, by its frame control chunk and the data behind it. */
final class PngFrame {
    private static final int CONTROL_BYTES = 26;
    private static final int DEFAULT_DENOMINATOR = 100;

    /** For images that shall be seen for no time: common practice of viewers, no source. */
    private static final double NO_TIME_SECONDS = 0.1;

    private static final Easel.Afterwards[] AFTERWARDS = Easel.Afterwards.values();

    private final PngHeader header;
    private final int left;
    private final int top;
    private final double seconds;
    private final Easel.Afterwards afterwards;
    private final boolean over;
    private final List<PngChunks.Chunk> data = new ArrayList<>();

    private PngFrame(ByteBuffer control, PngHeader picture, boolean first) throws ImageException {
        int width = control.getInt();
        int height = control.getInt();
        left = control.getInt();
        top = control.getInt();
        int numerator = control.getShort() & 0xFFFF;
        int denominator = control.getShort() & 0xFFFF;
        int dispose = control.get();
        int blend = control.get();
        if (width < 1
                || height < 1
                || left < 0
                || top < 0
                || width > picture.width() - left
                || height > picture.height() - top) {
            throw ImageException.damaged("an image of its animation lies outside of the picture");
        }
        if (dispose < 0 || dispose >= AFTERWARDS.length || blend < 0 || blend > 1) {
            throw ImageException.damaged("an image of its animation is to be shown in a way that no PNG has");
        }
        header = picture.resized(width, height);
        seconds = numerator == 0
                ? NO_TIME_SECONDS
                : (double) numerator / (denominator == 0 ? DEFAULT_DENOMINATOR : denominator);
        Easel.Afterwards said = AFTERWARDS[dispose];
        afterwards =
                first && said == Easel.Afterwards.GIVES_WAY_TO_WHAT_WAS_BEFORE ? Easel.Afterwards.IS_CLEARED : said;
        over = blend == 1;
    }

    /** The frame of a control chunk; its data are to be added. */
    static PngFrame of(PngChunks.Chunk control, PngHeader picture, boolean first) throws ImageException {
        control.need(CONTROL_BYTES);
        ByteBuffer data = control.data();
        data.getInt();
        return new PngFrame(data, picture, first);
    }

    void add(PngChunks.Chunk chunk) {
        data.add(chunk);
    }

    /** Decodes the frame and puts it on the easel. */
    void show(PngPixels samples, Easel easel) throws ImageException {
        int numberBytes = data.isEmpty() || data.get(0).type().equals("IDAT") ? 0 : 4;
        int[] pixels = PngRows.pixels(header, samples, PngChunks.joined(data, numberBytes));
        easel.show(new Easel.Piece(left, top, header.width(), header.height(), pixels), over, afterwards, seconds);
    }
}
