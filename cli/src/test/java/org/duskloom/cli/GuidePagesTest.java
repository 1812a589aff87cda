package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guides as the download has them. */
class GuidePagesTest {
    private static final Pattern TARGET = Pattern.compile("(?:href|src)=\"([^\"]*)\"");

    private static final Set<String> ALONG = Set.of("README.md", "demos/farm/README.md", "demos/farm", "LICENSE");

    @TempDir
    private Path folder;

    /** GitHub Flavored Markdown Spec 0.29, 4.10: tables; CommonMark 0.31.2: the rest. */
    @Test
    void makesAPage() {
        String page = new GuidePage("README.md", ALONG)
                .html(
                        "# The *garden*\n\n| a | b |\n|---|---|\n| `x<y` | 2 |\n\n## Before you go\n\n## Before you go\n");
        assertThat(page)
                .startsWith("<!DOCTYPE html>\n")
                .contains("<meta charset=\"utf-8\">", "<title>The garden</title>", "max-width: 100% }")
                .contains("<h1 id=\"the-garden\">The <em>garden</em></h1>")
                .contains("<td><code>x&lt;y</code></td>")
                .contains("<h2 id=\"before-you-go\">", "<h2 id=\"before-you-go-1\">")
                .endsWith("</html>\n");
    }

    @Test
    void linksLeadToPagesOrAreWordsOnly() {
        GuidePage page = new GuidePage("demos/farm/README.md", ALONG);
        assertThat(page.html(
                        "[a `b`](../../README.md#words) [c](../../LICENSE) [d](#here) [e](https://example.org/f.md)"))
                .contains("<p><a href=\"../../README.html#words\">a <code>b</code></a> <a href=\"../../LICENSE\">c</a>"
                        + " <a href=\"#here\">d</a> <a href=\"https://example.org/f.md\">e</a></p>");
        assertThat(page.html("x [a `b`](../../DEVELOPERS.md) y")).contains("<p>x a <code>b</code> y</p>");
    }

    /** Every link of every page leads to a file that comes along, and, where it names one, to a heading in it. */
    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        Map<String, String> pages = GuidePages.of(Project.ROOT);
        assertThat(pages).containsKeys("README.html", "demos/gallery/README.html", "demos/reference/fields.html");
        List<String> lost = new ArrayList<>();
        int seen = 0;
        for (Map.Entry<String, String> page : pages.entrySet()) {
            for (MatchResult found : TARGET.matcher(page.getValue()).results().toList()) {
                String target = found.group(1);
                if (!target.contains(":") && !leads(page.getKey(), target, pages)) {
                    lost.add(page.getKey() + ": " + target);
                }
                seen++;
            }
        }
        assertThat(lost).isEmpty();
        assertThat(seen).isGreaterThan(100);
        assertThat(leads("README.html", "demos/farm/README.html#nowhere", pages))
                .isFalse();
        assertThat(leads("README.html", "DEVELOPERS.md", pages)).isFalse();
    }

    private static boolean leads(String from, String target, Map<String, String> pages) {
        int sharp = target.indexOf('#');
        String file = sharp < 0 ? target : target.substring(0, sharp);
        String name = file.isEmpty()
                ? from
                : Path.of(from).resolveSibling(file).normalize().toString().replace('\\', '/');
        if (pages.containsKey(name)) {
            return sharp < 0 || pages.get(name).contains(" id=\"" + target.substring(sharp + 1) + "\"");
        }
        return (name.equals("LICENSE") || name.startsWith("demos/")) && Files.exists(Project.file(name));
    }

    /** Whoever has a download has no Maven, no sources, and no page for developers. */
    @Test
    void leavesOutWhatIsForTheSources() throws IOException {
        assertThat(GuidePages.inDownload("a\n<!-- among the sources -->\nb\n\n<!-- end -->\nc\n"
                        + "<!-- among the sources -->\nd\n<!-- end -->\n"))
                .isEqualTo("a\nc\n");
        Map<String, String> pages = GuidePages.of(Project.ROOT);
        assertThat(pages.get("README.html"))
                .contains("render demos/garden/show.json", "adoptium.net", "duskloom_VERSION_all.deb")
                .doesNotContain("Maven", "has to be built", "DEVELOPERS");
        assertThat(pages.values())
                .allSatisfy(page -> assertThat(page).doesNotContain("mvn ", "among the sources", "<!-- end -->"));
    }

    @Test
    void writesThemAll() throws IOException {
        GuidePages.main(new String[] {
            Project.ROOT.toString(), folder.resolve("made here").toString()
        });
        for (Map.Entry<String, String> page : GuidePages.of(Project.ROOT).entrySet()) {
            assertThat(folder.resolve("made here").resolve(page.getKey())).hasContent(page.getValue());
        }
    }
}
