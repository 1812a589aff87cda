package org.duskloom.engine.document;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What spreadsheets make of numbers that they take for dates: {@code 1.2} becomes {@code 1. Feb} or {@code
 * 01.02.2026}, {@code 1-2} becomes {@code 2026-02-01} (common practice, no source; months in the languages that most
 * such tables come in).
 */
final class CellDate {
    private static final Pattern DIGITS =
            Pattern.compile("([0-9]{4})([-/.])[0-9]{1,2}\\2[0-9]{1,2}|[0-9]{1,2}([-/.])[0-9]{1,2}\\3([0-9]{2}|[0-9]{4})"
                    + "|[0-9]{1,2}\\. ?[0-9]{1,2}\\.");

    private static final Pattern DAY_AND_MONTH =
            Pattern.compile("[0-9]{1,2}(?:\\. ?|-| |/)(\\p{L}{3,10})\\.?(?:[- /][0-9]{2,4})?");

    private static final Pattern MONTH_AND_DAY = Pattern.compile("(\\p{L}{3,10})\\.?[- ][0-9]{1,4}");

    /** The first three letters. */
    private static final Set<String> MONTHS = Set.of(
            "jan",
            "feb",
            "mar",
            "apr",
            "may",
            "jun",
            "jul",
            "aug",
            "sep",
            "oct",
            "nov",
            "dec",
            "m\u00e4r",
            "mrz",
            "mai",
            "okt",
            "dez",
            "f\u00e9v",
            "avr",
            "jui",
            "ao\u00fb",
            "d\u00e9c",
            "ene",
            "abr",
            "ago",
            "dic",
            "gen",
            "mag",
            "giu",
            "lug",
            "set",
            "ott",
            "mrt",
            "mei",
            "maj",
            "fev",
            "out",
            "des",
            "sty",
            "lut",
            "kwi",
            "cze",
            "lip",
            "sie",
            "wrz",
            "pa\u017a",
            "lis",
            "gru");

    private CellDate() {}

    /** Whether a cell that should hold a number holds a date, with or without a time behind it. */
    static boolean is(String cell) {
        String date = cell.replaceFirst("[T ][0-9]{1,2}:[0-9]{2}(:[0-9]{2})?$", "");
        if (DIGITS.matcher(date).matches()) {
            return true;
        }
        return hasMonth(DAY_AND_MONTH.matcher(date)) || hasMonth(MONTH_AND_DAY.matcher(date));
    }

    private static boolean hasMonth(Matcher date) {
        return date.matches() && MONTHS.contains(date.group(1).substring(0, 3).toLowerCase(Locale.ROOT));
    }
}
