package org.duskloom.engine.plan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.PlainEffects;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.duskloom.engine.sound.WavBytes;

/** A folder with a show of ten seconds at 40 frames a second, its beats and its sound. */
record MusicFolder(Path folder) {
    /** Beats that are not everywhere as long: half a second each in the first bar, then a second. */
    static final String SLOWING = "0 bar, 0.5 beat, 1 bar, 2 beat, 3 bar, 4 beat, 5 bar";

    /** One second of silence, two of a tone of 60 Hz, one of silence. */
    MusicFolder withTone() {
        return write(
                "tone.wav",
                WavBytes.of(
                        8000, 1, 4, at -> at >= 1 && at < 3 ? 0.5 * StrictMath.sin(2 * StrictMath.PI * 60 * at) : 0));
    }

    /** A label track; each label is a time and a text. */
    MusicFolder withBeats(String labels) {
        StringBuilder lines = new StringBuilder();
        for (String label : labels.split(", ")) {
            String[] parts = label.split(" ");
            lines.append(parts[0] + "\t" + parts[0] + "\t" + parts[1] + "\n");
        }
        return write("beats.txt", lines.toString().getBytes(StandardCharsets.US_ASCII));
    }

    private MusicFolder write(String name, byte[] bytes) {
        try {
            Files.write(folder.resolve(name), bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The show with these fields, which must be sound. */
    Show show(String fields) {
        write("map.csv", "prop,pixel,x,y\npond,1,0,0\npond,2,1,0\ngate,1,2,0\n".getBytes(StandardCharsets.US_ASCII));
        write(
                "show.json",
                ("{\"duskloom\": \"timeline/1\", \"map\": \"map.csv\", \"rate\": 40, \"length\": \"10s\", " + fields
                                + "}")
                        .getBytes(StandardCharsets.US_ASCII));
        Problems problems = new Problems();
        Show show = ShowReader.read(folder.resolve("show.json"), problems).orElseThrow();
        if (problems.hasErrors()) {
            throw new AssertionError(Inputs.shown(problems));
        }
        return show;
    }

    /** The plan of that show, with all plain effects and another one. */
    Plan plan(String fields, Effect other) {
        Problems problems = new Problems();
        return PlanCompiler.compile(show(fields), with(other), problems)
                .orElseThrow(() -> new AssertionError(Inputs.shown(problems)));
    }

    /** The cues of one layer, over the beats of this folder. */
    List<PlannedCue> cues(String cues, Effect other) {
        return plan("\"beats\": \"beats.txt\", \"layers\": [{\"cues\": [" + cues + "]}]", other)
                .layers()
                .get(0)
                .cues();
    }

    /** All plain effects and another one. */
    static EffectRegistry with(Effect other) {
        EffectRegistry plain = PlainEffects.all();
        List<Effect> all = new ArrayList<>();
        plain.names().forEach(name -> all.add(plain.find(name).orElseThrow()));
        all.add(other);
        return EffectRegistry.of(all);
    }
}
