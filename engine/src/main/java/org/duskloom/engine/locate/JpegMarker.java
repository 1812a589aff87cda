package org.duskloom.engine.locate;

import java.io.DataInput;
import java.io.IOException;

/** The markers of the segments that stand before the picture in a JPEG (ITU-T T.81, annex B). */
public final class JpegMarker {
    /** There is no further segment: the scan begins, or what stands there is no marker. */
    public static final int NONE = 0;

    private static final int START_OF_SCAN = 0xFFDA;

    private JpegMarker() {}

    /**
     * Reads the marker of the next segment, whose length follows.
     *
     * @param jpeg behind the start of the image or behind a segment
     * @return FFxx hex, or {@link #NONE}
     * @throws IOException if it cannot be read, or ends
     */
    public static int ofSegment(DataInput jpeg) throws IOException {
        int marker = jpeg.readUnsignedShort();
        // Any number of fill bytes may stand before a marker (B.1.1.2).
        while (marker == 0xFFFF) {
            marker = 0xFF00 | jpeg.readUnsignedByte();
        }
        return marker >>> 8 != 0xFF || marker == START_OF_SCAN ? NONE : marker;
    }
}
