package org.duskloom.engine.report.page;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A page or a piece of it as a tree, for tests: it is XML too, so every element is closed and every attribute quoted.
 */
record Page(Document tree) {
    /** Fails where it is not well formed. */
    static Page of(String html) {
        try {
            return new Page(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8))));
        } catch (Exception fault) {
            throw new AssertionError(fault.getMessage() + " in\n" + html, fault);
        }
    }

    static Page ofPiece(Html html) {
        return of("<main>" + html + "</main>");
    }

    List<Element> elements(String tag) {
        NodeList nodes = tree.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    List<String> texts(String tag) {
        return elements(tag).stream().map(Element::getTextContent).toList();
    }

    /** The cells of each row of all tables, the heads too. */
    List<List<String>> rows() {
        return elements("tr").stream()
                .map(row -> Stream.of(row.getChildNodes())
                        .flatMap(children -> {
                            List<String> cells = new ArrayList<>();
                            for (int i = 0; i < children.getLength(); i++) {
                                if (children.item(i) instanceof Element cell) {
                                    cells.add(cell.getTextContent());
                                }
                            }
                            return cells.stream();
                        })
                        .toList())
                .toList();
    }

    /** An attribute of the elements with a class, in their order. */
    List<String> ofClass(String tag, String name, String attribute) {
        return elements(tag).stream()
                .filter(element -> element.getAttribute("class").equals(name))
                .map(element -> element.getAttribute(attribute))
                .toList();
    }
}
