package org.duskloom.engine.locate;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.duskloom.engine.camera.Exposure;
import org.duskloom.engine.camera.Lighting;
import org.duskloom.engine.camera.PhotoFiles;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.find.FindStep;

/** Photos of the test camera, as JPEG of quality 85. */
class CameraShots implements Pictures {
    private static final double QUALITY = 0.85;

    private final TestCamera camera;
    private final Lighting lighting;
    private final List<Exposure> exposures;

    CameraShots(TestCamera camera, Lighting lighting, List<Exposure> exposures) {
        this.camera = camera;
        this.lighting = lighting;
        this.exposures = exposures;
    }

    /** One photo for each step of which pictures are read. */
    static CameraShots photos(TestCamera camera, FindRun run) {
        Lighting lighting = (step, pixel) ->
                step < run.pictures().size() && run.isLit(run.pictures().get(step), pixel) ? 1 : 0;
        return new CameraShots(camera, lighting, Exposure.photos(run.pictures().size()));
    }

    /** The pictures of a film of a whole run, from so many seconds before it until one after it. */
    static CameraShots film(TestCamera camera, FindRun run, double picturesPerSecond, double hold, double before) {
        FindStep[] halves = new FindStep[run.halves()];
        for (FindStep step : run.steps()) {
            for (int i = 0; i < step.halves(); i++) {
                halves[step.startHalves() + i] = step;
            }
        }
        Lighting lighting =
                (half, pixel) -> half >= 0 && half < halves.length && run.isLit(halves[half], pixel) ? 1 : 0;
        double length = 0.5 * hold * run.halves();
        List<Exposure> exposures = Exposure.film(picturesPerSecond, 0.02, 0.5 * hold, -before, length + 1);
        return new CameraShots(camera, lighting, exposures);
    }

    @Override
    public int count() {
        return exposures.size();
    }

    @Override
    public String name(int picture) {
        return "photo-" + (picture + 1) + ".jpg";
    }

    @Override
    public PictureSize size(int picture) {
        return new PictureSize(camera.pinhole().width(), camera.pinhole().height());
    }

    @Override
    public void read(int picture, byte[] codes) throws IOException {
        BufferedImage taken = camera.picture(lighting, exposures.get(picture), picture);
        BufferedImage kept = ImageIO.read(new ByteArrayInputStream(PhotoFiles.jpeg(taken, QUALITY)));
        int[] rgb = kept.getRGB(0, 0, kept.getWidth(), kept.getHeight(), null, 0, kept.getWidth());
        for (int i = 0; i < rgb.length; i++) {
            codes[i] =
                    (byte) ((77 * (rgb[i] >> 16 & 255) + 150 * (rgb[i] >> 8 & 255) + 29 * (rgb[i] & 255) + 128) >> 8);
        }
    }
}
