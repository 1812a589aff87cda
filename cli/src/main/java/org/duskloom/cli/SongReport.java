package org.duskloom.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.duskloom.engine.preview.TimeLabel;
import org.duskloom.engine.sound.music.Section;
import org.duskloom.engine.sound.music.Song;
import org.duskloom.engine.text.Counted;

/** What was found in a song, in words. */
final class SongReport {
    private static final double SURE = 0.8;
    private static final double LIKELY = 0.5;
    private static final double WORTH_NAMING = 0.02;
    private static final int MOST_SECTIONS = 12;

    private SongReport() {}

    /** A line for each thing. */
    static String of(Song song) {
        StringBuilder text = new StringBuilder();
        line(text, "length", time(song.levels().seconds()));
        line(text, "loudness", loudness(song));
        if (song.pulse().isPresent()) {
            pulse(text, song.pulse().get());
        } else {
            line(text, "beats", "no steady beat was found; where there is one, --tempo says about which");
        }
        line(text, "sections", sections(song.sections()));
        return text.toString();
    }

    /** What matters most, in a line for the picture. */
    static String shortly(Song song) {
        String beat = song.pulse()
                .map(pulse -> bpm(pulse.tempo()) + " beats a minute, " + tempoWord(pulse) + ", "
                        + (marksBars(pulse)
                                ? "bars of " + pulse.barBeats() + ", " + sure(pulse.barConfidence())
                                : "bars not clear"))
                .orElse("no steady beat");
        return time(song.levels().seconds()) + ", " + beat;
    }

    private static void pulse(StringBuilder text, Song.Pulse pulse) {
        line(text, "tempo", bpm(pulse.tempo()) + " beats a minute, " + tempoWord(pulse));
        String others = pulse.rivals().stream()
                .filter(rival -> rival.likelihood() >= WORTH_NAMING)
                .map(rival -> bpm(rival.tempo()) + " (" + percent(rival.likelihood()) + ")")
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            line(text, "", "or " + others + "; --tempo chooses");
        }
        line(
                text,
                "beats",
                pulse.beats().size() + " from " + time(pulse.beats().get(0).seconds()) + " to "
                        + time(pulse.beats().get(pulse.beats().size() - 1).seconds()) + ", steady to "
                        + percent(pulse.steadiness()));
        line(text, "bars", bars(pulse));
    }

    /** Where only the told tempo was tried, there is nothing to be sure of but whether the song goes along with it. */
    private static String tempoWord(Song.Pulse pulse) {
        if (pulse.tempoUntold().isPresent()) {
            return "by what was told; by the song alone "
                    + bpm(pulse.tempoUntold().getAsDouble());
        }
        if (!pulse.tempoTold()) {
            return sure(pulse.tempoConfidence());
        }
        return pulse.tempoConfidence() >= LIKELY ? "as told" : "as told, though hardly anything in the song repeats so";
    }

    private static String bars(Song.Pulse pulse) {
        long bars = pulse.beats().stream().filter(Song.Beat::startsBar).count();
        return marksBars(pulse)
                ? Counted.of(bars, "bar") + " of " + pulse.barBeats() + " beats, " + sure(pulse.barConfidence())
                : "not clear, so none is marked; --bar says how many beats they have, --first where one starts";
    }

    private static boolean marksBars(Song.Pulse pulse) {
        return pulse.beats().stream().anyMatch(Song.Beat::startsBar);
    }

    /** Their places are guesses; how clear a change is stands beside it, as a share of the clearest of the song. */
    private static String sections(List<Section> sections) {
        String first = sections.get(0).name() + " at " + time(sections.get(0).startSeconds());
        if (sections.size() == 1) {
            return first + "; no clear change was found";
        }
        String named = "a guess: " + first
                + sections.stream()
                        .limit(MOST_SECTIONS)
                        .skip(1)
                        .map(section -> ", " + section.name() + " at " + time(section.startSeconds()) + " ("
                                + clear(section.confidence()) + ")")
                        .collect(Collectors.joining());
        return sections.size() > MOST_SECTIONS ? named + " and " + (sections.size() - MOST_SECTIONS) + " more" : named;
    }

    private static String clear(double confidence) {
        return confidence >= 1 ? "the clearest change" : percent(confidence) + " as clear";
    }

    private static String loudness(Song song) {
        return song.levels().loudness().isPresent()
                ? String.format(
                        Locale.ROOT, "%.1f LUFS", song.levels().loudness().getAsDouble())
                : "too short to tell";
    }

    private static String sure(double confidence) {
        String word = confidence >= SURE ? "sure" : confidence >= LIKELY ? "likely" : "a guess";
        return word + " (" + percent(confidence) + ")";
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String bpm(double tempo) {
        return String.format(Locale.ROOT, "%.1f", tempo);
    }

    private static String time(double seconds) {
        return TimeLabel.of(Math.round(seconds * 100) / 100.0);
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(name).append(" ".repeat(10 - name.length())).append(value).append('\n');
    }
}
