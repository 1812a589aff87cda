package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.duskloom.engine.document.CsvStyle;
import org.duskloom.engine.problem.Location;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pixel map is CSV as RFC 4180, section 2, says; the numbers of its rules stand beside the checks. */
class MapCsvTest {
    private static final String PLAIN = "prop,pixel,x,y\nbench,1,0,5\nbench,2,1.5,5\n";
    /** What names may hold of what CSV, or this reader of it, gives a meaning. */
    private static final String AWKWARD = "\"\"' \\=+-|:ä雛@.1";

    private static PixelMap map(String name) {
        Positions one = new Positions(new double[1], new double[1], new double[1]);
        Part part = new Part(name, new int[] {0}, List.of());
        Prop prop = new Prop(name, 0, 1, List.of(part), Location.ofFile("display.json"));
        return new PixelMap(List.of(prop), one, one);
    }

    /** Rules 1 and 2: lines end with CR LF; the last may have no end. */
    @Test
    void anyLineEndEndsARow() {
        Maps.assertSame(Maps.map(PLAIN.replace("\n", "\r\n")), Maps.map(PLAIN));
        Maps.assertSame(Maps.map(PLAIN.strip()), Maps.map(PLAIN));
    }

    /** Rule 5: any field may be in double quotes. */
    @Test
    void everyCellMayBeInQuotes() {
        String quoted = PLAIN.strip().replace(",", "\",\"").replace("\n", "\"\n\"");
        Maps.assertSame(Maps.map('"' + quoted + '"'), Maps.map(PLAIN));
    }

    /** Rules 6 and 7: what holds a quote is quoted, and the quote is doubled. */
    @Test
    void aQuoteInANameIsDoubled() throws IOException {
        StringBuilder csv = new StringBuilder();
        MapWriter.write(map("the \"long\" bed"), CsvStyle.COMMAS, csv);
        assertThat(csv).hasToString("""
                prop,pixel,x,y,part
                "the ""long"" bed",1,0,0,"the ""long"" bed"
                """);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void namesOfAnyCharactersAreReadBack(long seed) throws IOException {
        Random random = new Random(seed);
        int tried = 0;
        while (tried < 200) {
            StringBuilder name = new StringBuilder();
            for (int i = 1 + random.nextInt(5); i > 0; i--) {
                name.append(AWKWARD.charAt(random.nextInt(AWKWARD.length())));
            }
            if (Names.fault(name.toString()).isEmpty()) {
                StringBuilder csv = new StringBuilder();
                MapWriter.write(map(name.toString()), CsvStyle.COMMAS, csv);
                Maps.assertSame(Maps.map(csv.toString()), map(name.toString()));
                tried++;
            }
        }
    }

    /** Every pixel is told by the line on which its own row starts, however rows, notes and line ends lie. */
    @Test
    void everyPixelKnowsItsLine() {
        PixelMap map =
                Maps.map("# by Ada\r\nprop,pixel,x,y,#note\r\nb,2,1,0,\"two\r\nlines\"\r\n\r\na,1,2,0,\r\nb,1,0,0,\n");
        assertThat(map.props()).extracting(Prop::name).containsExactly("b", "a");
        assertThat(List.of(map.locationOf(0), map.locationOf(1), map.locationOf(2)))
                .extracting(Location::toString)
                .containsExactly("map.csv:7:1", "map.csv:3:1", "map.csv:6:1");
    }

    /** One that was made and not read has no lines but those of its props. */
    @Test
    void aPixelWithoutARowIsWhereItsPropIs() {
        assertThat(map("bench").locationOf(0)).isEqualTo(Location.ofFile("display.json"));
    }
}
