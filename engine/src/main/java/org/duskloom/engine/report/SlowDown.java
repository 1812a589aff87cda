package org.duskloom.engine.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.duskloom.engine.document.Field;
import org.duskloom.engine.document.NumberNode;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.timeline.Cue;

/**
 * What to write so that a cue flashes no more than three times a second.
 *
 * @param cue what the cue is called
 * @param setting what is to be slowed: {@code every}, {@code passes}, {@value #REPEAT} where plays of the cue follow
 *     each other within the second, or nothing where none of these is known
 * @param written what it is
 * @param better what to write instead; empty where only the factor can be told
 */
public record SlowDown(String cue, Optional<String> setting, String written, String better) {
    static final String REPEAT = "repeat";

    private static final Pattern AMOUNT = Pattern.compile("([0-9]*\\.?[0-9]+)(ms|s|b|f)");
    private static final MathContext UP = new MathContext(3, RoundingMode.UP);

    /** What a factor such as 10/6 is off by must not be rounded up to another figure. */
    private static final MathContext EXACT_ENOUGH = new MathContext(12);

    private static final MathContext DOWN = new MathContext(3, RoundingMode.DOWN);

    public SlowDown {
        Objects.requireNonNull(cue, "cue");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(better, "better");
    }

    /**
     * What to do about a cue.
     *
     * @param caption what it is called
     * @param factor by how much it is to be slower, above 1
     */
    static SlowDown of(String caption, Cue cue, double factor) {
        for (Field field : cue.with()) {
            if (field.name().equals("every") && field.value() instanceof TextNode text) {
                return new SlowDown(caption, Optional.of("every"), text.value(), longer(text.value(), factor));
            }
            if (field.name().equals("passes") && field.value() instanceof NumberNode number) {
                BigDecimal fewer = new BigDecimal(number.value() / factor)
                        .round(EXACT_ENOUGH)
                        .round(DOWN);
                return new SlowDown(caption, Optional.of("passes"), number.written(), plain(fewer));
            }
        }
        return new SlowDown(caption, Optional.empty(), "", "");
    }

    /**
     * What to do about a cue that is played again and again.
     *
     * @param caption what it is called
     * @param seconds from the start of a play to that of the next
     * @param factor by how much that is to be longer, above 1
     */
    static SlowDown ofRepeat(String caption, double seconds, double factor) {
        BigDecimal written = new BigDecimal(seconds).round(EXACT_ENOUGH);
        BigDecimal longer = new BigDecimal(seconds * factor).round(EXACT_ENOUGH).round(UP);
        return new SlowDown(caption, Optional.of(REPEAT), plain(written) + "s", plain(longer) + "s");
    }

    private static String longer(String text, double factor) {
        Matcher amount = AMOUNT.matcher(text.strip());
        if (!amount.matches()) {
            return "";
        }
        BigDecimal value =
                new BigDecimal(amount.group(1)).multiply(new BigDecimal(factor)).round(EXACT_ENOUGH);
        BigDecimal rounded = amount.group(2).equals("f") ? value.setScale(0, RoundingMode.CEILING) : value.round(UP);
        return plain(rounded) + amount.group(2);
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
