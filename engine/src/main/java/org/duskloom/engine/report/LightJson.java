package org.duskloom.engine.report;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.PropUse;

/** What eyes get of a show, for programs. */
final class LightJson {
    private LightJson() {}

    static void add(Report report, LightReport light, JsonText json) {
        json.field("flash", flash(report, light));
        json.field(
                "flashByProp",
                light.flashes().props().stream().map(LightJson::flashes).toList());
        json.field("use", light.use().props().stream().map(LightJson::use).toList());
        json.field(
                "colors",
                light.use().hues().stream()
                        .map(hue -> JsonText.object("color", hue.hue().word(), "share", number(hue.share())))
                        .toList());
        json.field("cues", light.cues().stream().map(LightJson::cue).toList());
        json.field(
                "layers",
                light.layers().stream()
                        .map(layer -> JsonText.object(
                                "layer", layer.layer(),
                                "mask", layer.masksOnly(),
                                "meanLight", number(layer.meanLight())))
                        .toList());
    }

    private static JsonText.Inline flash(Report report, LightReport light) {
        FlashFigures flashes = light.flashes();
        List<Object> flash = new ArrayList<>(List.of(
                "passes", flashes.passes(),
                "general", count(report, light, flashes.general()),
                "red", count(report, light, flashes.red())));
        flashes.seenFromMetres().ifPresent(metres -> flash.addAll(List.of("seenFromMetres", number(metres))));
        flash.addAll(List.of(
                "worstCues", light.worst().cues(),
                "slowBy", number(Math.max(1, light.worst().count().slowBy())),
                "noGuarantee", FlashWords.CAUTION.get(0)));
        return JsonText.object(flash.toArray());
    }

    private static JsonText.Inline flashes(FlashFigures.PropFlashes prop) {
        return JsonText.object(
                "prop", prop.prop(),
                "general", prop.general().most(),
                "red", prop.red().most(),
                "pixelsOver", prop.pixelsOver());
    }

    private static JsonText.Inline number(double value) {
        return ReportNumbers.json(value);
    }

    private static JsonText.Inline count(Report report, LightReport light, FlashCount count) {
        return JsonText.object(
                "most", count.most(),
                "at", number(report.secondsOf(count.firstFrame())),
                "passes", light.flashes().passes(count),
                "where", FlashWords.where(count.place(), light),
                "overJoint", count.overJoint(),
                "mostOnce", count.mostOnce(),
                "pixelsOver", count.pixelsOver(),
                "areaShare", number(count.fieldShare()));
    }

    private static JsonText.Inline use(PropUse prop) {
        return JsonText.object(
                "prop", prop.prop(),
                "darkShare", number(prop.darkShare()),
                "meanLight", number(prop.meanLight()),
                "neverLit", prop.neverLit().length);
    }

    private static JsonText.Inline cue(CueUse cue) {
        return JsonText.object(
                "cue", cue.cue(),
                "layer", cue.layer(),
                "mask", cue.mask(),
                "meanLight", number(cue.meanLight()),
                "share", number(cue.share()));
    }
}
