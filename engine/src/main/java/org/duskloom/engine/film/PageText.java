package org.duskloom.engine.film;

import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a page that works as it stands: it names its styles and scripts, which are files beside it, and holds
 * something to show. What may be filled in stands between two marks, which are comments: {@code <!-- film -->} and
 * {@code <!-- end of film -->}. Immutable.
 *
 * @param html the page
 */
public record PageText(String html) {
    private static final Pattern STYLE = Pattern.compile("<link rel=\"stylesheet\" href=\"([^\"]+)\">");
    private static final Pattern SCRIPT = Pattern.compile("<script src=\"([^\"]+)\"></script>");

    private static final Pattern ENDS_SCRIPT = Pattern.compile("</script|<script|<!--", Pattern.CASE_INSENSITIVE);

    /** Where a mark opens and closes in the page. */
    private record Place(int open, int end) {}

    /**
     * The same page with its styles and scripts in it.
     *
     * @param files gives the text of a file that the page names
     * @throws IllegalArgumentException if a script would end before its end
     */
    public PageText inOneFile(UnaryOperator<String> files) {
        String styled = STYLE.matcher(html)
                .replaceAll(found -> Matcher.quoteReplacement("<style>\n" + files.apply(found.group(1)) + "</style>"));
        return new PageText(SCRIPT.matcher(styled)
                .replaceAll(found -> Matcher.quoteReplacement(
                        "<script>\n" + requireInnocent(found.group(1), files.apply(found.group(1))) + "</script>")));
    }

    /** The same page with texts between marks, by their names; marks that are not named keep what they have. */
    public PageText filled(Map<String, String> texts) {
        String page = html;
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Place place = place(page, text.getKey());
            page = page.substring(0, place.open) + text.getValue() + page.substring(place.end);
        }
        return new PageText(page);
    }

    /** What stands before a mark. */
    String before(String mark) {
        return html.substring(0, place(html, mark).open);
    }

    /** What stands behind the end of a mark. */
    String after(String mark) {
        return html.substring(place(html, mark).end);
    }

    /**
     * JSON that no script element can end in: the sign that begins a tag is escaped, which in JSON stands in texts
     * only.
     */
    static String harmless(String json) {
        return json.replace("<", "\\u003c");
    }

    private static Place place(String page, String mark) {
        String opens = "<!-- " + mark + " -->";
        String closes = "<!-- end of " + mark + " -->";
        int open = page.indexOf(opens);
        int close = page.indexOf(closes);
        if (open < 0 || close < open) {
            throw new IllegalArgumentException("the page has no mark " + mark);
        }
        return new Place(open, close + closes.length());
    }

    private static String requireInnocent(String name, String script) {
        if (ENDS_SCRIPT.matcher(script).find()) {
            throw new IllegalArgumentException(name + " holds what ends a script");
        }
        return script;
    }
}
