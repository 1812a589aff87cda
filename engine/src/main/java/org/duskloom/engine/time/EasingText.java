package org.duskloom.engine.time;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.css.AsciiCase;
import org.duskloom.engine.css.CssFunction;
import org.duskloom.engine.css.CssValue;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Counted;
import org.duskloom.engine.text.Quoted;

/** Reads the words and functions of W3C CSS Easing Functions Level 1 and 2. */
final class EasingText {
    private static final double LARGEST_OUTPUT = 1000;
    private static final int MOST_STEPS = 1_000_000;
    private static final Map<String, Easing> BY_WORD = words();
    private static final Map<String, Steps.Jump> JUMPS = Map.of(
            "jump-start", Steps.Jump.START,
            "start", Steps.Jump.START,
            "jump-end", Steps.Jump.END,
            "end", Steps.Jump.END,
            "jump-none", Steps.Jump.NONE,
            "jump-both", Steps.Jump.BOTH);
    private static final List<String> ALLOWED = allowed();

    private final String text;

    private EasingText(String text) {
        this.text = text;
    }

    static Easing parse(String text) throws TextFormatException {
        EasingText reader = new EasingText(text);
        if (!CssFunction.isMeantBy(text)) {
            return reader.word(AsciiCase.lower(text.strip()));
        }
        CssFunction function = CssFunction.parse(text);
        return switch (function.name()) {
            case "cubic-bezier" -> reader.cubicBezier(function.groups());
            case "steps" -> reader.steps(function.groups());
            case "linear" -> new LinearStops(new LinearStopsText(text).points(function.groups()));
            default -> throw reader.unknown(function.name() + "()");
        };
    }

    private Easing word(String word) throws TextFormatException {
        Easing easing = BY_WORD.get(word);
        if (easing == null) {
            throw unknown(word);
        }
        return easing;
    }

    private Easing cubicBezier(List<List<CssValue>> groups) throws TextFormatException {
        String hint = "write cubic-bezier(x1, y1, x2, y2) with x1 and x2 from 0 to 1 and y1 and y2 from -1000 to 1000";
        if (groups.size() != 4) {
            throw refuse("has " + Counted.of(groups.size(), "value") + " instead of 4", hint);
        }
        double[] values = new double[4];
        for (int i = 0; i < 4; i++) {
            values[i] = single(groups.get(i), CssValue.Kind.NUMBER, hint).number();
            boolean isX = i % 2 == 0;
            if (isX ? values[i] < 0 || values[i] > 1 : Math.abs(values[i]) > LARGEST_OUTPUT) {
                throw refuse("has the value " + groups.get(i).get(0).text() + " out of its range", hint);
            }
        }
        return new CubicBezier(values[0], values[1], values[2], values[3]);
    }

    private Easing steps(List<List<CssValue>> groups) throws TextFormatException {
        String hint = "write steps(4) or steps(4, jump-end), with a whole number from 1 to 1000000";
        if (groups.size() > 2) {
            throw refuse("has " + groups.size() + " values instead of 1 or 2", hint);
        }
        double count = single(groups.get(0), CssValue.Kind.NUMBER, hint).number();
        if (count < 1 || count > MOST_STEPS || count != Math.rint(count)) {
            throw refuse("has the count " + groups.get(0).get(0).text(), hint);
        }
        Steps.Jump jump = groups.size() == 1 ? Steps.Jump.END : jump(single(groups.get(1), CssValue.Kind.WORD, hint));
        if (jump == Steps.Jump.NONE && count < 2) {
            throw refuse("never moves", "jump-none needs 2 steps or more");
        }
        return new Steps((int) count, jump);
    }

    private Steps.Jump jump(CssValue word) throws TextFormatException {
        Steps.Jump jump = JUMPS.get(AsciiCase.lower(word.text()));
        if (jump == null) {
            List<String> words = JUMPS.keySet().stream().sorted().toList();
            throw refuse("has the unknown position " + word.quoted(), NearestName.hint(word.text(), words));
        }
        return jump;
    }

    private CssValue single(List<CssValue> group, CssValue.Kind kind, String hint) throws TextFormatException {
        if (group.size() != 1 || !group.get(0).is(kind)) {
            throw refuse("has " + group.get(group.size() - 1).quoted() + " where it cannot stand", hint);
        }
        return group.get(0);
    }

    private TextFormatException unknown(String name) {
        return new TextFormatException(Quoted.of(text) + " is not an easing", NearestName.hint(name, ALLOWED));
    }

    private TextFormatException refuse(String what, String hint) {
        return new TextFormatException("the easing " + Quoted.of(text) + " " + what, hint);
    }

    private static Map<String, Easing> words() {
        Map<String, Easing> words = new LinkedHashMap<>();
        words.put("linear", Easing.LINEAR);
        words.put("ease", Easing.EASE);
        words.put("ease-in", Easing.EASE_IN);
        words.put("ease-out", Easing.EASE_OUT);
        words.put("ease-in-out", Easing.EASE_IN_OUT);
        words.put("step-start", Easing.STEP_START);
        words.put("step-end", Easing.STEP_END);
        return words;
    }

    private static List<String> allowed() {
        List<String> names = new ArrayList<>(BY_WORD.keySet());
        names.addAll(List.of("cubic-bezier()", "steps()", "linear()"));
        return List.copyOf(names);
    }
}
