package org.duskloom.engine.sound.music;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.LongStream;

/**
 * Measures how well beats are found in songs that dice have made, and fits the weights of {@link RowScore} to others.
 *
 * <ul>
 *   <li>{@code measure FROM TO}: songs of these seeds, each that fails, and the means;
 *   <li>{@code fit FROM TO}: weights for them, to be written into {@link RowScore}.
 * </ul>
 */
final class BeatMeasure {
    /** From here on beats are found. */
    static final double FOUND = 0.9;

    private static final double SAME_TEMPO = 0.08;

    private BeatMeasure() {}

    /**
     * What was heard in a song.
     *
     * @param f the F-measure of the row that was chosen
     * @param best of the best row that was tried
     * @param octaves how many times the tempo was doubled; not a number if it is another tempo
     * @param barsRight whether bars have the right length and start on the right beats, where beats are found
     */
    record Heard(RandomSong song, double f, double best, double octaves, boolean barsRight) {
        boolean rightTempo() {
            return octaves == 0;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d: %.0f a minute, %s: F %.3f, best tried %.3f, octaves %.0f%s",
                    song.seed,
                    song.tempo,
                    song.kind,
                    f,
                    best,
                    octaves,
                    barsRight ? "" : ", wrong bars");
        }
    }

    public static void main(String[] args) {
        long[] seeds = LongStream.range(Long.parseLong(args[1]), Long.parseLong(args[2]))
                .toArray();
        if (args[0].equals("fit")) {
            fit(seeds);
        } else {
            measure(seeds);
        }
    }

    private static void measure(long[] seeds) {
        List<Heard> all = Arrays.stream(seeds)
                .parallel()
                .mapToObj(seed -> heard(new RandomSong(seed)))
                .toList();
        all.stream().filter(heard -> heard.f < FOUND).forEach(System.out::println);
        TreeMap<String, List<Heard>> byKind = new TreeMap<>();
        for (Heard heard : all) {
            byKind.computeIfAbsent("all", key -> new ArrayList<>()).add(heard);
            for (String kind : heard.song.kind.split(", ")) {
                byKind.computeIfAbsent(kind, key -> new ArrayList<>()).add(heard);
            }
            String tempo = String.format(Locale.ROOT, "from %3.0f", 30 * Math.floor(heard.song.tempo / 30));
            byKind.computeIfAbsent(tempo, key -> new ArrayList<>()).add(heard);
        }
        byKind.forEach((kind, heard) -> System.out.println(line(kind, heard)));
    }

    private static String line(String kind, List<Heard> heard) {
        return String.format(
                Locale.ROOT,
                "%-10s %4d songs: mean F %.4f, %5.1f %% under %.1f, %5.1f %% right tempo, best tried %.4f, %5.1f %% right bars",
                kind,
                heard.size(),
                heard.stream().mapToDouble(Heard::f).average().orElse(0),
                percent(heard.stream().filter(song -> song.f < FOUND).count(), heard),
                FOUND,
                percent(heard.stream().filter(Heard::rightTempo).count(), heard),
                heard.stream().mapToDouble(Heard::best).average().orElse(0),
                percent(heard.stream().filter(Heard::barsRight).count(), heard));
    }

    private static double percent(long count, List<Heard> of) {
        return 100.0 * count / of.size();
    }

    static Heard heard(RandomSong song) {
        Spectra spectra = spectra(song);
        Onsets onsets = Onsets.of(spectra);
        List<BeatFinder.Ranked> ranked = new BeatFinder(onsets, Tempogram.of(onsets), Wishes.NONE).ranked();
        double best = ranked.stream()
                .mapToDouble(row -> f(row.row(), onsets, song))
                .max()
                .orElse(0);
        BeatRow chosen = ranked.get(0).row();
        double[] frames = Trimming.of(chosen.frames(), onsets, false);
        Bars bars = Bars.of(frames, onsets, BeatFeatures.of(spectra, frames), Wishes.NONE);
        double truth = 60 * (song.beats.size() - 1) / (song.beats.get(song.beats.size() - 1) - song.beats.get(0));
        return new Heard(
                song,
                f(chosen, onsets, song),
                best,
                octaves(60 / chosen.periodSeconds() / truth),
                barsRight(bars, frames, onsets, song));
    }

    private static double octaves(double ratio) {
        double octaves = Math.log(ratio) / Math.log(2);
        return Math.abs(octaves - Math.rint(octaves)) < SAME_TEMPO ? Math.rint(octaves) + 0.0 : Double.NaN;
    }

    private static boolean barsRight(Bars bars, double[] frames, Onsets onsets, RandomSong song) {
        if (bars.beats() != song.score.barBeats) {
            return false;
        }
        double first = frames[bars.first()] / onsets.framesPerSecond();
        for (int i = 0; i < song.beats.size(); i++) {
            if (Math.abs(song.beats.get(i) - first) < 0.1) {
                return i % bars.beats() == 0;
            }
        }
        return false;
    }

    private static double f(BeatRow row, Onsets onsets, RandomSong song) {
        return BeatScore.of(
                Arrays.stream(Trimming.of(row.frames(), onsets, false))
                        .mapToObj(frame -> frame / onsets.framesPerSecond())
                        .toList(),
                song.beats);
    }

    private static Spectra spectra(RandomSong song) {
        Spectra spectra = new Spectra(song.format());
        spectra.take(new double[][] {song.samples}, song.samples.length);
        spectra.finish();
        return spectra;
    }

    /** The traits of all rows of a song, and which of them have the beats. */
    private record Tried(List<double[]> rows, List<Boolean> right) {}

    private static Tried tried(long seed) {
        RandomSong song = new RandomSong(seed);
        Onsets onsets = Onsets.of(spectra(song));
        Tried tried = new Tried(new ArrayList<>(), new ArrayList<>());
        for (BeatFinder.Ranked row : new BeatFinder(onsets, Tempogram.of(onsets), Wishes.NONE).ranked()) {
            tried.rows.add(row.row().traits());
            tried.right.add(f(row.row(), onsets, song) >= FOUND);
        }
        return tried;
    }

    private static void fit(long[] seeds) {
        WeightFit fit = new WeightFit(RowScore.TRAITS.size());
        Arrays.stream(seeds)
                .parallel()
                .mapToObj(BeatMeasure::tried)
                .toList()
                .forEach(tried -> fit.add(tried.rows, tried.right));
        double[] weights = fit.weights();
        System.out.printf(Locale.ROOT, "%.1f %% of these songs are chosen right%n", 100 * fit.chosenRight(weights));
        for (int i = 0; i < weights.length; i++) {
            System.out.printf(Locale.ROOT, "%8.2f, // %s%n", weights[i], RowScore.TRAITS.get(i));
        }
    }
}
