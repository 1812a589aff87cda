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
                + Counted.of(run.code().pixelCount(), "pixel") + " has " + expected;
        if (run.apart() == 1 && Math.abs(pictures.count() - expected) == 1) {
            throw miscounted(said, expected, pictures, plane);
        }
        throw new PicturesRefusedException(
                "",
                said,
                "hand over one photo for each step that steps.txt calls a picture, or the pictures of a film, at least"
                        + " six for each step");
    }

    private static PicturesRefusedException miscounted(String said, int expected, Pictures pictures, Plane plane)
            throws IOException, PicturesRefusedException {
        Overview overview = Overview.of(pictures, plane);
        int brightest = brightest(overview);
        if (pictures.count() < expected && brightest != 1) {
            boolean first = brightest == 0 && overview.lit(0) > 1.4 * overview.lit(1);
            return new PicturesRefusedException(
                    "",
                    said + ": " + (first ? "the dark one, the first," : "the one in which all are lit, the second,")
                            + " is missing",
                    "take it again with the camera where it was, or take all of them again");
        }
        Plane dark = new Plane(plane.size);
        pictures.read(0, dark.codes);
        pictures.read(1, plane.codes);
        Reference reference = Reference.of(plane.size, dark, plane, Integer.MAX_VALUE);
        List<int[]> rest = new ArrayList<>();
        for (int picture = 2; picture < pictures.count(); picture++) {
            rest.add(new int[] {picture});
        }
        Readings readings = Readings.read(reference, rest, pictures, plane);
        return new PictureCheck(readings, pictures::name, false).miscounted(expected, said);
    }

    private static int brightest(Overview overview) {
        int brightest = 0;
        for (int picture = 1; picture < overview.count(); picture++) {
            brightest = overview.lit(picture) > overview.lit(brightest) ? picture : brightest;
        }
        return brightest;
    }
}
