package org.duskloom.cli;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * One guide that becomes a page.
 *
 * @param name of its Markdown file, from the root of the project
 * @param along the names of all files and folders that come along
 */
record GuidePage(String name, Set<String> along) {
    private static final List<Extension> TABLES = List.of(TablesExtension.create());

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>%s</title>
            <style>
            body { max-width: 60rem; margin: 0 auto; padding: 1rem; font: 1rem/1.5 sans-serif; color: #222; background: #fff }
            img { max-width: 100%% }
            pre { padding: 0.75rem; overflow-x: auto; background: #f3f1ec }
            code { font-family: monospace; background: #f3f1ec }
            table { display: block; overflow-x: auto; border-collapse: collapse }
            th, td { padding: 0.25rem 0.5rem; border: 1px solid #ccc; text-align: left; vertical-align: top }
            </style>
            </head>
            <body>
            """;

    private static final String FOOT = """
            </body>
            </html>
            """;

    /** The name of the page that a guide becomes; of other files their own. */
    static String asPage(String file) {
        return file.endsWith(".md") ? file.substring(0, file.length() - 3) + ".html" : file;
    }

    String html(String markdown) {
        Node page = Parser.builder().extensions(TABLES).build().parse(markdown);
        page.accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                visitChildren(link);
                turn(link);
            }
        });
        String body = HtmlRenderer.builder()
                .extensions(TABLES)
                .attributeProviderFactory(context -> new Anchors())
                .build()
                .render(page);
        return HEAD.formatted(text(page.getFirstChild())) + body + FOOT;
    }

    private void turn(Link link) {
        String target = link.getDestination();
        if (target.startsWith("#") || target.contains(":")) {
            return;
        }
        int sharp = target.indexOf('#');
        String file = sharp < 0 ? target : target.substring(0, sharp);
        String fragment = sharp < 0 ? "" : target.substring(sharp);
        Path found = Path.of(name).resolveSibling(file).normalize();
        if (along.contains(found.toString().replace('\\', '/'))) {
            link.setDestination(asPage(file) + fragment);
            return;
        }
        Node child = link.getFirstChild();
        while (child != null) {
            Node next = child.getNext();
            link.insertBefore(child);
            child = next;
        }
        link.unlink();
    }

    private static String text(Node node) {
        return TextContentRenderer.builder().build().render(node).strip();
    }

    /** Gives every heading the name that links use: its words in small letters, with hyphens between them. */
    private static final class Anchors implements AttributeProvider {
        private final Map<String, Integer> given = new HashMap<>();

        @Override
        public void setAttributes(Node node, String tag, Map<String, String> attributes) {
            if (node instanceof Heading) {
                String name = text(node)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} _-]", "")
                        .replace(' ', '-');
                int before = given.merge(name, 1, Integer::sum) - 1;
                attributes.put("id", before == 0 ? name : name + "-" + before);
            }
        }
    }
}
