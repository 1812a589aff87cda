package org.duskloom.engine.sound.music;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Half a minute of music of our own for the demo of the evening: a verse of plucked strings and bass over eight bars,
 * and a chorus of six with drums and a tune. Notes are MIDI numbers, a dot is a rest, a dash holds on. The same bytes
 * on every machine.
 */
final class EveningMusic {
    static final double TEMPO = 112;
    static final double FIRST_SECONDS = 0.5;
    static final int VERSE_BARS = 8;
    static final int CHORUS_BARS = 6;

    private static final double SECONDS = 31.5;
    private static final double BEAT = 60 / TEMPO;
    private static final long SEED = 24;

    /** The lowest note of each bar's chord, and whether it is a minor one. */
    private static final String VERSE_CHORDS = "45m 41 48 43 45m 41 50m 43";

    private static final String CHORUS_CHORDS = "41 43 45m 41 43 48";

    /** Eight eighths a bar. */
    private static final String[] VERSE_TUNE = {
        "76 - - 74 72 - 69 -", "72 - - - 69 - 67 -", "67 - 72 - 76 - 74 72", "71 - - - 74 - - -",
        "76 - - 74 72 - 69 -", "72 - - 74 76 - 72 -", "74 - 77 - 76 - 74 -", "71 - 74 - 79 - - -"
    };

    private static final String[] CHORUS_TUNE = {
        "81 - 79 77 - 76 77 -", "79 - 77 74 - 71 74 -", "76 - 81 - 84 - 83 81",
        "81 - 79 77 - 76 77 -", "79 - 83 - 86 - 83 79", "84 - - - - - - -"
    };

    private final double[] song = new double[(int) (SECONDS * Instruments.RATE)];
    private final Instruments play = new Instruments(song, SEED);

    private EveningMusic() {}

    /** The file of 16 bits, mono, 22.05 kHz. */
    static byte[] wav() {
        EveningMusic music = new EveningMusic();
        music.verse();
        music.chorus();
        return music.bytes();
    }

    /** Writes the demo's sound anew. */
    public static void main(String[] args) throws IOException {
        Files.write(Path.of(args[0]), wav());
    }

    private static double bar(int number) {
        return FIRST_SECONDS + 4 * BEAT * number;
    }

    private void verse() {
        String[] chords = VERSE_CHORDS.split(" ");
        int[] order = {0, 2, 1, 2, 3, 2, 1, 2};
        for (int bar = 0; bar < VERSE_BARS; bar++) {
            double start = bar(bar);
            int[] notes = notes(chords[bar]);
            bass(start, notes[0], 2);
            for (int i = 0; i < order.length; i++) {
                double loud = i == 0 ? 0.34 : i % 2 == 0 ? 0.26 : 0.16;
                play.pluck(start + i * BEAT / 2, Instruments.hertz(notes[order[i]] + 12), BEAT * 1.5, loud);
            }
            for (int beat = 0; beat < 4; beat++) {
                play.hat(start + beat * BEAT, 0.1, 0.02);
            }
            tune(VERSE_TUNE[bar], start, 0.2);
        }
    }

    private void chorus() {
        String[] chords = CHORUS_CHORDS.split(" ");
        for (int bar = 0; bar < CHORUS_BARS; bar++) {
            double start = bar(VERSE_BARS + bar);
            int[] notes = notes(chords[bar]);
            boolean last = bar == CHORUS_BARS - 1;
            bass(start, notes[0], last ? 1 : 4);
            for (int note : notes) {
                play.bow(start, Instruments.hertz(note + 12), 4 * BEAT, 0.07, 0.05);
            }
            play.kick(start, 0.9);
            for (int beat = 0; beat < (last ? 1 : 4); beat++) {
                double at = start + beat * BEAT;
                if (beat % 2 == 0) {
                    play.kick(at, 0.9);
                } else {
                    play.snare(at, 0.5);
                }
                play.hat(at, 0.22, 0.03);
                play.hat(at + BEAT / 2, 0.14, 0.03);
            }
            tune(CHORUS_TUNE[bar], start, 0.3);
        }
    }

    private void bass(double start, int root, int strokes) {
        for (int i = 0; i < strokes; i++) {
            play.pluck(start + 4 * BEAT * i / strokes, Instruments.hertz(root - 12), 4 * BEAT / strokes, 0.5);
        }
    }

    private void tune(String bar, double start, double loud) {
        String[] eighths = bar.split(" ");
        for (int i = 0; i < eighths.length; i++) {
            if (Character.isDigit(eighths[i].charAt(0))) {
                int length = 1;
                while (i + length < eighths.length && eighths[i + length].equals("-")) {
                    length++;
                }
                double seconds = length * BEAT / 2;
                play.pluck(start + i * BEAT / 2, Instruments.hertz(Integer.parseInt(eighths[i])), seconds, loud);
            }
        }
    }

    /** Root, third, fifth and octave. */
    private static int[] notes(String chord) {
        boolean minor = chord.endsWith("m");
        int root = Integer.parseInt(minor ? chord.substring(0, chord.length() - 1) : chord);
        return new int[] {root, root + (minor ? 3 : 4), root + 7, root + 12};
    }

    private byte[] bytes() {
        double peak = 0;
        for (double sample : song) {
            peak = Math.max(peak, Math.abs(sample));
        }
        ByteBuffer file = ByteBuffer.allocate(44 + 2 * song.length).order(ByteOrder.LITTLE_ENDIAN);
        file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 2 * song.length);
        file.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        file.putShort((short) 1).putShort((short) 1).putInt(Instruments.RATE);
        file.putInt(2 * Instruments.RATE).putShort((short) 2).putShort((short) 16);
        file.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * song.length);
        for (double sample : song) {
            file.putShort((short) Math.rint(28_000 * sample / peak));
        }
        return file.array();
    }
}
