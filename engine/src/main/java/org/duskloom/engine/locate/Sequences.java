package org.duskloom.engine.locate;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.text.Counted;

/** Finds out which picture shows which step of a run. */
final class Sequences {
    /** From so many times the number of photos on it is a film. */
    private static final int FILM = 3;

    /** So many photos that are missing or too many are looked for. */
    private static final int FEW = 3;

    private Sequences() {}

    /** @param plane is written over */
    static Sequence of(FindRun run, Pictures pictures, Plane plane) throws IOException, PicturesRefusedException {
        int expected = run.pictures().size();
        if (pictures.count() == expected) {
            return Sequence.ofPhotos(run);
        }
        if (pictures.count() >= FILM * expected) {
            return FilmTiming.find(run, Overview.of(pictures, plane));
        }
        String said = Counted.of(pictures.count(), "picture") + ", but a run of "
                + Counted.of(run.code().pixelCount(), "pixel") + rounds(run) + " has " + expected;
        if (run.apart() == 1 && Math.abs(pictures.count() - expected) <= FEW) {
            throw miscounted(said, run, pictures, plane);
        }
        throw new PicturesRefusedException(
                "",
                said + sameNumber(run, pictures.count()),
                "hand over one photo for each step that steps.txt calls a picture, or the pictures of a film, at least"
                        + " six for each step");
    }

    private static String rounds(FindRun run) {
        return run.apart() == 1 ? "" : " with --apart " + run.apart();
    }

    /** Which other run has so many pictures: first of all one of the same pixels. */
    private static String sameNumber(FindRun run, int count) {
        String otherRounds = otherRounds(run, count);
        return otherRounds.isEmpty()
                ? FindRun.pixelsWithPictures(count)
                        .map(pixels -> "; as many as for " + pixels)
                        .orElse("")
                : otherRounds;
    }

    /** What the end of a sentence says, if so many photos are those of a run of the same pixels in other rounds. */
    static String otherRounds(FindRun run, int count) {
        int ofOneRound = run.pictures().size() / run.apart();
        int rounds = count / ofOneRound;
        if (count == 0
                || count % ofOneRound != 0
                || rounds == run.apart()
                || rounds > Math.min(FindRun.MOST_APART, run.code().pixelCount())) {
            return "";
        }
        return "; as many as " + (rounds == 1 ? "without --apart" : "with --apart " + rounds);
    }

    private static PicturesRefusedException miscounted(String said, FindRun run, Pictures pictures, Plane plane)
            throws IOException, PicturesRefusedException {
        Overview overview = Overview.of(pictures, plane);
        int brightest = brightest(overview);
        if (pictures.count() < run.pictures().size() && brightest != 1) {
            boolean first = brightest == 0 && overview.lit(0) > 1.4 * overview.lit(1);
            return new PicturesRefusedException(
                    "",
                    said + ": " + (first ? "the dark one, the first," : "the one in which all are lit, the second,")
                            + " is missing",
                    "take it again with the camera where it was, or take all of them again");
        }
        if (brightest > 1 && 4 * overview.lit(1) < overview.lit(brightest)) {
            return new PicturesRefusedException(
                    "",
                    said + ": " + pictures.name(1) + " is dark, as " + pictures.name(0) + " is",
                    "leave one of the two out");
        }
        Plane dark = new Plane(plane.size);
        pictures.read(0, dark.codes);
        pictures.read(1, plane.codes);
        Reference reference = Reference.of(plane.size, dark, plane, Integer.MAX_VALUE);
        List<int[]> rest = new ArrayList<>();
        for (int picture = 2; picture < pictures.count(); picture++) {
            rest.add(new int[] {picture});
        }
        LightShares shares = LightShares.ofAny(Readings.read(reference, rest, pictures, plane));
        Miscount miscount = Miscount.of(shares, new RoundPictures(run, 0, pictures::name));
        return miscount.isSure() ? miscount.refusal(said + ": ") : RoundPictures.order("", said);
    }

    private static int brightest(Overview overview) {
        int brightest = 0;
        for (int picture = 1; picture < overview.count(); picture++) {
            brightest = overview.lit(picture) > overview.lit(brightest) ? picture : brightest;
        }
        return brightest;
    }
}
