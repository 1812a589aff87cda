package org.duskloom.effects.image;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.effects.kit.FileShelf;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.area.AreaKernel;
import org.duskloom.effects.kit.area.ReelClock;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.ChoiceSetting;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.Period;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;

/**
 * An image or an animation laid over the canvas of each member. Every light stands for the cell between it and its
 * neighbours, and shows the mean, in linear light, of what its cell covers of the picture; where a pixel of the picture
 * is larger than a cell, the mean is taken over an area of one pixel (bilinear interpolation), unless {@code sharp}.
 *
 * <p>With W and H the sides of the area of all cells, and w and h those of the picture after {@code fit} and {@code
 * zoom}, the middle of the picture lies {@code right} · (W + w) / 2 to the right of the middle of the canvas and {@code
 * up} · (H + h) / 2 above it: at -1 and at 1 the picture has just left. It turns and zooms about its middle.
 *
 * <p>Files: PNG of all kinds, with the animation (W3C Portable Network Graphics, Third Edition), GIF 87a and 89a, JPEG.
 * Samples are taken as sRGB codes; colour profiles, gamma and the orientation noted by a camera do not count. An image
 * of an animation that shall be seen for no time is seen for 0.1 s; a run is followed by the next one whatever the file
 * says. What a PNG or a GIF shows is exact; JPEG leaves the last bit of a sample to the decoder, so the frames hold for
 * one JDK only. At most 16 megapixels, 4096 images and 256 MB of decoded pixels, of four bytes each.
 *
 * <p>Settings: {@code file}; {@code fit} ({@code "contain"}, the default: all of the picture is seen, {@code "cover"}:
 * all lights have some of it, {@code "stretch"}: both, by its own scale along each side); {@code right} and {@code up}
 * (-1000 to 1000, default 0); {@code zoom} (0.001 to 1000, default 1); {@code turn} (degrees counter-clockwise, default
 * 0); {@code tile} (the picture repeats beyond its edges); {@code sharp}; {@code every} (time for one run of an
 * animation, default its own), {@code passes}, {@code reverse} and {@code phase} as in {@link Motion}, for an animation
 * only.
 */
public final class Image implements Effect {
    static final String COVER = "cover";
    static final String STRETCH = "stretch";

    static final FileSetting FILE = FileSetting.of(
            "file",
            "PNG, GIF, JPEG",
            "the picture, or an animated PNG or GIF; a JPEG may differ by a code from one Java to another");
    static final ChoiceSetting FIT = ChoiceSetting.of(
            "fit",
            "contain shows the whole picture, cover leaves no light without, stretch does both by giving up its shape",
            "contain",
            COVER,
            STRETCH);
    static final NumberSetting RIGHT = NumberSetting.of(
            "right",
            "ways out",
            -1000,
            1000,
            0,
            "how far to the right: 0 is the middle, at 1 the picture has just left, at -1 to the left");
    static final NumberSetting UP = NumberSetting.of(
            "up",
            "ways out",
            -1000,
            1000,
            0,
            "how far up: 0 is the middle, at 1 the picture has just left, at -1 downward");
    static final NumberSetting ZOOM = NumberSetting.of("zoom", "times", 0.001, 1000, 1, "size, against that of fit");
    static final NumberSetting TURN =
            NumberSetting.of("turn", "degrees", -36_000, 36_000, 0, "turned counter-clockwise about its middle");
    static final FlagSetting TILE = FlagSetting.of("tile", "the picture repeats beyond its edges");
    static final FlagSetting SHARP =
            FlagSetting.of("sharp", "pixels larger than a light keep hard edges, else they run into each other");
    static final DurationSetting EVERY =
            DurationSetting.optional("every", "time for one run of an animation, instead of its own");

    private static final List<Setting<?>> OF_ANIMATIONS = List.of(EVERY, Motion.PASSES, Motion.REVERSE, Motion.PHASE);
    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(FILE, FIT, RIGHT, UP, ZOOM, TURN, TILE, SHARP), OF_ANIMATIONS)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    private final FileShelf<Film> shelf = new FileShelf<>();

    /** For the service loader. */
    public Image() {}

    @Override
    public String name() {
        return "image";
    }

    @Override
    public String summary() {
        return "an image or an animation laid over the canvas";
    }

    @Override
    public String formula() {
        return "mean of the picture, in linear light, over the cell between a light and its neighbours; the picture's middle"
                + " is right * (canvas + picture width) / 2 to the right and up * (canvas + picture height) / 2 above the"
                + " canvas's middle";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        Path file = settings.value(FILE)
                .orElseThrow(() -> new SettingException(
                        "file", "there is no file to show", "name a picture: \"file\": \"bee.png\""));
        Film film = film(file);
        AreaKernel.Style style = new AreaKernel.Style(settings.value(TILE), settings.value(SHARP));
        return AreaKernel.of(canvas, film, clock(film, file, settings), new ImagePlacing(film, settings), style);
    }

    private Film film(Path file) throws SettingException {
        try {
            return shelf.decoded(ImageFile.bytes(file), ImageFile::film);
        } catch (ImageException e) {
            throw new SettingException("file", "\"" + file.getFileName() + "\" " + e.getMessage(), e.hint());
        }
    }

    private static ReelClock clock(Film film, Path file, Settings settings) throws SettingException {
        if (film.count() > 1) {
            return new RunClock(film, Motion.of(settings, EVERY, Period.ofSeconds(RunClock.seconds(film))));
        }
        Optional<Setting<?>> idle =
                OF_ANIMATIONS.stream().filter(settings::isGiven).findFirst();
        if (idle.isPresent()) {
            String name = idle.get().name();
            throw new SettingException(
                    name,
                    name + " says nothing: \"" + file.getFileName() + "\" has one image only",
                    "leave it out; right, up, zoom and turn move the picture");
        }
        return time -> 0;
    }
}
