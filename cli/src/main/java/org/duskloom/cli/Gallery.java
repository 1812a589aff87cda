package org.duskloom.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.OutputGroup;
import org.duskloom.engine.frame.FrameList;
import org.duskloom.engine.frame.FrameSink;
import org.duskloom.engine.preview.ContactStripKind;
import org.duskloom.engine.preview.StripOptions;
import org.duskloom.engine.problem.Problems;

/**
 * The gallery: a page on all effects, with a strip of each. The shows that it draws are those of {@code demos/firsts},
 * which the program carries with it: each plays an effect on every one of five daisies and on a whole trellis.
 */
final class Gallery implements AutoCloseable {
    /** Where the shows are, both in the program and under demos. */
    private static final String FIRSTS = "firsts/";

    /** What the first shows need beside themselves. */
    private static final List<String> SHARED = List.of("display.json", "bee.png");

    /**
     * In twelfths of the show, that is 0.5, 1.8, 3.1 and 4.4 of six seconds: steps in which no usual period repeats.
     */
    private static final double[] MOMENTS_TWELFTHS = {1, 3.6, 6.2, 8.8};

    private static final int PANEL_DOTS = 300;

    private final Path scratch;
    private final OutputGroup group;
    private final Map<String, String> shows = new LinkedHashMap<>();

    Gallery(IfExists ifExists) throws IOException {
        scratch = Files.createTempDirectory("duskloom-gallery");
        group = new OutputGroup(ifExists);
    }

    /** Draws every effect into a folder, and writes the page. */
    void draw(Path folder, EffectRegistry effects, Streams streams) throws IOException, InterruptedException {
        for (String shared : SHARED) {
            copy(shared);
        }
        requireFirsts(effects);
        for (Effect effect : effects.effects()) {
            String file = effect.name() + ".json";
            shows.put(effect.name(), new String(copy(file), StandardCharsets.UTF_8));
            drawStrip(scratch.resolve(file), folder.resolve(effect.name() + ".png"), streams);
        }
        group.open(folder.resolve("README.md")).writeWhole(GalleryPage.of(effects.effects(), shows));
        group.publish();
    }

    /** Who has just written an effect is told everything that its place in the gallery still needs. */
    private static void requireFirsts(EffectRegistry effects) throws IOException {
        List<String> missing = effects.names().stream()
                .filter(name -> Gallery.class.getResource(FIRSTS + name + ".json") == null)
                .map(name -> "demos/" + FIRSTS + name + ".json")
                .toList();
        if (!missing.isEmpty()) {
            throw new IOException("the gallery draws a first show of every effect; write " + String.join(", ", missing)
                    + " and build the program anew");
        }
    }

    private void drawStrip(Path showFile, Path picture, Streams streams) throws IOException, InterruptedException {
        Problems problems = new Problems();
        LoadedShow show = LoadedShow.load(showFile, problems).orElse(null);
        if (show == null) {
            throw new IOException("demos/" + FIRSTS + showFile.getFileName() + " cannot be drawn: "
                    + problems.inFileOrder().get(0).message());
        }
        long[] moments = Arrays.stream(MOMENTS_TWELFTHS)
                .mapToLong(twelfths -> Math.round(show.plan().frameCount() * twelfths / 12))
                .toArray();
        StripOptions options = new StripOptions(OptionalInt.of(moments.length), OptionalInt.of(PANEL_DOTS), false);
        try (FrameSink strip = ContactStripKind.of(options, moments).into(group.open(picture))) {
            new Rendering(show.frames(), FrameList.of(moments)).into(List.of(strip), streams);
        }
    }

    private byte[] copy(String name) throws IOException {
        try (InputStream in = Gallery.class.getResourceAsStream(FIRSTS + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + FIRSTS + name);
            }
            byte[] bytes = in.readAllBytes();
            Files.write(scratch.resolve(name), bytes);
            return bytes;
        }
    }

    /** Puts the scratch folder away. */
    @Override
    public void close() throws IOException {
        group.close();
        try (var files = Files.list(scratch)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(scratch);
    }
}
