package org.duskloom.engine.locate;

import java.io.IOException;
import java.util.List;
import java.util.function.IntFunction;
import org.duskloom.engine.find.FindCode;

/** Reads the pictures of a round, and makes sure that they are what they should be. */
final class RoundReader {
    /** Where a greater share of the dots than this is burnt out, it is no dark evening. */
    private static final double MOST_BURNT = 0.25;

    private RoundReader() {}

    /** @param plane is written over */
    static Readings read(Pictures pictures, Sequence sequence, int round, Plane plane)
            throws IOException, PicturesRefusedException {
        FindCode code = sequence.run().code();
        List<int[]> shown = sequence.round(round);
        IntFunction<String> names = step -> pictures.name(Sequence.middle(shown.get(step)));
        Pictures exposed = new ExposedPictures(pictures);
        Plane dark = new Plane(plane.size);
        exposed.read(Sequence.middle(shown.get(0)), dark.codes);
        exposed.read(Sequence.middle(shown.get(1)), plane.codes);
        int lights = 1 + (code.pixelCount() - 1) / sequence.run().apart();
        Reference reference = Reference.of(plane.size, dark, plane, lights);
        if (20 * reference.peaks < lights) {
            throw refused(reference, names, dark, plane);
        }
        Readings readings = Readings.read(reference, shown.subList(2, shown.size()), exposed, plane);
        LightShares shares = LightShares.ofPairs(readings);
        RoundPictures known = new RoundPictures(sequence.run(), round, names);
        PairCheck.require(shares, known);
        WordCheck.require(shares, known);
        return readings;
    }

    private static PicturesRefusedException refused(
            Reference reference, IntFunction<String> names, Plane dark, Plane lit) {
        int brighter = 0;
        int darker = 0;
        for (int dot = 0; dot < lit.codes.length; dot++) {
            int by = lit.code(dot) - dark.code(dot);
            brighter += by > 8 * reference.noiseCodes ? 1 : 0;
            darker += by < -8 * reference.noiseCodes ? 1 : 0;
        }
        if (darker > 20 && darker > 3 * brighter) {
            return new PicturesRefusedException(
                    names.apply(0),
                    "should be dark, but shows more light than " + names.apply(1) + ", in which all should be lit",
                    "put the photos in the order of steps.txt and try again");
        }
        return new PicturesRefusedException(
                names.apply(1),
                "shows hardly any light, but all lights should be lit in it",
                "is it the right picture, and is the exposure long enough to see the lights?");
    }

    /** Refuses pictures that are burnt out. */
    private record ExposedPictures(Pictures pictures) implements Pictures {
        @Override
        public int count() {
            return pictures.count();
        }

        @Override
        public String name(int picture) {
            return pictures.name(picture);
        }

        @Override
        public PictureSize size(int picture) throws IOException, PicturesRefusedException {
            return pictures.size(picture);
        }

        @Override
        public void read(int picture, byte[] codes) throws IOException, PicturesRefusedException {
            pictures.read(picture, codes);
            int burnt = 0;
            for (byte code : codes) {
                burnt += (code & 0xFF) >= Plane.BURNT ? 1 : 0;
            }
            if (burnt > MOST_BURNT * codes.length) {
                throw new PicturesRefusedException(
                        pictures.name(picture),
                        "is white all over",
                        "take all pictures again with a shorter exposure, set by hand, when it is dark");
            }
        }
    }
}
