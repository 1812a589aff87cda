package org.duskloom.engine.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.duskloom.engine.color.Srgb;
import org.duskloom.engine.frame.FrameReader;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.frame.PropSpan;
import org.duskloom.engine.frame.RunInfo;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashPlace;
import org.duskloom.engine.plan.PlannedCue;
import org.duskloom.engine.preview.CueCaption;
import org.duskloom.engine.preview.MomentPictures;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.text.Quoted;
import org.duskloom.engine.timeline.Played;
import org.duskloom.engine.timeline.SceneCue;

/**
 * The second in which a show flashes most.
 *
 * @param count what was counted
 * @param cues what is played there then, from the bottom layer up
 * @param slowDowns what to write in which of these cues; none where it passes everywhere
 * @param moments those of it in which the light turns
 */
public record WorstSecond(FlashCount count, List<String> cues, List<SlowDown> slowDowns, List<Moment> moments) {
    private static final int MOST_MOMENTS = 12;

    public WorstSecond {
        Objects.requireNonNull(count, "count");
        cues = List.copyOf(cues);
        slowDowns = List.copyOf(slowDowns);
        moments = List.copyOf(moments);
    }

    /**
     * A moment.
     *
     * @param frame its number in the show; beyond the last where the show has started over
     * @param png the display as it is then
     */
    public record Moment(long frame, byte[] png) {}

    /**
     * Looks closer at a second.
     *
     * @throws IOException if its frames cannot be had, or the picture of them would be too large
     */
    static WorstSecond of(FlashCount count, FrameSource source, PlayingCues playing) throws IOException {
        RunInfo run = source.info();
        int[] pixels = pixels(count.place(), run);
        BitSet counted = new BitSet();
        Arrays.stream(pixels).forEach(counted::set);
        long last = lastFrame(count, run);
        Map<String, List<PlannedCue>> played = new LinkedHashMap<>();
        for (int i = 0; i < playing.plan().layers().size(); i++) {
            String layer = playing.timeline().layers().get(i).name();
            for (PlannedCue cue : playing.plan().layers().get(i).cues()) {
                boolean there = plays(cue, count.firstFrame(), last, run.showFrames()) && cue.isOnOneOf(counted);
                if (there) {
                    played.computeIfAbsent(CueCaption.of(layer, cue), caption -> new ArrayList<>())
                            .add(cue);
                }
            }
        }
        long[] turns = turns(source, pixels, count.firstFrame(), last);
        return new WorstSecond(count, List.copyOf(played.keySet()), slowDowns(played, count), moments(source, turns));
    }

    /** What to write in each cue, and of one that is played again within the second how far its plays must be apart. */
    private static List<SlowDown> slowDowns(Map<String, List<PlannedCue>> played, FlashCount count) {
        List<SlowDown> slowDowns = new ArrayList<>();
        if (count.passesEverywhere()) {
            return slowDowns;
        }
        played.forEach((caption, cues) -> {
            SlowDown within = SlowDown.of(caption, cues.get(0).cue(), count.slowBy());
            Optional<Apart> apart = leastApart(cues);
            if (apart.isEmpty() || !within.better().isEmpty()) {
                slowDowns.add(within);
            }
            apart.ifPresent(least ->
                    slowDowns.add(SlowDown.ofRepeat(caption + least.playedBy(), least.seconds(), count.slowBy())));
        });
        return slowDowns;
    }

    /** Two plays that only a repeat tells apart, and how far their starts are from each other. */
    private record Apart(PlannedCue before, PlannedCue next, double seconds) {
        static Apart of(PlannedCue before, PlannedCue next) {
            return new Apart(
                    before, next, next.cue().at().minus(before.cue().at()).seconds());
        }

        boolean isOfRepeat() {
            return seconds > 0 && places(next).equals(places(before));
        }

