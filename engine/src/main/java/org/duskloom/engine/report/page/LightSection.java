package org.duskloom.engine.report.page;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.duskloom.engine.meter.light.FlashCount;
import org.duskloom.engine.meter.light.FlashFigures;
import org.duskloom.engine.meter.light.PropUse;
import org.duskloom.engine.meter.light.UseFigures;
import org.duskloom.engine.report.CueUse;
import org.duskloom.engine.report.FlashWords;
import org.duskloom.engine.report.LightReport;
import org.duskloom.engine.report.NeverLit;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.WorstSecond;
import org.duskloom.engine.text.Counted;

/** Flashes, and how much of the display is used. */
final class LightSection {
    /** Of a display with more props the table would be longer than anyone reads; {@code --csv} has all. */
    private static final int MOST_PROPS = 60;

    private static final int MOST_CUES = 120;

    private final Report report;
    private final LightReport light;
    private final Html html;

    LightSection(Report report, LightReport light, Html html) {
        this.report = report;
        this.light = light;
        this.html = html;
    }

    void flashes() {
        FlashFigures flashes = light.flashes();
        html.element("h2", "Flashing");
        html.element("p class=\"judged\"", (flashes.passes() ? "" : "\u2717 ") + FlashWords.verdict(flashes));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "what", "most changes in a second", "allowed", "from", "where", "pixels at a time", "played once"));
        rows.add(row("light", flashes.general()));
        rows.add(row("saturated red", flashes.red()));
        html.table(rows);
        html.element("p", FlashWords.measure(flashes));
        worst();
        props(flashes);
        FlashWords.CAUTION.forEach(line -> html.element("p class=\"caution\"", line));
    }

    private List<String> row(String what, FlashCount count) {
        return List.of(
                what,
                String.valueOf(count.most()),
                String.valueOf(FlashCount.ALLOWED),
                count.most() == 0 ? "" : Figures.time(report.secondsOf(count.firstFrame())),
                count.most() == 0 ? "" : FlashWords.where(count.place(), light),
                String.valueOf(count.pixelsOver()),
                String.valueOf(count.mostOnce()));
    }

    private void worst() {
        if (light.worst().count().most() == 0) {
            return;
        }
        html.raw("<figure>").element("figcaption", FlashWords.worst(report, light));
        html.raw("<div class=\"moments\">\n");
        light.worst().moments().forEach(this::moment);
        html.raw("</div>\n</figure>\n");
        List<String> advice = FlashWords.advice(light.worst());
        if (!advice.isEmpty()) {
            html.raw("<ul>\n");
            advice.forEach(line -> html.element("li", line));
            html.raw("</ul>\n");
        }
    }

    private void moment(WorstSecond.Moment moment) {
        html.raw("<img alt=\"")
                .text("The display at " + Figures.time(report.secondsOf(moment.frame())))
                .raw("\" src=\"data:image/png;base64," + Base64.getEncoder().encodeToString(moment.png()) + "\"/>\n");
    }

    private void props(FlashFigures flashes) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("prop", "changes of light", "changes of red", "pixels at a time", "judged"));
        flashes.props().stream()
                .filter(prop -> prop.general().most() > 0 || prop.red().most() > 0)
                .limit(MOST_PROPS)
                .forEach(prop -> rows.add(List.of(
                        prop.prop(),
                        String.valueOf(prop.general().most()),
                        String.valueOf(prop.red().most()),
                        String.valueOf(prop.pixelsOver()),
                        prop.passesEverywhere() ? "at most three flashes" : "\u2717 more than three")));
        if (rows.size() > 1) {
            html.raw("<details>").element("summary", "by prop").table(rows).raw("</details>\n");
        }
    }

    void lightOverTime() {
        html.element("h2", "Light by prop over time");
        UseFigures use = light.use();
        double most = 0;
        for (PropUse prop : use.props()) {
            for (float value : prop.columns()) {
                most = Math.max(most, value);
            }
        }
        html.element(
                "p",
                String.format(
                        Locale.ROOT,
                        "The mean light of each prop, from the first frame on the left to %s on the right. The full height of a row"
                                + " is %s of white at full, the most that any of them has.",
                        Figures.time(report.subject().seconds()),
                        Figures.percent(most)));
        html.raw("<div class=\"rows\">\n");
        for (PropUse prop :
                use.props().subList(0, Math.min(MOST_PROPS, use.props().size()))) {
            double[] columns = new double[prop.columns().length];
            for (int i = 0; i < columns.length; i++) {
                columns[i] = prop.columns()[i];
            }
            html.raw("<div class=\"row\">").element("span", prop.prop());
            Sparkline.draw(html, columns, most, prop.prop() + ": mean light " + Figures.percent(prop.meanLight()));
            html.raw("</div>\n");
        }
        html.raw("</div>\n");
        more(use.props().size(), "prop");
    }

    void use() {
        UseFigures use = light.use();
        html.element("h2", "Use");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("prop", "pixels", "dark", "mean light", "never lit"));
        use.props().stream()
                .limit(MOST_PROPS)
                .forEach(prop -> rows.add(List.of(
                        prop.prop(),
                        String.valueOf(prop.pixelCount()),
                        Figures.percent(prop.darkShare()) + " of the time",
                        Figures.percent(prop.meanLight()),
                        prop.neverLit().length == 0 ? "" : String.valueOf(prop.neverLit().length))));
        html.table(rows);
        more(use.props().size(), "prop");
        for (NeverLit dark : light.neverLit()) {
            html.element("p", "Never lit of " + dark.prop() + ": " + dark.which() + ".");
        }
        if (!use.hues().isEmpty()) {
            colors(use);
        }
        if (!light.cues().isEmpty()) {
            cues();
        }
    }

    private void colors(UseFigures use) {
        html.element("h3", "Colours");
        List<List<String>> colors = new ArrayList<>();
        colors.add(List.of("colour", "share of all light"));
        use.hues().forEach(hue -> colors.add(List.of(hue.hue().word(), Figures.percent(hue.share()))));
        html.table(colors);
    }

    private void cues() {
        html.element("h3", "Cues");
        html.element(
                "p",
                "What a cue paints by itself, before it is mixed with anything: the mean light of its pixels while it"
                        + " plays, in up to 24 frames that lie evenly, and on how much of all pixels and frames it is played.");
        List<List<String>> cues = new ArrayList<>();
        cues.add(List.of("cue", "layer", "mean light", "played on"));
        light.cues().stream()
                .limit(MOST_CUES)
                .forEach(cue -> cues.add(List.of(cue.cue(), cue.layer(), meanOf(cue), Figures.percent(cue.share()))));
        html.table(cues);
        more(light.cues().size(), MOST_CUES, "cue");
        List<List<String>> layers = new ArrayList<>();
        layers.add(List.of("layer", "mean light over the whole show"));
        light.layers().forEach(layer -> layers.add(List.of(layer.layer(), meanOf(layer))));
        html.table(layers);
    }

    private static String meanOf(LightReport.LayerUse layer) {
        return layer.masksOnly() ? "none of its own: it gates others" : Figures.percent(layer.meanLight());
    }

    private static String meanOf(CueUse cue) {
        return Figures.percent(cue.meanLight()) + (cue.mask() ? " let through" : "");
    }

    private void more(int all, String what) {
        more(all, MOST_PROPS, what);
    }

    private void more(int all, int shown, String what) {
        if (all > shown) {
            html.element(
                    "p", "And " + Counted.of(all - shown, "more " + what) + "; the tables of --csv have them all.");
        }
    }
}
