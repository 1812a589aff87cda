package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.document.Fields;
import org.duskloom.engine.document.ListNode;
import org.duskloom.engine.document.Node;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.Beats;
import org.duskloom.engine.time.ExactTime;
import org.duskloom.engine.time.Tempo;
import org.duskloom.engine.time.TimeContext;

/** Reads layers with their cues: all of them first as far as their times go, since these may count from each other. */
final class LayersReader {
    private static final Beats EVEN = Beats.steady(new Tempo(ExactTime.ofSeconds(1)), ExactTime.ZERO, 4);
    private static final ExactTime FAR = ExactTime.ofSeconds(1_000_000);

    private final LookBook looks;
    private final CueContext context;
    private final Problems problems;

    LayersReader(LookBook looks, CueContext context) {
        this.looks = looks;
        this.context = context;
        this.problems = context.problems();
    }

    /**
     * What became of some layers.
     *
     * @param named the times of their cues and of the markers, by name
     * @param empty those that have no cues
     */
    record Read(List<Layer> layers, Map<String, ExactTime> named, List<Fields> empty) {
        Read {
            layers = List.copyOf(layers);
            named = Map.copyOf(named);
            empty = List.copyOf(empty);
        }
    }

    /** A layer whose cues are not read yet. */
    private record OpenLayer(Fields fields, String number, CueReader reader, List<OpenCue> cues) {}

    /** Reads a list of layers. */
    Read read(List<Node> items, Map<String, InstantNames.Marker> markers) {
        List<OpenLayer> open = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            String number = String.valueOf(i + 1);
            Fields.of(items.get(i), TimelineFields.LAYER, "layer " + number, problems)
                    .ifPresent(fields -> open.add(opened(fields, number)));
        }
        if (context.times().beats().isPresent()) {
            keyByEvenBeats(open, markers);
        }
        Map<String, ExactTime> named =
                CueInstants.workOut(open.stream().map(OpenLayer::cues).toList(), markers, context);
        List<Fields> empty = open.stream()
                .map(OpenLayer::fields)
                .filter(fields -> fields.node(TimelineFields.CUES).orElse(null) instanceof ListNode list
                        && list.items().isEmpty())
                .toList();
        return new Read(open.stream().map(this::layer).toList(), named, empty);
    }

    /**
     * Random choices hang on the start that a cue would have if every beat took a second, so that they stay as they are
     * when the beats are corrected.
     */
    private void keyByEvenBeats(List<OpenLayer> layers, Map<String, InstantNames.Marker> markers) {
        Problems unheard = new Problems();
        TimeContext even = context.times().withBeats(EVEN);
        CueContext aside = new CueContext(context.whole(), even, FAR, context.scenes(), unheard);
        List<List<OpenCue>> copies = layers.stream()
                .map(layer -> layer.cues().stream()
                        .map(cue -> new OpenCue(cue.fields(), true, unheard))
                        .toList())
                .toList();
        CueInstants.workOut(copies, markers, aside);
        for (int i = 0; i < copies.size(); i++) {
            for (int k = 0; k < copies.get(i).size(); k++) {
                OpenCue cue = layers.get(i).cues().get(k);
                copies.get(i).get(k).start().ifPresent(cue::isKeyedBy);
            }
        }
    }

    private OpenLayer opened(Fields fields, String number) {
        String name =
                fields.given(TimelineFields.LAYER_NAME).map(TextNode::value).orElse(number);
        CueReader reader = new CueReader(name, looks, context);
        List<OpenCue> cues = new ArrayList<>();
        fields.given(TimelineFields.CUES)
                .map(ListNode::items)
                .orElse(List.of())
                .forEach(cue -> reader.open(cue).ifPresent(cues::add));
        return new OpenLayer(fields, number, reader, cues);
    }

    private Layer layer(OpenLayer open) {
        Fields fields = open.fields();
        BlendMode blend = fields.value(TimelineFields.BLEND);
        double opacity = fields.value(TimelineFields.LAYER_OPACITY);
        boolean mask = fields.value(TimelineFields.MASK);
        if (mask && fields.has(TimelineFields.BLEND)) {
            problems.error(
                    fields.location(TimelineFields.BLEND),
                    "layer " + open.number() + " is a mask and has a \"blend\"",
                    "leave it out");
        }
        List<LayerItem> cues = new ArrayList<>();
        List<UnsoundCue> unsound = new ArrayList<>();
        for (OpenCue cue : open.cues()) {
            CuePlays plays = open.reader().read(cue);
            cues.addAll(plays.sound());
            unsound.addAll(plays.unsound());
        }
        return new Layer(open.reader().layerName(), blend, opacity, mask, cues, unsound);
    }
}
