package org.duskloom.cli;

import java.util.List;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.Setting;

/** What is known of effects, for people. */
final class EffectText {
    private static final int WIDTH = 100;

    private EffectText() {}

    /** A line for each effect. */
    static String list(List<Effect> effects) {
        TextTable table = new TextTable(WIDTH, 1);
        effects.forEach(effect -> table.row(effect.name(), effect.summary()));
        return table.text();
    }

    /** Summary, formula and settings of one effect. */
    static String of(Effect effect) {
        TextTable head = new TextTable(WIDTH, 1);
        head.row(effect.name(), effect.summary());
        head.row("formula", effect.formula());
        TextTable settings = new TextTable(WIDTH, 2, 3, 4);
        settings.row("setting", "unit", "range", "default", "meaning");
        for (Setting<?> setting : effect.settings()) {
            String standard = setting.standardText().isEmpty() ? "-" : setting.standardText();
            settings.row(setting.name(), setting.unit(), setting.range(), standard, setting.meaning());
        }
        return head.text() + System.lineSeparator() + settings.text();
    }
}
