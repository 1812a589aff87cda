package org.duskloom.engine.display.svg;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.problem.TextFormatException;

/**
 * How an element is drawn, as far as that matters here: its {@code style}, which goes before attributes of the same
 * name (W3C SVG 1.1, section 6.4). Style sheets are not read.
 */
final class SvgStyle {
    private static final Set<String> TRANSFORMS = Set.of("transform", "translate", "rotate", "scale");
    private static final String ORIGIN = "transform-origin";
    /** The corner from which transforms start anyway. */
    private static final String CORNER = "0(px)?(\\s+0(px)?){0,2}";

    private final XMLStreamReader xml;
    private final Map<String, String> style = new HashMap<>();

    SvgStyle(XMLStreamReader xml) {
        this.xml = xml;
        String written = xml.getAttributeValue(null, "style");
        for (String declaration : written == null ? new String[0] : written.split(";")) {
            String[] parts = declaration.split(":", 2);
            if (parts.length == 2) {
                String value = parts[1].replace("!important", "").strip();
                style.put(parts[0].strip().toLowerCase(Locale.ROOT), value.toLowerCase(Locale.ROOT));
            }
        }
    }

    /** Whether neither it nor what is in it is drawn. */
    boolean isTakenOut() {
        return property("display").filter("none"::equals).isPresent();
    }

    /** Whether it is seen, if it says so; what is in it may say otherwise. */
    Optional<Boolean> isVisible() {
        return property("visibility").filter(word -> !word.equals("inherit")).map("visible"::equals);
    }

    /** Refuses what moves it in another way than the attribute {@code transform}. */
    void refuseTransforms() throws TextFormatException {
        boolean moved = TRANSFORMS.stream()
                .map(name -> style.getOrDefault(name, "none"))
                .anyMatch(value -> !value.equals("none"));
        if (moved || property(ORIGIN).filter(origin -> !origin.matches(CORNER)).isPresent()) {
            throw new TextFormatException(
                    "a transform in the style is not understood", "give it as the attribute transform");
        }
    }

    private Optional<String> property(String name) {
        return Optional.ofNullable(style.getOrDefault(name, xml.getAttributeValue(null, name)))
                .map(String::strip);
    }
}
