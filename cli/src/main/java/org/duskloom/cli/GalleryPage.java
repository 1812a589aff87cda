package org.duskloom.cli;

import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Setting;

/** The text of the gallery, in Markdown: the reference of all effects. */
final class GalleryPage {
    private GalleryPage() {}

    /**
     * The page.
     *
     * @param effects in order
     * @param shows the show that each strip was drawn from, by the effect's name
     */
    static String of(List<Effect> effects, Map<String, String> shows) {
        StringBuilder page = new StringBuilder();
        page.append("# Effects\n\n");
        page.append("Every effect, as it looks on each of five daisies and on a whole trellis, with all its settings.")
                .append(
                        " This page is made by `duskloom effects --gallery`; a test compares the two. The shows stand in")
                .append(" `demos/firsts`, to copy from.\n\n");
        page.append("| effect | what the audience sees |\n|---|---|\n");
        for (Effect effect : effects) {
            page.append("| [")
                    .append(effect.name())
                    .append("](#")
                    .append(effect.name())
                    .append(") | ");
            page.append(cell(effect.summary())).append(" |\n");
        }
        for (Effect effect : effects) {
            section(page, effect, shows.get(effect.name()));
        }
        return page.toString();
    }

    private static void section(StringBuilder page, Effect effect, String show) {
        page.append("\n## ").append(effect.name()).append("\n\n");
        page.append(sentence(effect.summary())).append("\n\n");
        page.append("![Four moments of ")
                .append(effect.name())
                .append("](")
                .append(effect.name())
                .append(".png)\n\n");
        page.append("```json\n").append(show).append("```\n\n");
        page.append("How it is computed: ").append(sentence(effect.formula())).append("\n\n");
        page.append("| setting | unit | range | default | meaning |\n|---|---|---|---|---|\n");
        for (Setting<?> setting : effect.settings()) {
            String standard = setting.standardText().isEmpty() ? "" : "`" + setting.standardText() + "`";
            page.append("| `")
                    .append(setting.name())
                    .append("` | ")
                    .append(cell(setting.unit()))
                    .append(" | ");
            page.append(cell(setting.range())).append(" | ").append(standard).append(" | ");
            page.append(cell(setting.meaning())).append(" |\n");
        }
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    private static String sentence(String phrase) {
        return Character.toUpperCase(phrase.charAt(0)) + phrase.substring(1) + ".";
    }
}
