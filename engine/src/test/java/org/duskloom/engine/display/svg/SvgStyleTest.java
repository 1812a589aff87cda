package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.duskloom.engine.problem.TextFormatException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** W3C SVG 1.1 (Second Edition): 6.4 on style and attributes, 11.5 on what is drawn at all. */
class SvgStyleTest {
    private static SvgStyle style(String attributes) throws XMLStreamException {
        XMLStreamReader xml =
                XMLInputFactory.newFactory().createXMLStreamReader(new StringReader("<circle " + attributes + "/>"));
        xml.nextTag();
        return new SvgStyle(xml);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            r="4"                                         ~ false
            display="none"                                ~ true
            display=" none "                              ~ true
            display="inline"                              ~ false
            style="display:none"                          ~ true
            style=" fill : red ; Display : NONE ; "       ~ true
            style="display:none !important"               ~ true
            style="display:inline" display="none"         ~ false
            style="display:none" display="inline"         ~ true
            style="display:none;display:inline"           ~ false
            style="displays:none"                         ~ false
            style="display"                               ~ false
            style=";;:;display:none"                      ~ true
            """)
    void theStyleGoesBeforeTheAttribute(String attributes, boolean takenOut) throws XMLStreamException {
        assertThat(style(attributes).isTakenOut()).isEqualTo(takenOut);
    }

    /** 11.5: "collapse" hides outside of tables; "inherit" leaves it to what is around. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            r="4"                                         ~ Optional.empty
            visibility="inherit"                          ~ Optional.empty
            visibility="visible"                          ~ Optional[true]
            visibility="hidden"                           ~ Optional[false]
            visibility="collapse"                         ~ Optional[false]
            style="visibility:hidden"                     ~ Optional[false]
            style="visibility:visible" visibility="hidden" ~ Optional[true]
            style="visibility:inherit" visibility="hidden" ~ Optional.empty
            """)
    void saysWhetherItIsSeenOrLeavesItOpen(String attributes, String seen) throws XMLStreamException {
        assertThat(style(attributes).isVisible()).hasToString(seen);
    }

    /** A pixel that a style moves would come to be at a wrong place without a word. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "style='transform:rotate(3deg)'",
                "style='fill:red;translate: 4px'",
                "style='ROTATE:90deg'",
                "style='scale:2 !important'",
                "style='transform-origin:center'",
                "style='transform-origin:0 5px'",
                "transform-origin='10 10'"
            })
    void refusesWhatMovesItInTheStyle(String attributes) throws XMLStreamException {
        SvgStyle style = style(attributes);
        assertThatThrownBy(style::refuseTransforms)
                .isInstanceOfSatisfying(
                        TextFormatException.class,
                        fault -> assertThat(fault.hint()).isEqualTo("give it as the attribute transform"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "transform='rotate(3)'",
                "style='transform:none;translate:none'",
                "style='transform-origin:0'",
                "style='transform-origin:0 0'",
                "style='transform-origin:0px 0px 0px'",
                "transform-origin='0 0'",
                "style='text-transform:uppercase;stroke-width:3'"
            })
    void takesWhatMovesNothing(String attributes) throws XMLStreamException {
        assertThatCode(style(attributes)::refuseTransforms).doesNotThrowAnyException();
    }
}
