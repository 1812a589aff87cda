package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.duskloom.engine.camera.Displays;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.Exposure;
import org.duskloom.engine.camera.Lighting;
import org.duskloom.engine.camera.PhotoFiles;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;

/**
 * The photos of the demo garden are those of the test camera: {@code -Dphotos.renew=true} takes them anew. The bytes of
 * JPEG are not promised, so only what they show is compared.
 */
class GardenPhotosTest {
    private static final Path FOLDER = Path.of("../demos/garden/photos");
    private static final PixelMap MAP = Displays.garden().map();
    private static final FindRun RUN = new FindRun(MAP.pixelCount(), 1);

    private static TestCamera camera() {
        return Evening.usual(MAP.stage(), 29).hideShare(0.01).noise(2).near(4.5).camera();
    }

    @Test
    void theKeptPhotosAreThoseOfTheTestCamera() throws IOException {
        Lighting lighting = (step, pixel) -> RUN.isLit(RUN.pictures().get(step), pixel) ? 1 : 0;
        List<Exposure> exposures = Exposure.photos(RUN.pictures().size());
        if (Boolean.getBoolean("photos.renew")) {
            PhotoFiles.write(camera(), lighting, exposures, 0.8, FOLDER);
        }
        try (var files = Files.list(FOLDER)) {
            assertThat(files).hasSize(exposures.size());
        }
        TestCamera camera = camera();
        for (int number : new int[] {0, 1, 2, 33}) {
            BufferedImage taken = camera.picture(lighting, exposures.get(number), number);
            String name = (number < 9 ? "photo-000" : "photo-00") + (number + 1) + ".jpg";
            BufferedImage kept = ImageIO.read(FOLDER.resolve(name).toFile());
            assertThat(kept.getWidth()).isEqualTo(taken.getWidth());
            assertThat(kept.getHeight()).isEqualTo(taken.getHeight());
            assertThat(difference(taken, kept)).as(name).isLessThan(4);
        }
    }

    /** The mean difference of their greens, in codes. */
    private static double difference(BufferedImage one, BufferedImage other) {
        long sum = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                sum += Math.abs((one.getRGB(x, y) >> 8 & 255) - (other.getRGB(x, y) >> 8 & 255));
            }
        }
        return (double) sum / one.getWidth() / one.getHeight();
    }
}
