package org.duskloom.engine.packet;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Counted;

/**
 * A capture file that was written before, read back frame by frame: the records of every frame have the same places, so
 * any frame can be had in any order. Files of other makers, whose records may come in any order, are refused. For one
 * thread.
 */
public final class CapturedShow implements Closeable {
    private static final int RECORD_BYTES = 16;
    private static final int SLOTS_FROM_RECORD = Capture.HEADER_BYTES + DataPacket.SLOTS_AT;
    private static final int MOST_UNIVERSES = 63_999;
    private static final byte[] IDENTIFIER = "ASC-E1.17\0\0\0".getBytes(StandardCharsets.US_ASCII);

    private final FileChannel channel;
    private final List<byte[]> records;
    private final ByteBuffer frame;

    private CapturedShow(FileChannel channel, List<byte[]> records) {
        this.channel = channel;
        this.records = List.copyOf(records);
        this.frame = ByteBuffer.allocate(
                records.stream().mapToInt(record -> record.length).sum());
    }

    /**
     * Opens a capture.
     *
     * @param file the capture
     * @param run what it is of, as the manifest beside it says
     * @param problems where errors go
     * @return nothing if an error was added
     * @throws IOException if the file cannot be read
     */
    public static Optional<CapturedShow> open(Path file, RunInfo run, Problems problems) throws IOException {
        Location place = Location.ofFile(file.toString());
        if (!Files.isRegularFile(file)) {
            problems.error(
                    place,
                    "there is no such file",
                    "'duskloom render' and 'duskloom proof' write it with --as packets");
            return Optional.empty();
        }
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        try {
            List<byte[]> records = firstFrame(channel);
            CapturedShow show = new CapturedShow(channel, records);
            int ending = PacketsSink.endsShow(run) ? PacketsKind.PACKETS_AT_END : 0;
            long expected = Capture.FILE_HEADER_BYTES + (run.frames().count() + ending) * show.frame.capacity();
            if (!records.isEmpty() && channel.size() == expected) {
                return Optional.of(show);
            }
            if (records.isEmpty()) {
                problems.error(place, "this is no capture of a show as --as packets writes it", "render it again");
            } else {
                problems.error(
                        place,
                        "it has " + channel.size() + " bytes, and "
                                + Counted.of(run.frames().count(), "frame") + " of "
                                + Counted.of(records.size(), "universe") + " have " + expected,
                        "it was cut short or belongs to another rendering; render it again");
            }
        } catch (IOException | RuntimeException fault) {
            channel.close();
            throw fault;
        }
        channel.close();
        return Optional.empty();
    }

    /** The records that have the stamp of the first; none if something in them is not as it was written. */
    private static List<byte[]> firstFrame(FileChannel channel) throws IOException {
        List<byte[]> records = new ArrayList<>();
        if (!Arrays.equals(read(channel, 0, Capture.FILE_HEADER_BYTES), Capture.fileHeader())) {
            return List.of();
        }
        long at = Capture.FILE_HEADER_BYTES;
        byte[] record = record(channel, at);
        while (record.length > 0 && records.size() < MOST_UNIVERSES && isOfFrame(record, records)) {
            if (!isSound(record)) {
                return List.of();
            }
            records.add(record);
            at += record.length;
            record = record(channel, at);
        }
        return records;
    }

    private static boolean isOfFrame(byte[] record, List<byte[]> before) {
        return before.isEmpty() || Arrays.equals(record, 0, 8, before.get(0), 0, 8);
    }

    /** The record at a place; empty if there is none, or one that is no packet of ours by its length. */
    private static byte[] record(FileChannel channel, long at) throws IOException {
        byte[] header = read(channel, at, RECORD_BYTES);
        if (header.length < RECORD_BYTES) {
            return new byte[0];
        }
        int length = ByteBuffer.wrap(header).order(ByteOrder.LITTLE_ENDIAN).getInt(8);
        int slots = length + RECORD_BYTES - SLOTS_FROM_RECORD;
        if (slots < 0 || slots > 512) {
            return new byte[0];
        }
        byte[] record = read(channel, at, RECORD_BYTES + length);
        return record.length == RECORD_BYTES + length ? record : new byte[0];
    }

    private static byte[] read(FileChannel channel, long at, int count) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(count);
        while (bytes.hasRemaining() && channel.read(bytes, at + bytes.position()) >= 0) {
            continue;
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    private static boolean isSound(byte[] record) {
        int packetAt = Capture.HEADER_BYTES;
        boolean named = Arrays.equals(record, packetAt + 4, packetAt + 16, IDENTIFIER, 0, IDENTIFIER.length);
        int universe = universe(record);
        return named && universe >= 1 && universe <= MOST_UNIVERSES;
    }

    private static int universe(byte[] record) {
        return ByteBuffer.wrap(record).getShort(Capture.HEADER_BYTES + 113) & 0xFFFF;
    }

    /** Who sent it, without synchronization. */
    public StreamSource source() {
        ByteBuffer packet =
                ByteBuffer.wrap(records.get(0)).position(Capture.HEADER_BYTES).slice();
        byte[] name = new byte[StreamSource.NAME_BYTES];
        packet.get(44, name);
        int end = 0;
        while (end < name.length && name[end] != 0) {
            end++;
        }
        int priority = Math.min(packet.get(108) & 0xFF, StreamSource.HIGHEST_PRIORITY);
        UUID cid = new UUID(packet.getLong(22), packet.getLong(30));
        return new StreamSource(cid, new String(name, 0, end, StandardCharsets.UTF_8), priority, 0);
    }

    /** A packet for each universe, for {@link #read}. */
    public List<DataPacket> packets(StreamSource source) {
        return records.stream()
                .map(record -> new DataPacket(source, universe(record), record.length - SLOTS_FROM_RECORD, 0))
                .toList();
    }

    /**
     * Puts the slots of a frame into packets.
     *
     * @param index the frame's place in the file, from 0
     * @param packets of {@link #packets}
     * @throws IOException if the file cannot be read, or became shorter
     */
    public void read(long index, List<DataPacket> packets) throws IOException {
        frame.clear();
        long at = Capture.FILE_HEADER_BYTES + index * frame.capacity();
        while (frame.hasRemaining()) {
            if (channel.read(frame, at + frame.position()) < 0) {
                throw new EOFException("the capture became shorter while it was read");
            }
        }
        int record = 0;
        for (int i = 0; i < packets.size(); i++) {
            DataPacket packet = packets.get(i);
            int slots = packet.length() - DataPacket.SLOTS_AT;
            System.arraycopy(frame.array(), record + SLOTS_FROM_RECORD, packet.bytes(), packet.firstSlotAt(), slots);
            record += SLOTS_FROM_RECORD + slots;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
