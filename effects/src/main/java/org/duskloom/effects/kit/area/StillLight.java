package org.duskloom.effects.kit.area;

import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** What each light takes of each picture of a reel that does not move. Immutable. */
final class StillLight {
    /** Where boxes have no more pixels than this, adding them up is cheaper than making a table of sums. */
    private static final double FEW_PIXELS = 64;

    /** A picture of more pixels than this is reduced before a table is made; 192 MB. */
    private static final double MOST_PIXELS = 1 << 22;

    private static final double COARSER = 1.25;

    private final Planes[] images;

    private StillLight(Planes[] images) {
        this.images = images;
    }

    static StillLight of(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        List<Spots> members =
                fields.stream().map(field -> Spots.of(field, reel, placing)).toList();
        Planes[] images = new Planes[reel.count()];
        for (int image = 0; image < images.length; image++) {
            images[image] = Planes.of(canvas, members, summed(reel.image(image), members, style), style);
        }
        return new StillLight(images);
    }

    private static SummedLight summed(LightImage image, List<Spots> members, AreaKernel.Style style) {
        if (members.stream().allMatch(spots -> spots.pixelsOfABox() <= FEW_PIXELS)) {
            return SummedLight.plain(image, style.repeats());
        }
        Reduction reduction = Reduction.of(1, 1);
        while (reduction.size(image.width(), image.height()).pixels() > MOST_PIXELS) {
            reduction = reduction.by(COARSER);
        }
        Reduction.Size size = reduction.size(image.width(), image.height());
        return SummedLight.withTable(size.apply(image, style.repeats()), style.repeats());
    }

    /** Copies the light of one picture to a patch. */
    void paint(int image, int firstPixel, Patch patch) {
        Planes planes = images[image];
        patch.load(planes.red, firstPixel, patch.red);
        patch.load(planes.green, firstPixel, patch.green);
        patch.load(planes.blue, firstPixel, patch.blue);
        if (planes.opaque) {
            patch.makeOpaque();
        } else {
            patch.load(planes.alpha, firstPixel, patch.alpha);
        }
    }

    /** How a picture lies on the lights of a member. */
    private record Spots(LightField field, Mapping mapping, Footprint footprint, Reel reel) {
        static Spots of(LightField field, Reel reel, Placing placing) {
            Pose pose = new Pose();
            placing.pose(new CueTime(), field, pose);
            Mapping mapping = new Mapping();
            mapping.set(placing, field, pose);
            return new Spots(field, mapping, Footprint.of(reel, placing, field, pose), reel);
        }

        double pixelsOfABox() {
            return Math.max(1, footprint.cellWidth()) * Math.max(1, footprint.cellHeight());
        }

        AreaMean mean(AreaKernel.Style style) {
            AreaMean mean = new AreaMean(reel.width(), reel.height(), style);
            mean.begin(footprint.cellWidth(), footprint.cellHeight());
            return mean;
        }
    }

    /** The light of each canvas pixel. */
    private record Planes(float[] red, float[] green, float[] blue, float[] alpha, boolean opaque) {
        static Planes of(Canvas canvas, List<Spots> members, SummedLight picture, AreaKernel.Style style) {
            int count = canvas.pixelCount();
            Planes planes = new Planes(new float[count], new float[count], new float[count], new float[count], false);
            AreaMean[] means = members.stream().map(spots -> spots.mean(style)).toArray(AreaMean[]::new);
            float[] light = new float[LightImage.CHANNELS];
            boolean opaque = true;
            for (int pixel = 0; pixel < count; pixel++) {
                int member = canvas.memberOf()[pixel];
                Spots spots = members.get(member);
                double right = canvas.x()[pixel] - spots.field.centreX();
                double up = canvas.y()[pixel] - spots.field.centreY();
                means[member].light(picture, spots.mapping.shareX(right, up), spots.mapping.shareY(right, up), light);
                planes.keep(pixel, light);
                opaque &= light[3] == 1;
            }
            return new Planes(planes.red, planes.green, planes.blue, planes.alpha, opaque);
        }

        private void keep(int pixel, float[] light) {
            red[pixel] = light[0];
            green[pixel] = light[1];
            blue[pixel] = light[2];
            alpha[pixel] = light[3];
        }
    }
}
