package org.duskloom.engine.sound.music;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes Standard MIDI Files 1.0 of one track, whose tempo is the truth about their beats. */
final class MidiSong {
    private static final int TICKS = 480;
    private static final int DRUMS = 9;

    private final double tempo;
    private final int beats;
    private final List<Event> events = new ArrayList<>();

    /** @param beats how many there are */
    MidiSong(double tempo, int beats) {
        this.tempo = tempo;
        this.beats = beats;
    }

    private record Event(int tick, int order, byte[] bytes) {}

    List<Double> truth() {
        List<Double> truth = new ArrayList<>();
        for (int i = 0; i < beats; i++) {
            truth.add(i * 60 / tempo);
        }
        return truth;
    }

    MidiSong instrument(int channel, int program) {
        events.add(new Event(0, 0, new byte[] {(byte) (0xC0 | channel), (byte) program}));
        return this;
    }

    void note(int channel, double beat, double length, int note, int velocity) {
        int tick = (int) Math.round(beat * TICKS);
        int end = (int) Math.round((beat + length) * TICKS);
        events.add(new Event(tick, 2, new byte[] {(byte) (0x90 | channel), (byte) note, (byte) velocity}));
        events.add(new Event(end, 1, new byte[] {(byte) (0x80 | channel), (byte) note, 0}));
    }

    void drum(double beat, int note, int velocity) {
        note(DRUMS, beat, 0.1, note, velocity);
    }

    byte[] bytes() {
        ByteArrayOutputStream track = new ByteArrayOutputStream();
        int quarter = (int) Math.round(60e6 / tempo);
        track.writeBytes(
                new byte[] {0, (byte) 0xFF, 0x51, 3, (byte) (quarter >> 16), (byte) (quarter >> 8), (byte) quarter});
        int at = 0;
        events.sort(Comparator.comparingInt(Event::tick).thenComparingInt(Event::order));
        for (Event event : events) {
            variable(track, event.tick - at);
            track.writeBytes(event.bytes);
            at = event.tick;
        }
        track.writeBytes(new byte[] {0, (byte) 0xFF, 0x2F, 0});
        ByteBuffer file = ByteBuffer.allocate(22 + track.size());
        file.put("MThd".getBytes(StandardCharsets.US_ASCII)).putInt(6);
        file.putShort((short) 0).putShort((short) 1).putShort((short) TICKS);
        file.put("MTrk".getBytes(StandardCharsets.US_ASCII)).putInt(track.size());
        return file.put(track.toByteArray()).array();
    }

    private static void variable(ByteArrayOutputStream out, int value) {
        if (value > 0x7F) {
            variable(out, value >> 7, true);
        }
        out.write(value & 0x7F);
    }

    private static void variable(ByteArrayOutputStream out, int value, boolean more) {
        if (value > 0x7F) {
            variable(out, value >> 7, more);
        }
        out.write(value & 0x7F | 0x80);
    }
}
