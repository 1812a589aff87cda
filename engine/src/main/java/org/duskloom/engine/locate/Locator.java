package org.duskloom.engine.locate;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;

/** Finds in pictures of a run where every pixel hangs. */
public final class Locator {
    private final Pictures pictures;
    private final FindRun run;
    private final PixelMap map;
    private final boolean places;

    /**
     * @param pictures the photos of the run's pictures, in order, or the pictures of a film of all of it
     * @param run the run
     * @param map whose pixels they are, as many as the run has
     * @param places whether the places of the map are those of a display; else the order of the wire is all that it
     *     tells
     */
    public Locator(Pictures pictures, FindRun run, PixelMap map, boolean places) {
        if (map.pixelCount() != run.code().pixelCount()) {
            throw new IllegalArgumentException(
                    map.pixelCount() + " pixels in a run of " + run.code().pixelCount());
        }
        this.pictures = pictures;
        this.run = run;
        this.map = map;
        this.places = places;
    }

    /**
     * Reads the pictures one after the other, and finds the pixels.
     *
     * @throws PicturesRefusedException if the pictures cannot be those of the run
     * @throws IOException if a picture cannot be read
     */
    public Located locate() throws IOException, PicturesRefusedException {
        PictureSize size = PictureSizes.requireAlike(pictures);
        Plane plane = new Plane(size);
        Sequence sequence = Sequences.of(run, pictures, plane);
        List<Reference> references = new ArrayList<>();
        List<Blob> blobs = new ArrayList<>();
        for (int round = 0; round < run.apart(); round++) {
            Readings readings = RoundReader.read(pictures, sequence, round, plane);
            BlobFinder finder = BlobFinder.read(readings, run.code(), round, run.apart());
            if (finder.isBurntTogether()) {
                throw burntTogether(
                        pictures.name(Sequence.middle(sequence.round(round).get(1))));
            }
            List<Blob> found = finder.blobs();
            Unmixer.refine(readings, run.code(), found);
            references.add(readings.reference);
            blobs.addAll(found);
        }
        if (run.apart() > 1) {
            Rounds.join(blobs, map.pixelCount(), run.apart());
        }
        return located(size, Sequence.middle(sequence.shown().get(1)), blobs, references);
    }

    private static PicturesRefusedException burntTogether(String picture) {
        return new PicturesRefusedException(
                picture,
                "shows lights that are burnt out and run into each other, so that places would be wrong",
                "take all pictures again with a shorter exposure, set by hand, or with --light lower");
    }

    private Located located(PictureSize size, int picture, List<Blob> blobs, List<Reference> references) {
        Candidates candidates = Candidates.of(blobs, map.pixelCount());
        WireCheck.check(candidates, map);
        if (places) {
            PropCheck.check(candidates, map);
        }
        UnseenReasons reasons = new UnseenReasons(candidates, map, references);
        List<Sighting> seen = new ArrayList<>();
        List<Unseen> unseen = new ArrayList<>();
        int burnt = 0;
        for (int pixel = 0; pixel < map.pixelCount(); pixel++) {
            Blob blob = candidates.of(pixel);
            if (blob == null) {
                unseen.add(reasons.of(pixel));
            } else {
                seen.add(new Sighting(pixel, blob.x, blob.y, blob.sure));
                burnt += blob.burnt ? 1 : 0;
            }
        }
        return new Located(size, picture, seen, unseen, burnt, new LightSpots(references));
    }
}
