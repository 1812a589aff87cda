package org.duskloom.engine.plan;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.effect.LevelCurve;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.sound.SoundBand;
import org.duskloom.engine.sound.SoundLevels;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.timeline.SoundSource;

/** What numbers of a show may follow: measured when it is asked for, and once only. For one thread. */
final class CurveBook {
    private final Show show;
    private final Optional<FrameBeats> beats;
    private final Problems problems;
    private final Map<Key, LevelCurve> curves = new HashMap<>();
    /** Null as long as nobody asked. */
    private Optional<SoundLevels> levels;

    private record Key(SoundBand band, Smoothing smoothing) {}

    /**
     * What is made of a level.
     *
     * @param floor up to which level there is nothing, below 1
     * @param attack how fast it rises
     * @param release how fast it falls
     */
    record Smoothing(double floor, ExactTime attack, ExactTime release) {
        /**
         * Times to the millisecond, a tenth of a curve's step: beats that people play differ by less from one to the
         * next, and cues that count theirs in beats share a curve, which for an hour of sound takes 3 MB.
         */
        Smoothing {
            attack = toMillisecond(attack);
            release = toMillisecond(release);
        }

        private static ExactTime toMillisecond(ExactTime time) {
            return ExactTime.ofMilliseconds(Math.round(time.seconds() * 1000));
        }
    }

    CurveBook(Show show, Optional<FrameBeats> beats, Problems problems) {
        this.show = show;
        this.beats = beats;
        this.problems = problems;
    }

    /** The course from beat to beat; nothing if the show has no beats. */
    Optional<LevelCurve> ofBeats() {
        return beats.map(BeatCurve::new);
    }

    /** Whether the show has a sound, which need not be readable. */
    boolean hasSound() {
        return show.timeline().sound().isPresent();
    }

    /** The course of a band of the sound; nothing if there is no sound, or if an error was added. */
    Optional<LevelCurve> ofSound(SoundBand band, Smoothing smoothing) {
        if (levels == null) {
            levels = show.timeline().sound().flatMap(this::measured);
        }
        return levels.map(found -> curves.computeIfAbsent(
                new Key(band, smoothing),
                key -> new SoundCurve(
                        found,
                        band,
                        show.timeline().sound().orElseThrow().starts().seconds(),
                        smoothing)));
    }

    private Optional<SoundLevels> measured(SoundSource sound) {
        Optional<Path> file = show.files().remembered(sound.file());
        return file.flatMap(
                path -> SoundLevels.read(path, show.files().shown(sound.file().value()), problems));
    }
}
