package org.duskloom.engine.timeline;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.TimeText;

/**
 * What the random choices of the cues of one layer hang on. A name keeps those of a cue wherever it is moved. Without
 * one they hang on its layer, its content and its start, so that other cues may come and go: on the instant where that
 * is written as such, on the words {@code @rise.end-1s} where it counts from a name. The instants of cues that follow
 * the one before them move with all that is before, so these are counted instead. Only of cues that share all of it the
 * order in the file matters.
 */
final class RandomKeys {
    private final String layerName;
    private final Map<String, Integer> seen = new HashMap<>();

    RandomKeys(String layerName) {
        this.layerName = layerName;
    }

    /**
     * The key of the next cue of the layer.
     *
     * @param content the effect, or the scene
     * @param start when the cue starts
     */
    String of(OpenCue cue, String content, ExactTime start) {
        if (!cue.name().isEmpty()) {
            return "cue " + cue.name();
        }
        String key = "layer " + layerName + " " + place(cue, start) + " " + content;
        int before = seen.merge(key, 1, Integer::sum) - 1;
        return before == 0 ? key : key + " " + before;
    }

    private static String place(OpenCue cue, ExactTime start) {
        Optional<Node> written = cue.fields().node(CueFields.AT);
        if (written.orElse(null) instanceof TextNode at) {
            if (TimeText.isSigned(at.value())) {
                return "following";
            }
            if (TimeText.namesMark(at.value())) {
                return "at " + at.value().strip();
            }
        }
        return "at " + start;
    }
}
