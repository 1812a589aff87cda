package org.duskloom.effects.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a PNG, with all images if it is animated: W3C Portable Network Graphics, Third Edition. */
final class PngFile {
    private final PngHeader header;
    private final PngPixels samples;
    private final List<PngChunks.Chunk> chunks;

    private PngFile(PngHeader header, PngPixels samples, List<PngChunks.Chunk> chunks) {
        this.header = header;
        this.samples = samples;
        this.chunks = chunks;
    }

    static Film read(byte[] file) throws ImageException {
        List<PngChunks.Chunk> chunks = PngChunks.of(file);
        PngHeader header = PngHeader.of(chunks.get(0));
        PngPixels samples = PngPixels.of(header, first(chunks, "PLTE"), first(chunks, "tRNS"));
        PngFile png = new PngFile(header, samples, chunks);
        Optional<PngChunks.Chunk> animation =
                first(chunks, "acTL").filter(control -> chunks.indexOf(control) < indexOfData(chunks));
        return animation.isPresent() ? png.animation(animation.get()) : png.still();
    }

    private static Optional<PngChunks.Chunk> first(List<PngChunks.Chunk> chunks, String type) {
        return chunks.stream().filter(chunk -> chunk.type().equals(type)).findFirst();
    }

    private static int indexOfData(List<PngChunks.Chunk> chunks) {
        return first(chunks, "IDAT").map(chunks::indexOf).orElse(chunks.size());
    }

    private Film still() throws ImageException {
        List<PngChunks.Chunk> data =
                chunks.stream().filter(chunk -> chunk.type().equals("IDAT")).toList();
        int[] pixels = PngRows.pixels(header, samples, PngChunks.joined(data, 0));
        return Film.still(header.width(), header.height(), pixels);
    }

    private Film animation(PngChunks.Chunk control) throws ImageException {
        control.need(8);
        long count = control.data().getInt() & 0xFFFFFFFFL;
        ImageLimits.check(header.width(), header.height(), count);
        List<PngFrame> frames = frames();
        if (frames.isEmpty() || frames.size() != count) {
            throw ImageException.damaged("it says to have " + count + " images, but has " + frames.size());
        }
        Easel easel = new Easel(header.width(), header.height());
        for (PngFrame frame : frames) {
            frame.show(samples, easel);
        }
        return easel.film();
    }

    private List<PngFrame> frames() throws ImageException {
        List<PngFrame> frames = new ArrayList<>();
        int sequence = 0;
        for (PngChunks.Chunk chunk : chunks) {
            boolean numbered = chunk.type().equals("fcTL") || chunk.type().equals("fdAT");
            if (numbered && (chunk.length() < 4 || chunk.data().getInt() != sequence++)) {
                throw ImageException.damaged("the parts of its animation are not in order");
            }
            if (chunk.type().equals("fcTL")) {
                frames.add(PngFrame.of(chunk, header, frames.isEmpty()));
            } else if (numbered && frames.isEmpty()) {
                throw ImageException.damaged("the parts of its animation are not in order");
            } else if (numbered || chunk.type().equals("IDAT") && !frames.isEmpty()) {
                frames.get(frames.size() - 1).add(chunk);
            }
        }
        return frames;
    }
}
