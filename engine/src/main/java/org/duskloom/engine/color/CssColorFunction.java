package org.duskloom.engine.color;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.css.CssFunction;
import org.duskloom.engine.css.CssValue;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/** One colour function with its values, in the older syntax with commas or the newer one with white space. */
final class CssColorFunction {
    private static final Map<String, String> SAMPLES = Map.of(
            "rgb", "rgb(255 158 94 / 50%)",
            "rgba", "rgba(255, 158, 94, 0.5)",
            "hsl", "hsl(24 100% 68% / 50%)",
            "hsla", "hsla(24, 100%, 68%, 0.5)",
            "hwb", "hwb(24 37% 0%)",
            "oklab", "oklab(0.78 0.1 0.1)",
            "oklch", "oklch(0.78 0.14 54)");

    private final String text;
    private final CssFunction function;
    private final List<CssValue> parts = new ArrayList<>();

    CssColorFunction(String text, CssFunction function) {
        this.text = text;
        this.function = function;
    }

    LinearColor color() throws TextFormatException {
        return switch (function.name()) {
            case "rgb", "rgba" -> rgb();
            case "hsl", "hsla" -> hsl();
            case "hwb" -> hwb();
            case "oklab" -> oklab();
            case "oklch" -> oklch();
            default -> throw unknown();
        };
    }

    private LinearColor rgb() throws TextFormatException {
        boolean commas = readParts(true);
        boolean mixed =
                parts.subList(0, 3).stream().map(CssValue::kind).distinct().count() > 1;
        if (commas && mixed) {
            throw refuse("mixes numbers and percentages between its commas");
        }
        return decoded(number(0, 255) / 255, number(1, 255) / 255, number(2, 255) / 255);
    }

    private LinearColor hsl() throws TextFormatException {
        if (readParts(true)
                && !(parts.get(1).is(CssValue.Kind.PERCENTAGE) && parts.get(2).is(CssValue.Kind.PERCENTAGE))) {
            throw refuse("needs percentages between its commas");
        }
        return decoded(HueColors.ofHsl(hueDegrees(0), share(number(1, 100) / 100), share(number(2, 100) / 100)));
    }

    private LinearColor hwb() throws TextFormatException {
        readParts(false);
        return decoded(HueColors.ofHwb(hueDegrees(0), share(number(1, 100) / 100), share(number(2, 100) / 100)));
    }

    private LinearColor oklab() throws TextFormatException {
        readParts(false);
        return new OkLab(share(number(0, 1)), number(1, 0.4), number(2, 0.4)).toLinear(alpha());
    }

    private LinearColor oklch() throws TextFormatException {
        readParts(false);
        double chroma = Math.max(0, number(1, 0.4));
        return new OkLch(share(number(0, 1)), chroma, hueDegrees(2)).toLab().toLinear(alpha());
    }

    /**
     * Brings the three channels, and the alpha where there is one, into one list; true if commas stand between them.
     */
    private boolean readParts(boolean commasAllowed) throws TextFormatException {
        boolean commas = function.groups().size() > 1;
        if (commas && !commasAllowed) {
            throw refuse("has commas, which this function does not take");
        }
        if (commas) {
            addSeparated();
        } else {
            addSpaced(function.groups().get(0));
        }
        for (CssValue part : parts) {
            boolean word = part.is(CssValue.Kind.WORD);
            if (word && (commas || !part.isWord("none"))) {
                throw refuse("has the word " + part.quoted() + " where a number must stand");
            }
        }
        return commas;
    }

    private void addSeparated() throws TextFormatException {
        int count = function.groups().size();
        if (count < 3 || count > 4) {
            throw refuse("has " + count + " values instead of 3 or 4");
        }
        for (List<CssValue> group : function.groups()) {
            if (group.size() != 1 || group.get(0).is(CssValue.Kind.SLASH)) {
                throw refuse("mixes commas with spaces or a slash");
            }
            parts.add(group.get(0));
        }
    }

    private void addSpaced(List<CssValue> values) throws TextFormatException {
        boolean withAlpha = values.size() == 5 && values.get(3).is(CssValue.Kind.SLASH);
        long slashes =
                values.stream().filter(value -> value.is(CssValue.Kind.SLASH)).count();
        if (slashes > (withAlpha ? 1 : 0) || values.size() != (withAlpha ? 5 : 3)) {
            throw refuse("does not have 3 values, or 3 values, a slash and an alpha");
        }
        values.stream().filter(value -> !value.is(CssValue.Kind.SLASH)).forEach(parts::add);
    }

    /** A number as it is; a percentage as a share of {@code whole}. */
    private double number(int index, double whole) throws TextFormatException {
        CssValue part = parts.get(index);
        if (part.is(CssValue.Kind.DIMENSION)) {
            throw refuse("has the unit " + Quoted.of(part.unit()) + " where none can stand");
        }
        return part.is(CssValue.Kind.PERCENTAGE) ? part.number() * whole / 100 : part.number();
    }

    private double hueDegrees(int index) throws TextFormatException {
        CssValue part = parts.get(index);
        if (part.is(CssValue.Kind.PERCENTAGE)) {
            throw refuse("has a percentage for its hue");
        }
        double degrees = switch (part.unit()) {
            case "", "deg" -> part.number();
            case "grad" -> part.number() * 0.9;
            case "rad" -> part.number() * (180 / StrictMath.PI);
            case "turn" -> part.number() * 360;
            default -> throw refuse("has the unknown unit " + Quoted.of(part.unit()) + " for its hue");
        };
        return OkLch.reduced(degrees);
    }

    private double alpha() throws TextFormatException {
        return parts.size() < 4 ? 1 : share(number(3, 1));
    }

    private LinearColor decoded(LinearRgb encoded) throws TextFormatException {
        return decoded(encoded.red(), encoded.green(), encoded.blue());
    }

    private LinearColor decoded(double red, double green, double blue) throws TextFormatException {
        return new LinearColor(
                (float) Srgb.decode(share(red)),
                (float) Srgb.decode(share(green)),
                (float) Srgb.decode(share(blue)),
                (float) alpha());
    }

    private static double share(double value) {
        return Math.max(0, Math.min(value, 1));
    }

    private TextFormatException refuse(String what) {
        String message = "the colour " + Quoted.of(text) + " " + what;
        return new TextFormatException(message, "write it like " + SAMPLES.get(function.name()));
    }

    private TextFormatException unknown() {
        String message = Quoted.of(text) + " is not a colour that can be used here";
        return new TextFormatException(
                message,
                NearestName.hint(
                        function.name(), SAMPLES.keySet().stream().sorted().toList()));
    }
}
