package org.duskloom.engine.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.document.JsonReader;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.group.GroupReader;
import org.duskloom.engine.group.GroupTree;
import org.duskloom.engine.map.Maps;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowFiles;
import org.duskloom.engine.timeline.Timeline;
import org.duskloom.engine.timeline.TimelineReader;

/**
 * A show for tests, made of a map and the text of a timeline, without files.
 *
 * @param map its pixels
 * @param timeline the JSON text, called show.json in messages
 * @param effects what its cues may name
 */
public record TestShow(PixelMap map, String timeline, EffectRegistry effects) {
    /** A show of ten seconds at 40 frames a second with these fields, which start on line 2. */
    public static TestShow of(PixelMap map, String fields) {
        return new TestShow(map, """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "10s",
                """ + fields + "}", PlainEffects.all());
    }

    /** A show with one cue, which starts on line 3, column 1. */
    public static TestShow withCue(PixelMap map, String cue) {
        return of(
                map,
                "\"palettes\": {\"dusk\": [\"#1b2a6b\", \"#ff9e5e\"]}, \"layers\": [{\"cues\": [\n" + cue + "\n]}]");
    }

    /** A show with one cue on a map written as CSV. */
    public static TestShow withCue(String csv, String cue) {
        return withCue(Maps.map(csv), cue);
    }

    /** The same show with only this effect. */
    public TestShow with(Effect effect) {
        return new TestShow(map, timeline, EffectRegistry.of(List.of(effect)));
    }

    /** The same show with all plain effects. */
    public TestShow withPlainEffects() {
        return new TestShow(map, timeline, PlainEffects.all());
    }

    /** The plan, which must be free of errors. */
    public Plan plan() {
        Problems problems = new Problems();
        return plan(problems).orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }

    /** Everything that is wrong or doubtful, as lines. */
    public List<String> problems() {
        Problems problems = new Problems();
        if (plan(problems).isPresent() == problems.hasErrors()) {
            throw new AssertionError("a plan and errors, or neither");
        }
        return Inputs.shown(problems);
    }

    private Optional<Plan> plan(Problems problems) {
        return JsonReader.read(Inputs.source("show.json", timeline), problems)
                .flatMap(root -> TimelineReader.read(root, problems))
                .map(read -> new Show(
                        read, groups(read, problems), Optional.empty(), ShowFiles.beside(Path.of("show.json"))))
                .flatMap(show -> PlanCompiler.compile(show, effects, problems));
    }

    private GroupTree groups(Timeline read, Problems problems) {
        return read.pixels()
                .groups()
                .map(node -> GroupReader.read(node, map, problems))
                .orElseGet(() -> GroupTree.of(map));
    }
}
