package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.camera.Evening;
import org.duskloom.engine.camera.TestCamera;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.map.PixelMap;
import org.junit.jupiter.api.Test;

class RoundsTest {
    /** On a circle, every fourth one moved by its round's offset. */
    @Test
    void bringsRoundsTogether() {
        double[][] offsets = {{0, 0}, {1.5, -0.5}, {-2, 1}, {0.25, 2}};
        List<Blob> blobs = new ArrayList<>();
        for (int pixel = 0; pixel < 200; pixel++) {
            Blob blob = new Blob(pixel);
            blob.x = 300 + 100 * Math.cos(0.05 * pixel) + offsets[pixel % 4][0];
            blob.y = 300 + 100 * Math.sin(0.05 * pixel) + offsets[pixel % 4][1];
            blob.flux = 1;
            blobs.add(blob);
        }
        Rounds.join(blobs, 200, 4);
        for (Blob blob : blobs) {
            assertThat(blob.x).isCloseTo(300 + 100 * Math.cos(0.05 * blob.pixel), within(0.15));
            assertThat(blob.y).isCloseTo(300 + 100 * Math.sin(0.05 * blob.pixel), within(0.15));
        }
    }

    /** Where lights are three dots apart, taking turns tells them apart. */
    @Test
    void pixelsThatTakeTurnsMayBeNearer() throws Exception {
        PixelMap map = LocateTableTest.rings(150);
        FindRun run = new FindRun(150, 4);
        TestCamera camera =
                new Evening(map.stage(), 5).aside(10).hideShare(0.05).near(2.5).camera();
        Located located = new Locator(CameraShots.photos(camera, run), run, map, true).locate();
        LocateTableTest.Outcome outcome = LocateTableTest.outcome(located, camera, map);
        assertThat(outcome.located()).isGreaterThan(0.97);
        assertThat(outcome.wrong()).isZero();
        assertThat(outcome.error()).isLessThan(0.5);
    }
}
