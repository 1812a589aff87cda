package org.duskloom.engine.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/**
 * Works out which names scenes leave open, those that play no other first, and checks what cues put in their place.
 * Scenes that go in a circle, or too deep, are an error.
 */
final class SceneNesting {
    /** How deep scenes may be nested. */
    static final int DEEPEST = 64;

    private final Map<String, Scene> written = new LinkedHashMap<>();
    private final Map<String, Scene> done = new LinkedHashMap<>();
    private final Map<String, Integer> depths = new LinkedHashMap<>();
    private final Set<String> path = new LinkedHashSet<>();
    private final Problems problems;

    private SceneNesting(List<Scene> scenes, Problems problems) {
        this.problems = problems;
        scenes.forEach(scene -> written.put(scene.name(), scene));
    }

    /** The scenes by name with the names that they leave open; none if they cannot be played. */
    static Map<String, Scene> workOut(List<Scene> scenes, List<Layer> show, Problems problems) {
        SceneNesting nesting = new SceneNesting(scenes, problems);
        int errorsBefore = problems.errorCount();
        scenes.forEach(scene -> nesting.depth(scene.name()));
        if (problems.errorCount() > errorsBefore) {
            return Map.of();
        }
        scenes.forEach(scene -> nesting.checkNames(scene.layers()));
        nesting.checkNames(show);
        return nesting.done;
    }

    private static List<SceneCue> plays(List<Layer> layers) {
        return layers.stream()
                .flatMap(layer -> layer.parts().stream())
                .filter(SceneCue.class::isInstance)
                .map(SceneCue.class::cast)
                .toList();
    }

    /** How many scenes are nested in each other from here on. */
    private int depth(String name) {
        if (depths.containsKey(name)) {
            return depths.get(name);
        }
        path.add(name);
        int deepest = 0;
        for (SceneCue play : plays(written.get(name).layers())) {
            String inner = play.scene().value();
            if (path.contains(inner)) {
                report(play.scene(), "scenes go in a circle: ", "take one of them out of the circle");
            } else if (path.size() >= DEEPEST) {
                report(play.scene(), "scenes are nested too deep: ", "allowed: up to " + DEEPEST);
            } else if (written.containsKey(inner)) {
                deepest = Math.max(deepest, depth(inner));
                if (path.size() + deepest > DEEPEST) {
                    report(play.scene(), "scenes are nested too deep: ", "allowed: up to " + DEEPEST);
                }
            }
        }
        path.remove(name);
        depths.put(name, deepest + 1);
        done.put(name, withNames(written.get(name)));
        return deepest + 1;
    }

    private void report(TextNode closing, String what, String hint) {
        List<String> names = new ArrayList<>(path);
        int from = Math.max(0, names.indexOf(closing.value()));
        String shown = String.join(" -> ", names.subList(from, names.size())) + " -> " + closing.value();
        problems.error(closing.location(), what + shown, hint);
    }

    private Scene withNames(Scene scene) {
        Map<String, Location> names = new LinkedHashMap<>();
        for (Layer layer : scene.layers()) {
            layer.cues().forEach(cue -> add(cue.on(), names));
            layer.unsound().forEach(cue -> add(cue.standIn().on(), names));
        }
        for (SceneCue play : plays(scene.layers())) {
            play.on().forEach(instead -> add(instead.addresses(), names));
            Set<String> told = told(play);
            Scene inner = done.get(play.scene().value());
            if (inner != null) {
                inner.names().forEach((name, place) -> {
                    if (!told.contains(name)) {
                        names.putIfAbsent(name, place);
                    }
                });
            }
        }
        return new Scene(scene.name(), scene.location(), scene.length(), scene.same(), scene.layers(), names);
    }

    private static void add(List<TextNode> addresses, Map<String, Location> names) {
        addresses.forEach(address -> names.putIfAbsent(address.value().split("/", 2)[0], address.location()));
    }

    private static Set<String> told(SceneCue play) {
        Set<String> told = new LinkedHashSet<>();
        play.on().forEach(instead -> told.add(instead.name()));
        return told;
    }

    private void checkNames(List<Layer> layers) {
        for (SceneCue play : plays(layers)) {
            Scene scene = done.get(play.scene().value());
            if (scene == null) {
                continue;
            }
            for (SceneCue.Instead instead : play.on()) {
                if (!scene.names().containsKey(instead.name())) {
                    problems.error(
                            instead.location(),
                            "the scene " + Quoted.of(scene.name()) + " plays on nothing called "
                                    + Quoted.of(instead.name()),
                            NearestName.hint(instead.name(), scene.names().keySet()));
                }
            }
        }
    }
}
