package org.duskloom.engine.plan;

import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.random.StableHash;
import org.duskloom.engine.show.Show;

/** The random keys of a play of a cue: from the seed, the play, and the names and numbers of members and pixels. */
final class CanvasKeys {
    private final Show show;
    private final String randomKey;

    CanvasKeys(Show show, String randomKey) {
        this.show = show;
        this.randomKey = randomKey;
    }

    /**
     * The canvas with its keys.
     *
     * @param names of its members
     */
    Canvas on(CanvasBuilder.Built built, List<String> names) {
        long cueKey = StableHash.combine(show.timeline().seed(), StableHash.ofName(randomKey));
        long[] memberKeys = names.stream()
                .mapToLong(name -> StableHash.combine(cueKey, StableHash.ofName(name)))
                .toArray();
        return built.canvas().withKeys(memberKeys, pixelKeys(built.stagePixels()));
    }

    private int[] pixelKeys(int[] stagePixels) {
        PixelMap map = show.map();
        int[] keys = new int[stagePixels.length];
        int lastProp = -1;
        long propKey = 0;
        for (int i = 0; i < keys.length; i++) {
            int prop = map.propIndexOf(stagePixels[i]);
            Prop owner = map.props().get(prop);
            if (prop != lastProp) {
                propKey = StableHash.propKey(show.timeline().seed(), randomKey, owner.name());
                lastProp = prop;
            }
            keys[i] = StableHash.pixelKey(propKey, stagePixels[i] - owner.firstPixel() + 1);
        }
        return keys;
    }
}
