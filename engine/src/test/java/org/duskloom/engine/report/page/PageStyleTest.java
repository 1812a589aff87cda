package org.duskloom.engine.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.duskloom.engine.report.Report;
import org.duskloom.engine.report.Reported;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** The style of a report: that it can be read, and that nothing of a page goes without it. */
class PageStyleTest {
    private static final Map<String, String> COLORS = new LinkedHashMap<>(Map.of("white", "ffffff", "black", "000000"));

    static {
        all("--([a-z]+): #([0-9a-f]{6});", PageStyle.TEXT).forEach((name, match) -> COLORS.put(name, match.group(2)));
    }

    @TempDir
    private Path folder;

    /** Matches by their first group. */
    private static Map<String, MatchResult> all(String regex, String text) {
        return Pattern.compile(regex)
                .matcher(text)
                .results()
                .collect(Collectors.toMap(match -> match.group(1), match -> match, (one, same) -> one));
    }

    /** WCAG 2.2, "relative luminance". */
    private static double luminance(String name) {
        int rgb = Integer.parseInt(COLORS.get(name), 16);
        return 0.2126 * light(rgb >> 16) + 0.7152 * light(rgb >> 8) + 0.0722 * light(rgb);
    }

    private static double light(int code) {
        double share = (code & 0xFF) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** WCAG 2.2, "contrast ratio". */
    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** By WCAG 2.2 ratios go from 1 to 21. */
    @Test
    void contrastIsMeasuredAsWcagDoes() {
        assertThat(contrast("black", "white")).isCloseTo(21, within(1e-9));
        assertThat(contrast("ink", "ink")).isCloseTo(1, within(1e-9));
    }

    /** WCAG 2.2, success criterion 1.4.3: text has at least 4.5 to 1, on the page, in a plot and on its area. */
    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, white",
        "quiet, paper",
        "quiet, white",
        "blue, paper",
        "brick, paper",
        "brick, white",
        "brick, pale",
        "ink, pale"
    })
    void wordsCanBeRead(String text, String ground) {
        assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(4.5);
    }

    /** WCAG 2.2, success criterion 1.4.11: what a drawing is read by, and what has the focus, has 3 to 1. */
    @ParameterizedTest
    @CsvSource({"blue, white", "blue, pale", "blue, paper", "brick, pale", "ink, pale"})
    void curvesAndLimitsCanBeSeen(String line, String ground) {
        assertThat(contrast(line, ground)).isGreaterThanOrEqualTo(3);
    }

    /** WCAG 2.2, success criterion 1.4.1: two limits differ by more than a colour, and so do verdicts. */
    @Test
    void nothingIsToldByColourAlone() {
        assertThat(PageStyle.TEXT)
                .containsPattern("\\.soft \\{[^}]*stroke-dasharray")
                .containsPattern("\\.verdict\\.beyond \\{[^}]*double")
                .doesNotContainPattern("\\.hard \\{[^}]*stroke-dasharray")
                .doesNotContainPattern("\\.verdict \\{[^}]*double");
    }

    @Test
    void everyColourThatIsUsedIsThere() {
        assertThat(all("var\\(--([a-z]+)\\)", PageStyle.TEXT).keySet())
                .isNotEmpty()
                .isSubsetOf(all("--([a-z]+):", PageStyle.TEXT).keySet());
    }

    @Test
    void bracesAreClosed() {
        int depth = 0;
        for (char c : PageStyle.TEXT.toCharArray()) {
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            assertThat(depth).isBetween(0, 2);
        }
        assertThat(depth).isZero();
    }

    /** A class without a rule is a slip of the pen in one of the two. */
    @Test
    void everyClassOfAPageHasARule() throws IOException {
        Report report = Reported.of(
                        folder,
                        Reported.KIND + Reported.ports(Reported.FENCE, Reported.POST) + ", " + Reported.supply(0.1))
                .report();
        Set<String> used = new TreeSet<>();
        for (Element element : Page.of(ReportPage.of(report)).elements("*")) {
            used.addAll(Set.of(element.getAttribute("class").split(" ")));
        }
        used.remove("");
        assertThat(used).contains("beyond", "curve", "judged", "moments", "note", "row", "soft", "tick", "wide");
        assertThat(all("\\.([a-z]+)(?=[ .,:{])", PageStyle.TEXT).keySet()).containsAll(used);
    }
}
