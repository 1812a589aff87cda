package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MapReaderTest {
    private static final String ARCH = """
            # the arch at the gate
            prop,pixel,x,y,z,part
            daisy-1,1,0,100,5,inner
            daisy-1,2,-10.5,90,5,inner;petals/1
            daisy-1,3,10.5,90,5,petals/2;top
            daisy-1,4,0,80,5,petals/2
            fence,1,500,0,0,
            fence,2,510,0,0,posts/left/foot
            """;

    private final Problems problems = new Problems();

    private Optional<PixelMap> read(String csv) {
        return MapReader.read(Inputs.source("map.csv", csv), problems);
    }

    @Test
    void readsPropsInWiringOrder() {
        PixelMap map = Maps.map(ARCH);
        assertThat(map.props()).extracting(Prop::name).containsExactly("daisy-1", "fence");
        assertThat(map.props()).extracting(Prop::firstPixel).containsExactly(0, 4);
        assertThat(map.props()).extracting(Prop::pixelCount).containsExactly(4, 2);
        assertThat(map.props())
                .extracting(prop -> prop.definedAt().toString())
                .containsExactly("map.csv:3:1", "map.csv:7:1");
        assertThat(map.stage().x(1)).isEqualTo(-10.5);
        assertThat(map.stage().y(3)).isEqualTo(80);
        assertThat(map.stage().z(0)).isEqualTo(5);
        assertThat(map.stage().x(5)).isEqualTo(510);
        assertThat(map.own()).isEqualTo(map.stage());
    }

    @Test
    void knowsTheLineOfEveryPixelInWhateverOrderTheRowsStand() {
        PixelMap map = Maps.map(
                "prop,pixel,x,y\r\n\r\nbow,2,10,0\r\n# a remark\r\nbow,1,0,0\r\n\"bow\",4,30,0\r\nbow,3,20,0\r\n");
        assertThat(List.of(0, 1, 2, 3))
                .extracting(pixel -> map.locationOf(pixel).toString())
                .containsExactly("map.csv:5:1", "map.csv:3:1", "map.csv:7:1", "map.csv:6:1");
    }

    @Test
    void readsPartsInsideParts() {
        PixelMap map = Maps.map(ARCH);
        Prop daisy = map.prop("daisy-1").orElseThrow();
        assertThat(daisy.partPaths()).containsExactly("inner", "petals", "petals/1", "petals/2", "top");
        assertThat(daisy.part("inner").orElseThrow().pixels()).containsExactly(0, 1);
        assertThat(daisy.part("petals").orElseThrow().pixels()).containsExactly(1, 2, 3);
        assertThat(daisy.part("petals/2").orElseThrow().pixels()).containsExactly(2, 3);
        assertThat(map.prop("fence").orElseThrow().partPaths())
                .containsExactly("posts", "posts/left", "posts/left/foot");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void takesTheRowsOfAPropInAnyOrder(long seed) {
        List<String> rows = new ArrayList<>(ARCH.lines().skip(2).toList());
        Collections.shuffle(rows.subList(1, rows.size()), new Random(seed));
        String shuffled = "prop,pixel,x,y,z,part\n" + String.join("\n", rows);
        Maps.assertSame(Maps.map(shuffled), Maps.map(ARCH));
    }

    @Test
    void wiresThePropThatAppearsFirstFirst() {
        PixelMap map = Maps.map("prop,pixel,x,y\nb,2,1,0\na,1,0,5\nb,1,0,0\n");
        assertThat(map.props()).extracting(Prop::name).containsExactly("b", "a");
        assertThat(map.stage().x(1)).isEqualTo(1);
        assertThat(map.stage().y(2)).isEqualTo(5);
    }

    @Test
    void ordersAPartByItsRanks() {
        PixelMap map = Maps.map("prop,pixel,x,y,part\na,1,0,0,top#3\na,2,1,0,top#1;in/x#1\na,3,2,0,top#2\n");
        assertThat(map.props().get(0).part("top").orElseThrow().pixels()).containsExactly(1, 2, 0);
        assertThat(map.props().get(0).part("in/x").orElseThrow().pixels()).containsExactly(1);
    }

    @Test
    void readsOwnAxes() {
        PixelMap map = Maps.map("prop,pixel,x,y,ownx,owny\na,1,10,20,1,2\n");
        assertThat(map.stage().x(0)).isEqualTo(10);
        assertThat(map.own().x(0)).isEqualTo(1);
        assertThat(map.own().y(0)).isEqualTo(2);
        assertThat(map.own().z(0)).isZero();
        assertThat(Maps.map("prop,pixel,x,y,ownx,owny,ownz\na,1,10,20,1,2,3\n")
                        .own()
                        .z(0))
                .isEqualTo(3);
    }

    @Test
    void readsASinglePixel() {
        PixelMap map = Maps.map("\ufeffprop,pixel,x,y\r\nlamp,1,0,0");
        assertThat(map.pixelCount()).isEqualTo(1);
    }

    @Test
    void readsAShapeInItsOwnAxes() {
        PixelMap shape = MapReader.readShape(
                        Inputs.source("fence.csv", "pixel,x,y,part\n2,10,0,end\n1,0,0,\n"), "fence", problems)
                .orElseThrow();
        assertThat(shape.props()).extracting(Prop::name).containsExactly("fence");
        assertThat(shape.own().x(1)).isEqualTo(10);
        assertThat(shape.props().get(0).part("end").orElseThrow().pixels()).containsExactly(1);
        assertThat(shape.props().get(0).definedAt()).hasToString("fence.csv:2:1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            a,1,5,5        ~ 3:3 ~ pixel 1 of "a" stands twice                ~ first at map.csv:2:3
            a,3,5,5        ~ 3:3 ~ "a" lacks pixel 2                          ~ numbered 1, 2, 3 without gaps
            a,9,5,5        ~ 3:3 ~ "a" lacks pixels 2 to 8                    ~ numbered 1, 2, 3 without gaps
            b,2,5,5        ~ 3:3 ~ "b" lacks pixel 1                          ~ numbered 1, 2, 3 without gaps
            a,0,5,5        ~ 3:3 ~ "pixel" is "0"                             ~ allowed: a whole number from 1
            a,2.5,5,5      ~ 3:3 ~ "pixel" is "2.5"                           ~ allowed: a whole number from 1
            a,two,5,5      ~ 3:3 ~ "pixel" is "two"                           ~ a number is needed
            a,2,"1,5",5    ~ 3:5 ~ "x" is "1,5"                               ~ the decimal sign is a dot: 1.5
            a,2,5,NaN      ~ 3:7 ~ "y" is "NaN"                               ~ a number is needed
            a,2,1e30,5     ~ 3:5 ~ "x" is "1e30"                              ~ from -1000000000 to 1000000000
            a,2,5,Infinity ~ 3:7 ~ "y" is "Infinity"                          ~ a number is needed
            a/b,1,5,5      ~ 3:1 ~ the prop name "a/b" holds /                ~ ``
            ,1,5,5         ~ 3:1 ~ the prop name "" is empty                  ~ ``
            " a",1,5,5     ~ 3:1 ~ the prop name " a" has blanks round it     ~ ``
            @a,1,5,5       ~ 3:1 ~ the prop name "@a" begins with @           ~ ``
            """)
    void teachesWhatIsWrong(String row, String place, String message, String hint) {
        assertThat(read("prop,pixel,x,y\na,1,0,0\n" + row + "\n")).isPresent();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:" + place + ": error: " + message)
                .contains(hint);
    }

    @Test
    void showsControlCharactersInNamesEscaped() {
        read("prop,pixel,x,y\na\u0000b,1,0,0\n");
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "map.csv:2:1: error: the prop name \"a\\u0000b\" holds the invisible character U+0000");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            rim//top  ~ a part name of "rim//top" is empty            ~ nested with /
            /rim      ~ a part name of "/rim" is empty                ~ nested with /
            a*        ~ a part name of "a*" holds *                   ~ separated by ;
            rim#      ~ "rim#" has no rank behind #                   ~ as in top#3
            rim#0     ~ "rim#0" has no rank behind #                  ~ as in top#3
            rim#x     ~ "rim#x" has no rank behind #                  ~ as in top#3
            rim#2     ~ the ranks of part "rim" are not 1 to 1        ~ wiring order
            t#1;t#2   ~ "t" stands twice with a rank                  ~ one rank
            """)
    void teachesParts(String cell, String message, String hint) {
        read("prop,pixel,x,y,part\na,1,0,0," + cell + "\n");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:2:9: error: " + message)
                .contains(hint);
    }

    @Test
    void wantsARankForEveryPixelOfAPart() {
        read("prop,pixel,x,y,part\na,1,0,0,\na,2,1,0,top#1\na,3,2,0,top\n");
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:3:9: error: the ranks of part \"top\" are not 1 to 2, one for each pixel");
    }

    @Test
    void passesOverEmptyPartEntries() {
        assertThat(Maps.map("prop,pixel,x,y,part\na,1,0,0, ;rim; ;\n")
                        .props()
                        .get(0)
                        .partPaths())
                .containsExactly("rim");
    }

    @Test
    void reportsAllProblemsOfAFileAndKeepsItsNames() {
        Optional<PixelMap> map = read("""
                prop,pixel,x,y
                a,1,0,0
                a,1,0,1
                a,2,zero,0
                b*,1,0,0
                b*,2,0,0
                c,2,7,7
                d,1,0
                """);
        assertThat(Inputs.shown(problems))
                .extracting(line -> line.substring(0, line.indexOf(';') < 0 ? line.length() : line.indexOf(';')))
                .containsExactly(
                        "map.csv:3:3: error: pixel 1 of \"a\" stands twice",
                        "map.csv:4:5: error: \"x\" is \"zero\"",
                        "map.csv:5:1: error: the prop name \"b*\" holds *, which is not allowed in names",
                        "map.csv:8:1: error: the row has 3 cells, the header in line 1 has 4");
        assertThat(map.orElseThrow().props()).extracting(Prop::name).containsExactly("a", "c");
    }

    @Test
    void saysNothingOfGapsWhereARowCouldNotBeRead() {
        read("prop,pixel,x,y\na,1,0,0\na,2.x,1,0\na,3,2,0\n");
        assertThat(problems.errorCount()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'prop,pixel,x,y', 1:15, 'the file has a header, but no pixels'",
        "'prop,pixel,x,y\n# none\n', 3:1, 'the file has a header, but no pixels'",
        "'a,1,0,0\n', 1:1, 'the first row holds numbers, so the header row is missing'",
        "'prop;pixel;x;y\n', 2:1, the file has a header, but no pixels",
        "'prop,pixel,x,y,ownx\na,1,0,0,0\n', 1:1, the columns ownx and owny belong together",
        "'prop,pixel,x,y,ownz\na,1,0,0,0\n', 1:1, the columns ownx and owny belong together"
    })
    void refusesAFileWithoutPixels(String csv, String place, String message) {
        assertThat(read(csv)).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("map.csv:" + place + ": error: " + message);
    }

    @Test
    void namesEveryMissingColumn() {
        read("pixel,y\n1,0\n");
        // A header without any number, so it is taken as one.
        assertThat(Inputs.shown(problems))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).contains("is missing"));
    }

    @Test
    void warnsOnceOfPixelsAtOnePlace() {
        PixelMap map =
                read("prop,pixel,x,y\na,1,0,0\na,2,1,0\nb,1,-0.0,0\nb,2,1,0\n").orElseThrow();
        assertThat(map.pixelCount()).isEqualTo(4);
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "map.csv:4:1: warning: 2 pixels hang at the very place of another: pixel 1 of \"b\" and pixel 1 of \"a\";"
                                + " leave it so if they are mounted back to back");
    }
}
