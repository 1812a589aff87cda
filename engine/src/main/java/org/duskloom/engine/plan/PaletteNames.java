package org.duskloom.engine.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.duskloom.engine.color.CssColor;
import org.duskloom.engine.color.Palette;
import org.duskloom.engine.color.PaletteStyle;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.NearestName;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.problem.TextFormatException;
import org.duskloom.engine.text.Quoted;

/** A word where a palette is expected: the name of none, so it must be a colour. */
final class PaletteNames {
    private PaletteNames() {}

    static Optional<Palette> color(TextNode word, String what, Set<String> palettes, Problems problems) {
        try {
            return Optional.of(Palette.evenly(List.of(CssColor.parse(word.value())), PaletteStyle.SMOOTH));
        } catch (TextFormatException e) {
            String hint = NearestName.of(word.value(), palettes)
                    .map(near -> "did you mean the palette " + Quoted.of(near) + "?")
                    .orElse(e.hint());
            problems.error(
                    word.location(),
                    what + ": " + Quoted.of(word.value()) + " is neither a palette nor a colour",
                    hint);
            return Optional.empty();
        }
    }
}