        /** Which scene round the cue is the one that is repeated, and from where; empty if the cue itself is. */
        String playedBy() {
            for (int i = 0; i < next.within().size(); i++) {
                SceneCue play = next.within().get(i);
                if (!play.at().equals(before.within().get(i).at())) {
                    return " (scene " + Quoted.of(play.scene().value()) + " is played from " + play.location() + ")";
                }
            }
            return "";
        }
    }

    /** Those that are nearest. */
    private static Optional<Apart> leastApart(List<PlannedCue> cues) {
        return IntStream.range(1, cues.size())
                .mapToObj(i -> Apart.of(cues.get(i - 1), cues.get(i)))
                .filter(Apart::isOfRepeat)
                .min(Comparator.comparingDouble(Apart::seconds));
    }

    /** Where it is written, and where all that play the scenes round it are. */
    private static List<Location> places(PlannedCue cue) {
        return Stream.concat(cue.within().stream(), Stream.of(cue.cue()))
                .map(Played::location)
                .toList();
    }

    private static List<Moment> moments(FrameSource source, long[] frames) throws IOException {
        List<byte[]> pictures = MomentPictures.pngs(source, frames);
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < frames.length; i++) {
            moments.add(new Moment(frames[i], pictures.get(i)));
        }
        return moments;
    }

    private static long lastFrame(FlashCount count, RunInfo run) {
        int framesOfSecond = (run.rate().numerator() + run.rate().denominator() - 1)
                / run.rate().denominator();
        long last = count.firstFrame() + framesOfSecond - 1;
        return count.overJoint() ? last : Math.min(last, run.showFrames() - 1);
    }

    private static boolean plays(PlannedCue cue, long first, long last, long showFrames) {
        boolean before = cue.firstFrame() <= last && cue.endFrameExclusive() > first;
        boolean afterJoint = cue.firstFrame() <= last - showFrames;
        return before || afterJoint;
    }

    private static int[] pixels(FlashPlace place, RunInfo run) {
        if (place.prop().isEmpty()) {
            return range(0, run.pixelCount());
        }
        PropSpan prop = run.pixels().props().get(place.prop().getAsInt());
        return place.pixel().isPresent()
                ? new int[] {prop.firstPixel() + place.pixel().getAsInt()}
                : range(prop.firstPixel(), prop.firstPixel() + prop.pixelCount());
    }

    private static int[] range(int first, int end) {
        int[] numbers = new int[end - first];
        Arrays.setAll(numbers, i -> first + i);
        return numbers;
    }

    /** The frames in which the light turns, as many as there is room for; evenly where it turns too seldom. */
    private static long[] turns(FrameSource source, int[] pixels, long first, long last) throws IOException {
        TreeSet<Long> moments = new TreeSet<>(Set.of(first));
        byte[] rgb = new byte[source.info().frameBytes()];
        double[] light = new double[(int) (last - first + 1)];
        try (FrameReader reader = source.reader()) {
            for (int i = 0; i < light.length; i++) {
                reader.read((first + i) % source.info().showFrames(), rgb, 0);
                light[i] = light(rgb, pixels);
            }
        }
        for (int i = 1; i < light.length && moments.size() < MOST_MOMENTS; i++) {
            boolean turns = i + 1 == light.length
                    || (light[i] - light[i - 1]) * (light[i + 1] - light[i]) <= 0 && light[i] != light[i - 1];
            if (turns && light[i] != light[i - 1]) {
                moments.add(first + i);
            }
        }
        int panels = Math.min(8, light.length);
        for (int i = 0; i < panels && moments.size() < 4; i++) {
            moments.add(first + (long) i * light.length / panels);
        }
        return moments.stream().mapToLong(Long::longValue).toArray();
    }

    /** Colours weigh so that red may turn while the luminance stays. */
    private static double light(byte[] rgb, int[] pixels) {
        double sum = 0;
        for (int pixel : pixels) {
            sum += 3 * Srgb.decode(rgb[3 * pixel] & 0xFF)
                    + 2 * Srgb.decode(rgb[3 * pixel + 1] & 0xFF)
                    + Srgb.decode(rgb[3 * pixel + 2] & 0xFF);
        }
        return sum;
    }
}
