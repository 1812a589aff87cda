package org.duskloom.engine.color;

import java.util.List;
import java.util.regex.Pattern;
import org.duskloom.engine.css.AsciiCase;
import org.duskloom.engine.css.CssFunction;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/**
 * Reads a colour as W3C CSS Color Module Level 4 writes it: a name, {@code transparent}, {@code #rgb}, {@code #rgba},
 * {@code #rrggbb}, {@code #rrggbbaa}, {@code rgb()}, {@code rgba()}, {@code hsl()}, {@code hsla()}, {@code hwb()},
 * {@code oklab()} and {@code oklch()}; in letters of any size.
 *
 * <p>No colour is rounded to whole codes before it is mixed. A colour of whole codes leaves the renderer as it was
 * written. What {@code rgb()} has beyond 0 to 255 is clipped, and what sRGB cannot show of {@code oklab()} and {@code
 * oklch()} is clipped to [0, 1] in linear light. The word {@code none} counts as 0.
 */
public final class CssColor {
    private static final Pattern HEX = Pattern.compile("[0-9a-f]*");
    private static final Pattern HEX_WITHOUT_HASH = Pattern.compile("[0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8}");
    private static final String ALLOWED =
            "write a CSS colour name, #rgb, #rrggbb, rgb(), hsl(), hwb(), oklab() or oklch()";

    private CssColor() {}

    /**
     * Reads one colour.
     *
     * @throws TextFormatException if it is none
     */
    public static LinearColor parse(String text) throws TextFormatException {
        String color = AsciiCase.lower(text.strip());
        if (color.startsWith("#")) {
            return hex(text, color.substring(1));
        }
        if (CssFunction.isMeantBy(color)) {
            return new CssColorFunction(text, CssFunction.parse(text)).color();
        }
        LinearColor named = CssNames.COLORS.get(color);
        if (named == null) {
            throw new TextFormatException(Quoted.of(text) + " is not a colour", wordHint(color));
        }
        return named;
    }

    private static LinearColor hex(String text, String digits) throws TextFormatException {
        if (!HEX.matcher(digits).matches()) {
            String message = "the colour " + Quoted.of(text) + " has something other than hex digits";
            throw new TextFormatException(message, "after # stand digits from 0 to 9 and letters from a to f");
        }
        int width = digits.length() > 4 ? 2 : 1;
        int channels = digits.length() / width;
        if (digits.length() % width != 0 || channels < 3 || channels > 4) {
            String message = "the colour " + Quoted.of(text) + " has " + digits.length() + " hex digits";
            throw new TextFormatException(message, "write #rgb, #rgba, #rrggbb or #rrggbbaa");
        }
        int[] codes = {0, 0, 0, 255};
        for (int i = 0; i < channels; i++) {
            int value = Integer.parseInt(digits.substring(i * width, (i + 1) * width), 16);
            codes[i] = width == 1 ? value * 17 : value;
        }
        return LinearColor.ofCodes(codes[0], codes[1], codes[2]).withAlpha(codes[3] / 255f);
    }

    private static String wordHint(String word) {
        if (word.equals("currentcolor")) {
            return "there is no current colour here; name one, or write #rrggbb";
        }
        if (HEX_WITHOUT_HASH.matcher(word).matches()) {
            return "hex digits follow a #: \"#" + word + "\"";
        }
        List<String> names = List.copyOf(CssNames.COLORS.keySet());
        String near = NearestName.hint(word, names);
        return near.isEmpty() ? ALLOWED : near;
    }
}
