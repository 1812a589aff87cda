package org.duskloom.engine.sound.music;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.duskloom.engine.sound.SoundLevels;

/**
 * What was found in a song.
 *
 * @param levels how loud it is, and its bands
 * @param pulse its beats and bars; nothing where there is no steady beat
 * @param sections its parts, one after the other; none in silence
 */
public record Song(SoundLevels levels, Optional<Pulse> pulse, List<Section> sections) {
    /** @param sections kept as they are */
    public Song {
        sections = List.copyOf(sections);
    }

    /**
     * The beats of a song.
     *
     * @param beats in order of time
     * @param tempo beats a minute, the mean over the song
     * @param tempoConfidence 0 to 1: how far the next likely tempo is
     * @param tempoTold whether it is as it was told, so that no other was tried
     * @param tempoUntold what would have been found if nothing had been told, if that is another tempo
     * @param steadiness 0 to 1: how well the song repeats from beat to beat
     * @param barBeats how many beats a bar has; where none of the beats starts one, this is a guess
     * @param barConfidence 0 to 1
     * @param rivals other tempos that may be meant, the likeliest first
     */
    public record Pulse(
            List<Beat> beats,
            double tempo,
            double tempoConfidence,
            boolean tempoTold,
            OptionalDouble tempoUntold,
            double steadiness,
            int barBeats,
            double barConfidence,
            List<Rival> rivals) {
        /** @param beats kept as they are */
        public Pulse {
            beats = List.copyOf(beats);
            rivals = List.copyOf(rivals);
        }
    }

    /**
     * One beat.
     *
     * @param seconds when it is
     * @param startsBar whether it is the first of a bar
     */
    public record Beat(double seconds, boolean startsBar) {}

    /**
     * A tempo that was not chosen.
     *
     * @param tempo beats a minute
     * @param likelihood 0 to 1, all that were tried together
     */
    public record Rival(double tempo, double likelihood) {}
}
