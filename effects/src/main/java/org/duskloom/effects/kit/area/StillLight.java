package org.duskloom.effects.kit.area;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.CueTime;
import org.duskloom.engine.effect.Patch;

/** What each light takes of each picture of a reel that does not move. Immutable. */
final class StillLight {
    private final Planes[] images;

    private StillLight(Planes[] images) {
        this.images = images;
    }

    static StillLight of(Canvas canvas, List<LightField> fields, Reel reel, Placing placing, AreaKernel.Style style) {
        List<Spots> members =
                fields.stream().map(field -> Spots.of(field, reel, placing)).toList();
        Planes[] images = new Planes[reel.count()];
        for (int image = 0; image < images.length; image++) {
            images[image] = Planes.of(canvas, members, reel.image(image), style);
        }
        return new StillLight(images);
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
    private record Spots(LightField field, Mapping mapping, Footprint footprint) {
        static Spots of(LightField field, Reel reel, Placing placing) {
            Pose pose = new Pose();
            placing.pose(new CueTime(), field, pose);
            Mapping mapping = new Mapping();
            mapping.set(placing, field, pose);
            return new Spots(field, mapping, Footprint.of(reel, placing, field, pose));
        }
    }

    /** The light of each canvas pixel. */
    private record Planes(float[] red, float[] green, float[] blue, float[] alpha, boolean opaque) {
        static Planes of(Canvas canvas, List<Spots> members, LightImage image, AreaKernel.Style style) {
            int count = canvas.pixelCount();
            Planes planes = new Planes(new float[count], new float[count], new float[count], new float[count], false);
            AreaMean[] means = means(members, image, style);
            float[] light = new float[LightImage.CHANNELS];
            boolean opaque = true;
            for (int pixel = 0; pixel < count; pixel++) {
                int member = canvas.memberOf()[pixel];
                Spots spots = members.get(member);
                double right = canvas.x()[pixel] - spots.field.centreX();
                double up = canvas.y()[pixel] - spots.field.centreY();
                means[member].light(spots.mapping.shareX(right, up), spots.mapping.shareY(right, up), light);
                planes.keep(pixel, light);
                opaque &= light[3] == 1;
            }
            return new Planes(planes.red, planes.green, planes.blue, planes.alpha, opaque);
        }

        private static AreaMean[] means(List<Spots> members, LightImage image, AreaKernel.Style style) {
            Map<Footprint, AreaMean> byFootprint = new HashMap<>();
            return members.stream()
                    .map(spots -> byFootprint.computeIfAbsent(
                            spots.footprint, footprint -> AreaMean.of(image, footprint, style)))
                    .toArray(AreaMean[]::new);
        }

        private void keep(int pixel, float[] light) {
            red[pixel] = light[0];
            green[pixel] = light[1];
            blue[pixel] = light[2];
            alpha[pixel] = light[3];
        }
    }
}
