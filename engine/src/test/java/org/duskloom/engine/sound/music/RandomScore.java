package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Notes that dice have chosen: what drums, bass, chords and a tune may play in common time or in three, plain or swung,
 * in quarters, eighths or sixteenths. Which beat people tap is what the notes are written in.
 */
final class RandomScore {
    /** Who plays. */
    enum Part {
        KICK,
        SNARE,
        HAT,
        BASS,
        CHORD,
        TUNE
    }

    /**
     * A note.
     *
     * @param beat when it begins, in beats from the first
     * @param beats how long it sounds
     * @param pitch a MIDI number
     * @param loud 1 is usual
     */
    record Note(Part part, double beat, double beats, int pitch, double loud) {}

    /** Faster than this nobody fills beats with sixteenths. */
    private static final double FASTEST_WITH_SIXTEENTHS = 130;

    private static final double MARKED = 0.85;
    private static final double MORE_ON_BEATS = 1.25;
    private static final double ODD_SHARE = 0.55;

    /** How much a note of each part is heard. */
    private static final double[] WEIGHTS = {1, 0.9, 0.25, 0.7, 0.3, 0.5};

    private static final int[] SCALE = {0, 2, 4, 7, 9, 12, 14};
    private static final int[][] CHORDS = {{0, 5, 7, 0}, {0, 9, 5, 7}, {0, 7, 9, 5}, {0, 0, 5, 7}, {0, 2, 7, 0}};

    final int barBeats;
    final boolean swung;
    final List<Note> notes = new ArrayList<>();

    private final Random dice;
    private final boolean sixteenths;
    private final int root;
    private final int[] chords;
    private final int barsPerChord;

    private RandomScore(double tempo, int beats, Random dice) {
        this.dice = dice;
        this.barBeats = maybe(0.15) ? 3 : 4;
        this.swung = barBeats == 4 && maybe(0.2);
        this.sixteenths = !swung && tempo < FASTEST_WITH_SIXTEENTHS && maybe(0.5);
        this.root = 41 + dice.nextInt(11);
        this.chords = CHORDS[dice.nextInt(CHORDS.length)];
        this.barsPerChord = maybe(0.25) ? 2 : 1;
        boolean drums = maybe(0.75);
        boolean bass = maybe(0.75);
        boolean chord = !drums && !bass || maybe(0.65);
        boolean tune = !drums && !chord || maybe(0.45);
        int bars = (beats + barBeats - 1) / barBeats;
        if (drums) {
            drums(bars, maybe(0.2) ? 4 : 0);
        }
        if (bass) {
            bass(bars);
        }
        if (chord) {
            chords(bars, drums);
        }
        if (tune) {
            tune(bars);
        }
        notes.removeIf(note -> note.beat >= beats);
    }

    /** Rolled again until nobody could doubt what the beat is. */
    static RandomScore of(double tempo, int beats, Random dice) {
        RandomScore score = new RandomScore(tempo, beats, dice);
        while (!score.isPlain(beats)) {
            score = new RandomScore(tempo, beats, dice);
        }
        return score;
    }

    /**
     * Whether nearly every beat has a note, more is played on beats than between them, and beats that do not start a
     * bar have their share: half as much as those that do, or half-time would be heard as well.
     */
    private boolean isPlain(int beats) {
        double[] on = new double[beats];
        double between = 0;
        for (Note note : notes) {
            if (note.beat == Math.floor(note.beat)) {
                on[(int) note.beat] += WEIGHTS[note.part.ordinal()] * note.loud;
            } else {
                between += WEIGHTS[note.part.ordinal()] * note.loud;
            }
        }
        double all = 0;
        double odd = 0;
        int marked = 0;
        for (int i = 0; i < beats; i++) {
            all += on[i];
            odd += i % barBeats % 2 == 1 ? on[i] : 0;
            marked += on[i] > 0 ? 1 : 0;
        }
        double oddShare = barBeats == 3 ? 1 / 3.0 : 0.5;
        return marked >= MARKED * beats && all >= MORE_ON_BEATS * between && odd >= ODD_SHARE * oddShare * all;
    }

