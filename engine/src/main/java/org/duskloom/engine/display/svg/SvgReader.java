package org.duskloom.engine.display.svg;

import java.io.StringReader;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.document.TextNode;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;

/**
 * Reads the circles of an SVG drawing. Each that is drawn is a pixel: its centre with all transforms, in the order of
 * the file or along a path. Where a group has the id {@value SvgTaker#PIXELS}, only circles in it count. The ids of
 * other groups are parts. The zero point is that of the element with the id {@value SvgTaker#ZERO} (of a circle its
 * centre, and it is no pixel), else the upper left corner of the page.
 */
public final class SvgReader {
    private static final int DEEPEST = 200;

    /** Elements whose content is not drawn where it stands, or is no drawing. */
    private static final Set<String> PASSED_OVER = Set.of(
            "defs",
            "symbol",
            "clipPath",
            "mask",
            "pattern",
            "marker",
            "metadata",
            "style",
            "title",
            "desc",
            "script",
            "text",
            "foreignObject",
            "filter",
            "linearGradient",
            "radialGradient",
            "view",
            "image");

    private final SourceText source;
    private final Problems problems;
    private final SvgTaker taker;
    /** How many elements are open. */
    private int depth;
    /** How many of them are passed over: the outermost of these, and all in it. */
    private int passedOver;

    private SvgReader(SourceText source, Optional<TextNode> along, Problems problems) {
        this.source = source;
        this.problems = problems;
        this.taker = new SvgTaker(source, along, problems);
    }

    /**
     * Reads a drawing.
     *
     * @param source the file
     * @param along the id of the path along which the pixels are wired; in the order of the file without it
     * @param problems where errors go
     * @return the pixels; nothing if an error was added
     */
    public static Optional<SvgPixels> read(SourceText source, Optional<TextNode> along, Problems problems) {
        int errorsBefore = problems.errorCount();
        SvgReader reader = new SvgReader(source, along, problems);
        if (reader.hasOwnEntities() || !reader.readAll()) {
            return Optional.empty();
        }
        Optional<SvgPixels> pixels = reader.taker.pixels();
        return problems.errorCount() > errorsBefore ? Optional.empty() : pixels;
    }

    /** A document type that only names a public one is passed over; one that declares things of its own is not read. */
    private boolean hasOwnEntities() {
        int type = source.text().indexOf("<!DOCTYPE");
        int open = type < 0 ? -1 : source.text().indexOf('[', type);
        if (open < 0 || source.text().indexOf('>', type) < open) {
            return false;
        }
        problems.error(
                source.locationAt(type),
                "the drawing declares entities, which are not read",
                "save it as plain SVG, or take the document type out");
        return true;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing else is read");
        });
        return factory;
    }

    private boolean readAll() {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(source.text()));
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT && !open(xml)) {
                    return false;
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    close();
                }
            }
            return true;
        } catch (XMLStreamException fault) {
            problems.error(
                    new Location(
                            source.shownName(), Math.max(1, fault.getLocation().getLineNumber()), 0),
                    "the drawing is no sound XML here",
                    "open it in the program that drew it, and save it as SVG again");
            return false;
        }
    }

    private boolean open(XMLStreamReader xml) {
        if (++depth > DEEPEST) {
            problems.error(start(xml), "elements stand more than " + DEEPEST + " deep in each other");
            return false;
        }
        passedOver = passedOver > 0 || isPassedOver(xml) ? passedOver + 1 : 0;
        if (passedOver == 0) {
            taker.open(xml, start(xml));
        }
        return true;
    }

    private void close() {
        depth--;
        if (passedOver == 0) {
            taker.close();
        }
        passedOver = Math.max(0, passedOver - 1);
    }

    /** What programs note for themselves stands in a namespace of their own. */
    private boolean isPassedOver(XMLStreamReader xml) {
        return taker.isForeign(xml.getNamespaceURI()) || PASSED_OVER.contains(xml.getLocalName());
    }

    /** Where the tag opens that was read last. No attribute may hold the sign that opens one. */
    private Location start(XMLStreamReader xml) {
        int end = Math.min(xml.getLocation().getCharacterOffset(), source.text().length());
        int open = source.text().lastIndexOf('<', Math.max(0, end - 1));
        if (open >= 0 && source.text().startsWith(xml.getLocalName(), open + 1)) {
            return source.locationAt(open);
        }
        return new Location(source.shownName(), xml.getLocation().getLineNumber(), 0);
    }
}
