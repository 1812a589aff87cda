package org.duskloom.effects.lettering;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.duskloom.effects.kit.Dial;
import org.duskloom.effects.kit.FileShelf;
import org.duskloom.effects.kit.Motion;
import org.duskloom.effects.kit.PaletteDial;
import org.duskloom.effects.kit.area.AreaKernel;
import org.duskloom.effects.kit.area.Reel;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Doubt;
import org.duskloom.engine.effect.DurationSetting;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.FlagSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.NumberSetting;
import org.duskloom.engine.effect.PaletteSetting;
import org.duskloom.engine.effect.PaletteTrack;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.effect.Shown;
import org.duskloom.engine.effect.TextSetting;
import org.duskloom.engine.problem.Problems;

/**
 * One line of text that crosses the canvas of each member, or stands in its middle. Letters are squares of even light,
 * the dots of a font; every light shows the mean, in linear light, of what its cell covers of them, the cell being the
 * space between it and its neighbours.
 *
 * <p>A capital is {@code size} canvas heights high, its middle {@code up} canvas heights above the middle of the
 * canvas. In one pass the line moves, toward {@code toward}, from just outside the canvas to just outside at the other
 * end; half way, and if {@code still}, its middle is in the middle of the canvas. Unless {@code smooth}, dots are made
 * whole lights wide and high, as near to the size as can be, and the line moves light by light; this is not done where
 * a dot is smaller than 3/4 of a light, where the size moves, or where the line lies askew.
 *
 * <p>Without {@code font} the project's own letters are used: printable ASCII, some signs, and letters with the usual
 * marks. A font is a BDF file, whose numbers are taken as Unicode (Character Bitmap Distribution Format 2.1, Adobe, X
 * Consortium Standard). What a font does not have is drawn as a box. Letters follow each other from left to right.
 *
 * <p>Where palettes move, a light has the colour of the palette at the middle of its cell, rather than the mean of
 * those of the dots that it covers, which would have to be found anew in each frame. {@code spacing} and {@code
 * thickness} do not move: they change the picture of the line, which is drawn and filtered when the cue is compiled, at
 * the cost of many frames.
 *
 * <p>Settings: {@code text}; {@code font}; {@code size} (share of the canvas height, 0.01 to 10, default 0.6); {@code
 * palette} (along the text); {@code outline} (palette along the text) and {@code thickness} (dots, 0 to 8, default 0);
 * {@code spacing} (whole dots, -8 to 64, default 0); {@code up} (canvas heights, default 0); {@code turn} (degrees,
 * default 0); {@code toward} (degrees, default 180); {@code still}; {@code smooth}; {@code every} (default 8 s) and the
 * others of {@link Motion}.
 */
public final class Lettering implements Effect {
    private static final String DRAWN_ONCE = "the letters are drawn once for the cue; to let them grow, move \"size\"";

    static final TextSetting TEXT = TextSetting.of("text", "text", "", 500, "what is written, in one line");
    static final FileSetting FONT = FileSetting.of("font", "BDF", "letters from a file instead of the project's own");
    static final NumberSetting SIZE =
            NumberSetting.of("size", "canvas heights", 0.01, 10, 0.6, "height of a capital letter; see smooth");
    static final PaletteSetting PALETTE = PaletteSetting.of("palette", "colours along the text", "white");
    static final PaletteSetting OUTLINE =
            PaletteSetting.of("outline", "colours along the outline of the letters, if it has a thickness", "black");
    static final NumberSetting THICKNESS = NumberSetting.of(
                    "thickness", "dots", 0, 8, 0, "how thick the outline is; a capital has about 7 dots")
            .steady(DRAWN_ONCE);
    static final NumberSetting SPACING = NumberSetting.whole(
                    "spacing", "dots", -8, 64, 0, "dots added between two letters")
            .steady(DRAWN_ONCE);
    static final NumberSetting UP =
            NumberSetting.of("up", "canvas heights", -1000, 1000, 0, "how far above the middle of the canvas");
    static final NumberSetting TURN = NumberSetting.of(
            "turn", "degrees", -36_000, 36_000, 0, "turned counter-clockwise; at 90 the text runs upward");
    static final NumberSetting TOWARD = NumberSetting.of(
            "toward", "degrees", -36_000, 36_000, 180, "where it moves to: 0 is right, 90 up, 180 left, 270 down");
    static final FlagSetting STILL = FlagSetting.of("still", "stands in the middle instead of moving");
    static final FlagSetting SMOOTH = FlagSetting.of(
            "smooth", "any size and place; else a dot is a whole number of lights, and moves light by light");
    static final DurationSetting EVERY =
            DurationSetting.of("every", 8, "time for one pass, from outside on one side to outside on the other");

    private static final List<Setting<?>> OF_MOVEMENT =
            List.of(TOWARD, EVERY, Motion.PASSES, Motion.REVERSE, Motion.PHASE);
    private static final List<Setting<?>> SETTINGS = Stream.of(
                    List.of(TEXT, FONT, SIZE, PALETTE, OUTLINE, THICKNESS, SPACING, UP, TURN, STILL, SMOOTH),
                    OF_MOVEMENT)
            .<Setting<?>>flatMap(List::stream)
            .toList();