    private void drums(int bars, int firstBar) {
        double[] kick = kick();
        double[] snare = snare();
        double[] hat = hat();
        double onBeat = 0.5 + 0.5 * dice.nextDouble();
        double between = onBeat * (0.5 + 0.6 * dice.nextDouble());
        int fillEvery = maybe(0.4) ? maybe(0.5) ? 4 : 8 : Integer.MAX_VALUE;
        double extra = maybe(0.3) ? 0.3 : 0;
        for (int bar = firstBar; bar < bars; bar++) {
            boolean fills = bar % fillEvery == fillEvery - 1;
            all(Part.KICK, bar, kick, 36, 1);
            all(Part.SNARE, bar, snare, 38, 1);
            if (maybe(extra)) {
                note(Part.KICK, bar, dice.nextInt(2 * barBeats) / 2.0, 0.2, 36, 0.8);
            }
            for (double at : hat) {
                note(Part.HAT, bar, at, 0.1, 42, at == Math.floor(at) ? onBeat : between);
            }
            double step = sixteenths ? 0.25 : 0.5;
            for (double at = barBeats - 1; fills && at < barBeats; at += step) {
                note(Part.SNARE, bar, at, 0.2, 38, 0.7);
            }
        }
    }

    private double[] kick() {
        if (barBeats == 3) {
            return one(new double[][] {{0}, {0}, {0, 2.5}, {0, 1.5}});
        }
        if (maybe(0.25)) {
            return new double[] {0, 1, 2, 3};
        }
        double[][] plain = {
            {0, 2}, {0, 2}, {0, 2}, {0, 2, 2.5}, {0, 1.5, 2}, {0, 2.5}, {0, 1.5, 2.5}, {0, 0.5, 2}, {0, 2, 3.5}, {0}
        };
        double[][] fine = {{0, 0.75, 2}, {0, 2, 2.75}, {0, 1.75, 2.5}, {0, 0.75, 1.5, 2.5}};
        return sixteenths && maybe(0.5) ? one(fine) : one(plain);
    }

    private double[] snare() {
        if (barBeats == 3) {
            return one(new double[][] {{1, 2}, {2}, {}});
        }
        if (sixteenths && maybe(0.2)) {
            return new double[] {1, 1.75, 2.25, 3};
        }
        return maybe(0.88) ? new double[] {1, 3} : new double[0];
    }

    private double[] hat() {
        if (swung) {
            return one(new double[][] {steps(0.5), {0, 1, 1.5, 2, 3, 3.5}, steps(1)});
        }
        if (sixteenths && maybe(0.65)) {
            return steps(0.25);
        }
        int which = dice.nextInt(8);
        return which == 0 ? new double[0] : which == 1 ? offBeats() : which < 4 ? steps(1) : steps(0.5);
    }

    private void bass(int bars) {
        double[] rhythm = barBeats == 3
                ? one(new double[][] {{0}, {0}, {0, 1, 2}, {0, 2}})
                : one(new double[][] {
                    steps(1), steps(1), {0, 2}, {0, 2}, {0}, steps(0.5), {0, 1.5, 2, 3.5}, {0, 1.5, 3}, offBeats()
                });
        boolean walks = maybe(0.4);
        for (int bar = 0; bar < bars; bar++) {
            for (int i = 0; i < rhythm.length; i++) {
                int pitch = chord(bar) - 12 + (walks ? SCALE[(i * 2 + bar) % 5] : 0);
                note(Part.BASS, bar, rhythm[i], gap(rhythm, i) * 0.9, pitch, rhythm[i] == 0 ? 1.1 : 0.9);
            }
        }
    }

