package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import org.duskloom.engine.sound.LevelMeter;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.sound.SoundFormat;
import org.duskloom.engine.sound.SoundLevels;

/** Listens to a song that passes by in blocks, and tells its beats, bars and sections at the end. */
public final class SongListener {
    /** A song that repeats less has no beat that people would tap. */
    private static final double LEAST_STEADINESS = 0.15;

    /** Of a tone that only goes on, a thousandth rises; of the softest strings, six. */
    private static final double LEAST_RISE = 1;

    /** Bars that are less sure than this are no better than dice. */
    private static final double LEAST_BAR_CONFIDENCE = 0.1;

    private static final int FEWEST_BEATS = 8;
    private static final double WITHOUT_BEAT_SECONDS = 0.5;
    private static final double SAME_TEMPO = 0.04;
    private static final int MOST_RIVALS = 3;

    private final LevelMeter meter;
    private final Spectra spectra;
    private final Wishes wishes;

    /** @param wishes what is known of the song */
    public SongListener(SoundFormat format, Wishes wishes) {
        this.meter = new LevelMeter(format);
        this.spectra = new Spectra(format);
        this.wishes = wishes;
    }

    /**
     * Takes the next samples; their levels are measured beside their spectra, as both only read them.
     *
     * @param channels as a sound stream gives them; not changed
     * @param count how many of each there are
     */
    public void take(double[][] channels, int count) {
        CompletableFuture<Void> measured = CompletableFuture.runAsync(() -> meter.take(channels, count));
        spectra.take(channels, count);
        measured.join();
    }

    /** What was found. No more samples are taken then. */
    public Song finish() {
        spectra.finish();
        SoundLevels levels = meter.levels();
        if (isSilent(levels)) {
            return new Song(levels, Optional.empty(), List.of());
        }
        Onsets onsets = Onsets.of(spectra);
        List<BeatFinder.Ranked> ranked = ranked(onsets, wishes);
        boolean told = wishes.sayThereAreBeats();
        if (!ranked.isEmpty()) {
            BeatRow row = ranked.get(0).row();
            double[] frames =
                    Trimming.of(row.frames(), onsets, wishes.firstSeconds().isPresent());
            if (frames.length >= FEWEST_BEATS && (told || isSteady(row, onsets))) {
                return song(levels, onsets, frames, ranked);
            }
        }
        double[] steps = steps(onsets);
        BeatFeatures features = BeatFeatures.of(spectra, steps);
        return new Song(levels, Optional.empty(), sections(features, steps, new Bars(4, 0, 0), levels, onsets));
    }

    private static List<BeatFinder.Ranked> ranked(Onsets onsets, Wishes wishes) {
        return new BeatFinder(onsets, Tempogram.of(onsets), wishes).ranked();
    }

    /** What is told binds, but may be a slip: then the song alone says something else. */
    private OptionalDouble tempoUntold(Onsets onsets, BeatRow chosen) {
        if (!wishes.sayThereAreBeats()) {
            return OptionalDouble.empty();
        }
        return ranked(onsets, Wishes.NONE).stream()
                .limit(1)
                .map(BeatFinder.Ranked::row)
                .filter(row -> isSteady(row, onsets) && !isSameTempo(row.periodSeconds(), chosen.periodSeconds()))
                .mapToDouble(row -> meanTempo(row.frames(), onsets))
                .findFirst();
    }

    /** Beats a minute. */
    private static double meanTempo(double[] frames, Onsets onsets) {
        return 60 * (frames.length - 1) / (seconds(frames[frames.length - 1], onsets) - seconds(frames[0], onsets));
    }

    private static boolean isSameTempo(double one, double other) {
        return Math.abs(StrictMath.log(one / other)) <= SAME_TEMPO;
    }

    private static boolean isSteady(BeatRow row, Onsets onsets) {
        return row.repeats() >= LEAST_STEADINESS && onsets.rise() >= LEAST_RISE;
    }

    private static boolean isSilent(SoundLevels levels) {
        for (int i = 0; i < levels.count(); i++) {
            if (levels.value(SoundBand.ALL, i) > 0) {
                return false;
            }
        }
        return true;
    }

    private Song song(SoundLevels levels, Onsets onsets, double[] frames, List<BeatFinder.Ranked> ranked) {
        BeatFeatures features = BeatFeatures.of(spectra, frames);
        Bars bars = Bars.of(frames, onsets, features, wishes);
        BeatRow best = ranked.get(0).row();
        boolean marked = bars.confidence() >= LEAST_BAR_CONFIDENCE || wishes.sayBars();
        List<Song.Beat> beats = new ArrayList<>();
        for (int i = 0; i < frames.length; i++) {
            beats.add(new Song.Beat(seconds(frames[i], onsets), marked && bars.startsAt(i)));
        }
        List<Song.Rival> likely = likely(ranked);
        // Where there is no beat, nothing that is said of it is sure.
        double steady =
                Math.max(0, Math.min(1, best.repeats() / LEAST_STEADINESS)) * Math.min(1, onsets.rise() / LEAST_RISE);
        Song.Pulse pulse = new Song.Pulse(
                beats,
                meanTempo(frames, onsets),
                steady * likely.get(0).likelihood(),
                wishes.sayOneTempo(),
                tempoUntold(onsets, best),
                Math.max(0, Math.min(1, best.repeats())),
                bars.beats(),
                steady * bars.confidence(),
                likely.subList(1, Math.min(likely.size(), MOST_RIVALS + 1)));
        return new Song(levels, Optional.of(pulse), sections(features, frames, bars, levels, onsets));
    }

    private static List<Section> sections(
            BeatFeatures features, double[] frames, Bars bars, SoundLevels levels, Onsets onsets) {
        double[] starts =
                Arrays.stream(frames).map(frame -> seconds(frame, onsets)).toArray();
        return Sections.of(features, starts, bars, levels.seconds());
    }

    private static double seconds(double frame, Onsets onsets) {
        return Math.max(0, frame / onsets.framesPerSecond());
    }

    /** Steps of half a second, for songs without beats. */
    private static double[] steps(Onsets onsets) {
        double step = WITHOUT_BEAT_SECONDS * onsets.framesPerSecond();
        double[] steps = new double[(int) Math.max(1, onsets.count() / step)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = i * step;
        }
        return steps;
    }

    /** The tempos that were tried, each once, the best first. */
    private static List<Song.Rival> likely(List<BeatFinder.Ranked> ranked) {
        double best = ranked.get(0).score();
        double sum = 0;
        List<Song.Rival> weighed = new ArrayList<>();
        for (BeatFinder.Ranked row : ranked) {
            double tempo = 60 / row.row().periodSeconds();
            double weight = StrictMath.exp(row.score() - best);
            sum += weight;
            int same = 0;
            while (same < weighed.size() && !isSameTempo(weighed.get(same).tempo(), tempo)) {
                same++;
            }
            if (same < weighed.size()) {
                Song.Rival known = weighed.get(same);
                weighed.set(same, new Song.Rival(known.tempo(), known.likelihood() + weight));
            } else {
                weighed.add(new Song.Rival(tempo, weight));
            }
        }
        double whole = sum;
        return weighed.stream()
                .map(rival -> new Song.Rival(rival.tempo(), rival.likelihood() / whole))
                .toList();
    }
}
