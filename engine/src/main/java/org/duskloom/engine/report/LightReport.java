package org.duskloom.engine.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.LightMeter;
import org.duskloom.engine.meter.light.UseFigures;
import org.duskloom.engine.preview.CueCaption;
import org.duskloom.engine.render.CueMean;

/**
 * What eyes get of a show.
 *
 * @param flashes how often it flashes
 * @param worst the second in which it does so most
 * @param use how much of the display is used
 * @param neverLit the pixels that are dark in every frame, by prop
 * @param cues how much light each cue paints, in the order of painting
 */
public record LightReport(
        FlashFigures flashes, WorstSecond worst, UseFigures use, List<NeverLit> neverLit, List<CueUse> cues) {
    public LightReport {
        Objects.requireNonNull(flashes, "flashes");
        Objects.requireNonNull(worst, "worst");
        Objects.requireNonNull(use, "use");
        neverLit = List.copyOf(neverLit);
        cues = List.copyOf(cues);
    }

    /**
     * What a meter has seen. What cues paint by themselves is found out beside the pictures of the worst second.
     *
     * @param source its frames, of which some are looked at again
     * @param map names the pixels
     * @throws IOException if they cannot be had
     */
    public static LightReport of(LightMeter meter, FrameSource source, PixelMap map, PlayingCues playing)
            throws IOException {
        CompletableFuture<List<CueMean>> means = CompletableFuture.supplyAsync(() -> CueMean.of(playing.plan()));
        FlashFigures flashes = meter.flashes();
        WorstSecond worst = WorstSecond.of(flashes.worst(), source, playing);
        double all = (double) source.info().pixelCount() * source.info().showFrames();
        List<CueUse> cues =
                means.join().stream().map(mean -> cueUse(mean, playing, all)).toList();
        UseFigures use = meter.use();
        return new LightReport(flashes, worst, use, NeverLit.of(map, use.props()), cues);
    }

    private static CueUse cueUse(CueMean mean, PlayingCues playing, double allPixelFrames) {
        String layer = playing.timeline().layers().get(mean.layerIndex()).name();
        return new CueUse(
                layer,
                CueCaption.of(layer, mean.first()),
                mean.mask(),
                mean.meanLight(),
                mean.pixelFrames() / allPixelFrames);
    }

    /** What the cues of a layer paint together, by layer: the mean over all pixels and frames of the show. */
    public List<LayerUse> layers() {
        Map<String, LayerUse> layers = new LinkedHashMap<>();
        for (CueUse cue : cues) {
            double light = cue.mask() ? 0 : cue.meanLight() * cue.share();
            layers.merge(cue.layer(), new LayerUse(cue.layer(), cue.mask(), light), LayerUse::with);
        }
        return List.copyOf(layers.values());
    }

    /**
     * A layer.
     *
     * @param masksOnly whether none of its cues gives light: all gate what is under them
     * @param meanLight the mean relative luminance that its cues paint by themselves, over all pixels and frames of the
     *     show; those that gate add nothing
     */
    public record LayerUse(String layer, boolean masksOnly, double meanLight) {
        private LayerUse with(LayerUse more) {
            return new LayerUse(layer, masksOnly && more.masksOnly, meanLight + more.meanLight);
        }
    }
}