    private static final long MOST_FONT_BYTES = 64L << 20;
    private static final long MOST_PIXELS = 4L << 20;

    private final FileShelf<BdfFont> shelf = new FileShelf<>();

    /** For the service loader. */
    public Lettering() {}

    @Override
    public String name() {
        return "lettering";
    }

    @Override
    public String summary() {
        return "text crossing the canvas or standing on it";
    }

    @Override
    public String formula() {
        return "mean of the dots of the letters, in linear light, over the cell between a light and its neighbours; the line's"
                + " middle is (2 * frac(passes gone by) - 1) * (canvas + text) / 2 along toward from the canvas's middle";
    }

    @Override
    public List<Setting<?>> settings() {
        return SETTINGS;
    }

    @Override
    public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
        refuseWhatHasNoUse(settings);
        Motion motion = Motion.of(settings, EVERY, EVERY.standard().orElseThrow());
        PaletteTrack letters = settings.value(PALETTE);
        PaletteTrack outline = settings.value(OUTLINE);
        double thickness = Dial.of(settings, THICKNESS).resting();
        AreaKernel.Style style = new AreaKernel.Style(false, true);
        if (letters.isConstant() && outline.isConstant()) {
            LetterPicture picture =
                    picture(settings, new LetterPicture.Colors(letters.first(), outline.first(), thickness));
            LetterPlacing placing = new LetterPlacing(picture, motion, settings);
            return AreaKernel.of(canvas, Reel.of(picture.image()), time -> 0, placing, style);
        }
        LetterPicture picture = picture(settings, LetterPicture.Colors.coverage(thickness));
        LetterPlacing placing = new LetterPlacing(picture, motion, settings);
        Kernel coverage = AreaKernel.looking(canvas, Reel.of(picture.image()), time -> 0, placing, style);
        PaletteDial letterDial = PaletteDial.of(letters);
        PaletteDial outlineDial = PaletteDial.of(outline);
        return () -> new TintBrush(coverage.open(), letterDial.open(), outlineDial.open(), picture.marginShare());
    }

    @Override
    public List<Doubt> doubts(Settings settings) throws SettingException {
        Alphabet alphabet = alphabet(settings);
        List<String> lacking = text(settings)
                .codePoints()
                .distinct()
                .filter(letter -> !alphabet.has(letter))
                .mapToObj(Character::toString)
                .toList();
        if (lacking.isEmpty()) {
            return List.of();
        }
        String hint =
                settings.value(FONT).isPresent() ? "choose a font that has them" : "name a BDF font that has them";
        return List.of(new Doubt("text", "the font has no " + Shown.names(lacking) + "; a box stands for each", hint));
    }

    private static void refuseWhatHasNoUse(Settings settings) throws SettingException {
        if (settings.isGiven(OUTLINE) && !settings.isGiven(THICKNESS)) {
            throw new SettingException(
                    "outline", "outline says nothing without thickness", "say how many dots thick it is, such as 1");
        }
        for (Setting<?> setting : OF_MOVEMENT) {
            if (settings.value(STILL) && settings.isGiven(setting)) {
                throw new SettingException(
                        setting.name(),
                        setting.name() + " says nothing where still is true",
                        "leave out one of the two");
            }
        }
    }

    private LetterPicture picture(Settings settings, LetterPicture.Colors colors) throws SettingException {
        int spacing = (int) Dial.of(settings, SPACING).resting();
        DotLine line = DotLine.of(text(settings), alphabet(settings), spacing);
        if (LetterPicture.pixels(line, colors.thickness()) > MOST_PIXELS) {
            throw new SettingException(
                    "text",
                    "the text takes " + line.columns() + " x " + line.rows() + " dots, too many",
                    "write less, or use a smaller font");
        }
        return LetterPicture.of(line, colors);
    }

    private static String text(Settings settings) throws SettingException {
        String text = Normalizer.normalize(settings.value(TEXT), Normalizer.Form.NFC);
        if (text.isEmpty()) {
            throw new SettingException("text", "there is no text to show", "write one: \"text\": \"Good evening\"");
        }
        if (text.codePoints().anyMatch(Character::isISOControl)) {
            throw new SettingException(
                    "text", "the text has a line break or another control character", "a cue shows one line of text");
        }
        return text;
    }

    private Alphabet alphabet(Settings settings) throws SettingException {
        Optional<Path> file = settings.value(FONT);
        return file.isPresent() ? font(file.get()) : new OwnAlphabet();
    }

    private BdfFont font(Path file) throws SettingException {
        try {
            if (Files.size(file) > MOST_FONT_BYTES) {
                throw new SettingException("font", "\"" + file.getFileName() + "\" is larger than 64 MB", "");
            }
            return shelf.decoded(Files.readAllBytes(file), bytes -> decoded(bytes, file));
        } catch (IOException e) {
            throw new SettingException("font", "\"" + file.getFileName() + "\" cannot be read: " + e.getMessage(), "");
        }
    }

    private static BdfFont decoded(byte[] bytes, Path file) throws SettingException {
        Problems problems = new Problems();
        Optional<BdfFont> font = BdfReader.read(bytes, file.getFileName().toString(), problems);
        return font.orElseThrow(() -> new SettingException("font", problems.inFileOrder()));
    }
}
