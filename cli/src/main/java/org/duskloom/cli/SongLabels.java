package org.duskloom.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.duskloom.engine.sound.LabelTrack;
import org.duskloom.engine.sound.TrackLabel;
import org.duskloom.engine.sound.music.Section;
import org.duskloom.engine.sound.music.Song;
import org.duskloom.engine.time.ExactTime;

/** What was found in a song, as a label track: to the millisecond. */
final class SongLabels {
    private static final String BEAT = "beat";
    private static final String BAR = "bar";

    private SongLabels() {}

    static LabelTrack of(Song song) {
        List<TrackLabel> labels = new ArrayList<>();
        for (Section section : song.sections()) {
            labels.add(TrackLabel.of(time(section.startSeconds()), time(section.endSeconds()), section.name()));
        }
        song.pulse()
                .ifPresent(pulse -> pulse.beats()
                        .forEach(beat ->
                                labels.add(TrackLabel.of(time(beat.seconds()), beat.startsBar() ? BAR : BEAT))));
        labels.sort(Comparator.comparing(TrackLabel::start));
        return new LabelTrack(labels);
    }

    private static ExactTime time(double seconds) {
        return ExactTime.ofMilliseconds(Math.round(seconds * 1000));
    }
}
