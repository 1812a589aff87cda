package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.duskloom.engine.color.BlendMode;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.timeline.Axes;
import org.duskloom.engine.timeline.Fit;
import org.duskloom.engine.timeline.PixelOrder;
import org.duskloom.engine.timeline.Spread;
import org.duskloom.engine.timeline.StaggerBy;
import org.duskloom.engine.timeline.Word;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The page of meanings speaks of every word that there is and of no other. Its lines of settings are made here; {@value
 * #RENEWAL} writes them. {@link RecomputedFramesTest} holds its formulas against frames.
 */
class ReferencePageTest {
    private static final String RENEWAL = "mvn -q -pl cli -am test -Dtest=ReferencePageTest -Dreference.renew=true"
            + " -Dsurefire.failIfNoSpecifiedTests=false";
    private static final Path PAGE = Project.file("demos/reference/README.md");
    private static final Pattern SETTINGS = Pattern.compile("(?ms)^### (\\w+)$(.*?)^Settings: (.*?)$");

    static Stream<Effect> effects() {
        return EffectRegistry.installed().effects().stream();
    }

    @Test
    void theSettingsAreThoseOfTheProgram() throws IOException {
        String page = Files.readString(PAGE);
        String made = SETTINGS.matcher(page)
                .replaceAll(found -> Matcher.quoteReplacement(
                        "### " + found.group(1) + found.group(2) + "Settings: " + settings(found.group(1))));
        if (Boolean.getBoolean("reference.renew")) {
            Files.writeString(PAGE, made);
        }
        assertThat(Files.readString(PAGE)).as("renew it with " + RENEWAL).isEqualTo(made);
    }

    private static String settings(String effect) {
        return EffectRegistry.installed().find(effect).stream()
                .flatMap(found -> found.settings().stream())
                .map(ReferencePageTest::setting)
                .collect(Collectors.joining("; "));
    }

    private static String setting(Setting<?> setting) {
        String standard = setting.standardText().isEmpty() ? "" : ", else " + setting.standardText();
        return "`" + setting.name() + "` " + setting.range() + standard;
    }

    @Test
    void everyEffectHasItsSection() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(SETTINGS.matcher(page).results().map(found -> found.group(1)))
                .isEqualTo(effects().map(Effect::name).toList());
    }

    /**
     * A section names every setting of its effect, but for those of passes, of palettes and of directions, which have
     * their own.
     */
    @ParameterizedTest
    @MethodSource("effects")
    void everySettingIsSpokenOf(Effect effect) throws IOException {
        String page = Files.readString(PAGE);
        List<String> common = List.of("palette", "every", "passes", "reverse", "phase", "toward", "x", "y", "easing");
        assertThat(common).allMatch(name -> page.contains("`" + name + "`") || name.equals("easing"));
        String section = SETTINGS.matcher(page)
                .results()
                .filter(found -> found.group(1).equals(effect.name()))
                .findFirst()
                .orElseThrow()
                .group(2);
        assertThat(effect.settings().stream().map(Setting::name).filter(name -> !common.contains(name)))
                .allSatisfy(name -> assertThat(section).containsPattern("(?<![\\w-])" + name + "(?![\\w-])"));
    }

    @Test
    void everyWordOfACanvasIsThere() throws IOException {
        assertThat(words("**`spread`**")).isEqualTo(words(Spread.values()));
        assertThat(words("**`axes`**")).isEqualTo(words(Axes.values()));
        assertThat(words("**`fit`**")).isEqualTo(words(Fit.values()));
        assertThat(words("**`order`**")).isEqualTo(words(PixelOrder.values()));
        assertThat(words("**`stagger`**")).isEqualTo(words(StaggerBy.values()));
        assertThat(words("## Layers")).isEqualTo(BlendMode.words());
    }

    private static List<String> words(Word... words) {
        return Arrays.stream(words).map(Word::word).toList();
    }

    /** The first column of the first table after a place. */
    private static List<String> words(String after) throws IOException {
        String page = Files.readString(PAGE);
        int start = page.indexOf("\n| ", page.indexOf(after));
        String table = page.substring(start, page.indexOf("\n\n", start));
        return Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE)
                .matcher(table)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void itsLinksLeadToFiles() throws IOException {
        assertThat(Pattern.compile("]\\(([^)#]+)\\)")
                        .matcher(Files.readString(PAGE))
                        .results())
                .isNotEmpty()
                .allSatisfy(
                        found -> assertThat(PAGE.resolveSibling(found.group(1))).exists());
        assertThat(Files.readString(Project.file("README.md"))).contains("](demos/reference/README.md)");
    }
}
