package org.duskloom.engine.report.page;

import java.util.List;

/** HTML in the making. Whatever is handed over as text is escaped. */
final class Html {
    /** What is longer gets room, also where a table has to scroll: its row would be as high as a phone. */
    private static final int NOTE = 40;

    private final StringBuilder html = new StringBuilder();

    /** Text as it may stand in HTML, between tags and in attributes. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isText(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    /** WHATWG HTML, section 13.2.3.5, has no place in a page for other controls, surrogates and noncharacters. */
    private static boolean isText(int c) {
        boolean noncharacter = c >= 0xFDD0 && c <= 0xFDEF || (c & 0xFFFE) == 0xFFFE;
        return c == '\n'
                || c == '\t'
                || !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE && !noncharacter;
    }

    /** Markup of our own. */
    Html raw(String markup) {
        html.append(markup);
        return this;
    }

    Html text(String text) {
        return raw(escaped(text));
    }

    /** An element that holds a text. */
    Html element(String tag, String text) {
        String name = tag.indexOf(' ') < 0 ? tag : tag.substring(0, tag.indexOf(' '));
        return raw("<" + tag + ">").text(text).raw("</" + name + ">\n");
    }

    /** A table in a box of its own that scrolls; the first row is its head, its first cells name the rows. */
    Html table(List<List<String>> rows) {
        raw("<div class=\"wide\" tabindex=\"0\"><table>\n<thead><tr>");
        rows.get(0).forEach(cell -> element("th scope=\"col\"", cell));
        raw("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows.subList(1, rows.size())) {
            raw("<tr>").element("th scope=\"row\"", row.get(0));
            row.subList(1, row.size())
                    .forEach(cell -> element(cell.length() > NOTE ? "td class=\"note\"" : "td", cell));
            raw("</tr>\n");
        }
        return raw("</tbody></table></div>\n");
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