    private void chords(int bars, boolean drums) {
        double[][] inFour = {
            {0}, {0}, {0, 2}, {0, 2}, steps(1), steps(1), {0, 1.5, 3}, {0, 1.5}, steps(0.5), {0, 1, 1.5, 2, 3, 3.5}
        };
        double[] rhythm = barBeats == 3
                ? one(new double[][] {{1, 2}, {1, 2}, {0}, steps(1), steps(0.5)})
                : drums && maybe(0.12) ? offBeats() : one(inFour);
        boolean broken = maybe(0.4);
        if (broken) {
            rhythm = sixteenths && maybe(0.4) ? steps(0.25) : maybe(0.75) ? steps(0.5) : steps(1);
        }
        int[] order = maybe(0.5) ? new int[] {0, 7, 12, 16, 19, 16, 12, 7} : new int[] {12, 19, 16, 19};
        for (int bar = 0; bar < bars; bar++) {
            for (int i = 0; i < rhythm.length; i++) {
                double accent = rhythm[i] == 0 ? 1.2 : rhythm[i] == Math.floor(rhythm[i]) ? 1 : 0.8;
                int[] pitches = broken ? new int[] {order[i % order.length]} : new int[] {12, 16, 19};
                for (int pitch : pitches) {
                    note(Part.CHORD, bar, rhythm[i], gap(rhythm, i) * 0.9, chord(bar) + pitch, accent);
                }
            }
        }
    }

    private void tune(int bars) {
        List<double[]> phrase = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            phrase.add(i > 0 && maybe(0.4) ? phrase.get(0) : bar());
        }
        for (int bar = 0; bar < bars; bar++) {
            double[] rhythm = maybe(0.25) ? bar() : phrase.get(bar % 4);
            for (int i = 0; i < rhythm.length; i++) {
                int pitch = root + 24 + SCALE[dice.nextInt(SCALE.length)];
                note(Part.TUNE, bar, rhythm[i], gap(rhythm, i) * 0.9, pitch, rhythm[i] % 1 == 0 ? 1.1 : 0.9);
            }
        }
    }

    /** When a bar's notes of a tune begin. */
    private double[] bar() {
        double[][] plain = {{0}, {0}, {0}, {0, 0.5}, {0, 0.5}, {}, {0.5}};
        double[][] fine = {{0, 0.25, 0.5, 0.75}, {0, 0.75}, {0, 0.5, 0.75}};
        List<Double> rhythm = new ArrayList<>();
        for (int beat = 0; beat < barBeats; beat++) {
            for (double at : sixteenths && maybe(0.25) ? one(fine) : one(plain)) {
                rhythm.add(beat + at);
            }
        }
        if (rhythm.isEmpty() || rhythm.get(0) > 0 && maybe(0.7)) {
            rhythm.add(0, 0.0);
        }
        return rhythm.stream().mapToDouble(at -> at).toArray();
    }

    private int chord(int bar) {
        return root + chords[bar / barsPerChord % chords.length];
    }

    private double[] steps(double step) {
        double[] steps = new double[(int) (barBeats / step)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = i * step;
        }
        return steps;
    }

    private double[] offBeats() {
        double[] beats = steps(1);
        for (int i = 0; i < beats.length; i++) {
            beats[i] += 0.5;
        }
        return beats;
    }

    private double gap(double[] rhythm, int i) {
        return (i + 1 < rhythm.length ? rhythm[i + 1] : barBeats + rhythm[0]) - rhythm[i];
    }

    private void all(Part part, int bar, double[] rhythm, int pitch, double loud) {
        for (double at : rhythm) {
            note(part, bar, at, 0.2, pitch, loud);
        }
    }

    private void note(Part part, int bar, double inBar, double beats, int pitch, double loud) {
        double between = inBar - Math.floor(inBar);
        double late = !swung ? 0 : between == 0.5 ? 1 / 6.0 : 0;
        notes.add(new Note(part, bar * barBeats + inBar + late, beats, pitch, loud * (0.9 + 0.2 * dice.nextDouble())));
    }

    private double[] one(double[][] choices) {
        return choices[dice.nextInt(choices.length)];
    }

    private boolean maybe(double chance) {
        return dice.nextDouble() < chance;
    }
}
