package org.duskloom.engine.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What eyes get of three seconds: dark, then four of six pixels red, then all of them white. */
class LightReportTest {
    /** Red has 0.2126 of the luminance of white (WCAG 2.2, relative luminance; ITU-R BT.709). */
    private static final double RED = 0.2126;

    private static final Offset<Double> CLOSE = within(1e-6);

    @TempDir
    private Path folder;

    private LightReport light;

    @BeforeEach
    void look() throws IOException {
        light = Reported.of(folder, "").report().light().orElseThrow();
    }

    @Test
    void saysHowMuchLightEachCuePaints() {
        assertThat(light.cues()).extracting(CueUse::cue).containsExactly("ground: solid", "flood");
        assertThat(light.cues()).extracting(CueUse::layer).containsOnly("ground");
        assertThat(light.cues().get(0).meanLight()).isCloseTo(RED, CLOSE);
        assertThat(light.cues().get(0).share()).isCloseTo(4 / 6.0 / 3, CLOSE);
        assertThat(light.cues().get(1).meanLight()).isCloseTo(1, CLOSE);
        assertThat(light.cues().get(1).share()).isCloseTo(1 / 3.0, CLOSE);
    }

    /** The mean over all pixels and frames is what the layer paints, as it is the only one. */
    @Test
    void addsUpItsLayer() {
        double fence = (RED + 1) / 3;
        double post = 1 / 3.0;
        assertThat(light.use().props().get(0).meanLight()).isCloseTo(fence, CLOSE);
        assertThat(light.use().props().get(1).meanLight()).isCloseTo(post, CLOSE);
        assertThat(light.layers()).singleElement().satisfies(layer -> {
            assertThat(layer.meanLight()).isCloseTo((4 * fence + 2 * post) / 6, CLOSE);
            assertThat(layer.masksOnly()).isFalse();
        });
    }

    /** Cues that gate give no light of their own; a layer that only gates says so. */
    @Test
    void countsNoLightOfMasks() {
        List<CueUse> cues = List.of(
                new CueUse("ground", "glow", false, 0.5, 0.2),
                new CueUse("veil", "leaves", true, 0.9, 1),
                new CueUse("ground", "gate", true, 0.9, 0.5),
                new CueUse("ground", "spark", false, 1, 0.01));
        LightReport masked = new LightReport(light.flashes(), light.worst(), light.use(), light.neverLit(), cues);
        assertThat(masked.layers()).extracting(LightReport.LayerUse::layer).containsExactly("ground", "veil");
        assertThat(masked.layers().get(0).meanLight()).isCloseTo(0.5 * 0.2 + 0.01, CLOSE);
        assertThat(masked.layers().get(0).masksOnly()).isFalse();
        assertThat(masked.layers().get(1).meanLight()).isZero();
        assertThat(masked.layers().get(1).masksOnly()).isTrue();
    }

    /** The fence is dark for one second of three, the post for two; no pixel always. */
    @Test
    void saysWhatStaysDark() {
        assertThat(light.use().props().get(0).darkShare()).isCloseTo(1 / 3.0, CLOSE);
        assertThat(light.use().props().get(1).darkShare()).isCloseTo(2 / 3.0, CLOSE);
        assertThat(light.neverLit()).isEmpty();
    }

    /** Dark to red, red to white and white to dark are a second apart: no second has two of them. */
    @Test
    void countsNoChangeTwice() {
        assertThat(light.flashes().passes()).isTrue();
        assertThat(light.flashes().general().most()).isEqualTo(1);
        assertThat(light.flashes().red().most()).isEqualTo(1);
        assertThat(light.worst().slowDowns()).isEmpty();
    }
}
