package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The guides as pages for a browser, as the download has them: of every {@code NAME.md} a {@code NAME.html} in the same
 * place, with links that lead to the pages. Compiled as a test, so that nothing of it comes near the program; the
 * profile {@code dist} runs it.
 */
final class GuidePages {
    /** What of the project comes along in a download, by their beginnings; a link to anything else is only a word. */
    private static final Set<String> ALONG = Set.of("README.md", "LICENSE", "demos/");

    /** What is only for those who have the sources, such as how the program is built. */
    private static final Pattern AMONG_THE_SOURCES =
            Pattern.compile("<!-- among the sources -->\n.*?<!-- end -->\n", Pattern.DOTALL);

    private GuidePages() {}

    /** Writes all pages of the project in the first folder into the second. */
    public static void main(String[] arguments) throws IOException {
        Path into = Path.of(arguments[1]);
        for (Map.Entry<String, String> page : of(Path.of(arguments[0])).entrySet()) {
            Path file = into.resolve(page.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, page.getValue());
        }
    }

    /** All pages by their names from the root, such as {@code demos/farm/README.html}. */
    static Map<String, String> of(Path project) throws IOException {
        Set<String> along = new TreeSet<>();
        for (String beginning : ALONG) {
            try (Stream<Path> files = Files.walk(project.resolve(beginning))) {
                files.forEach(
                        file -> along.add(project.relativize(file).toString().replace('\\', '/')));
            }
        }
        Map<String, String> pages = new TreeMap<>();
        for (String name : along) {
            if (name.endsWith(".md")) {
                GuidePage page = new GuidePage(name, along);
                pages.put(GuidePage.asPage(name), page.html(inDownload(Files.readString(project.resolve(name)))));
            }
        }
        return pages;
    }

    /** The guide without what stands between the marks. */
    static String inDownload(String markdown) {
        return AMONG_THE_SOURCES.matcher(markdown).replaceAll("");
    }
}
