package org.duskloom.engine.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.survey.fit.Gardens;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasurementReaderTest {
    private static final PixelMap MAP = Gardens.daisies()
            .prop("arch lamp", "lamp", 0, 0)
            .prop("post", "post", 0, 0)
            .display()
            .map();

    private final Problems problems = new Problems();

    private Optional<Measurements> read(String csv) {
        return MeasurementReader.read(Inputs.source("measured.csv", csv), MAP, false, problems);
    }

    @Test
    void readsRowsInAnyOrder() {
        Measurements measured = read("""
                # with the tape, on a ladder
                prop,pixel,x,y,#note
                post,20,1.5,951,top
                daisy-2,3,1490,2140,
                post,1,0,-2,
                """).orElseThrow();
        assertThat(measured.dimensions()).isEqualTo(Dimensions.FLAT);
        assertThat(measured.pixelCount()).isEqualTo(3);
        assertThat(measured.props()).extracting(MeasuredProp::propIndex).containsExactly(1, 7);
        MeasuredProp post = measured.props().get(1);
        assertThat(post.count()).isEqualTo(2);
        assertThat(post.pixel(0)).isZero();
        assertThat(post.pixel(1)).isEqualTo(19);
        assertThat(post.places().y(0)).isEqualTo(-2);
        assertThat(post.places().x(1)).isEqualTo(1.5);
        assertThat(problems.errorCount()).isZero();
    }

    /** What the map command writes: its parts and own places say nothing of where pixels were measured. */
    @Test
    void takesAMapAsTheTemplate() {
        Measurements measured = read("""
                prop,pixel,x,y,z,part,ownx,owny,ownz
                daisy-2,1,1400,2090,0,,0,90,0
                daisy-2,41,1430,1710,5,no part,not read,,0
                """).orElseThrow();
        assertThat(measured.pixelCount()).isEqualTo(2);
        assertThat(measured.props().get(0).places().z(1)).isEqualTo(5);
        assertThat(problems.errorCount()).isZero();
    }

    @Test
    void readsDepth() {
        Measurements measured = read("z,prop,pixel,x,y\n-3.5,arch lamp,1,1,2\n").orElseThrow();
        assertThat(measured.dimensions()).isEqualTo(Dimensions.DEEP);
        assertThat(measured.props().get(0).places().z(0)).isEqualTo(-3.5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            daisy-7,1,5,5      ~ 3:1 ~ there is no prop "daisy-7"               ~ did you mean "daisy-
            dasy-2,1,5,5       ~ 3:1 ~ there is no prop "dasy-2"                ~ did you mean "daisy-2"?
            Post,1,5,5         ~ 3:1 ~ there is no prop "Post"                  ~ did you mean "post"?
            daisy-1/rim,1,5,5  ~ 3:1 ~ there is no prop "daisy-1/rim"           ~ allowed: daisy-1, daisy-2
            post,21,5,5        ~ 3:6 ~ "pixel" is "21"                          ~ allowed: a whole number from 1 to 20
            post,0,5,5         ~ 3:6 ~ "pixel" is "0"                           ~ allowed: a whole number from 1 to 20
            arch lamp,2,5,5    ~ 3:11 ~ "pixel" is "2"                          ~ allowed:
            post,1.5,5,5       ~ 3:6 ~ "pixel" is "1.5"                         ~ allowed: a whole number
            post,1,0,0         ~ 3:6 ~ pixel 1 of "post" stands twice           ~ first at measured.csv:2:6
            post,2,NaN,5       ~ 3:8 ~ "x" is "NaN"                             ~ a number is needed
            post,2,5,Infinity  ~ 3:10 ~ "y" is "Infinity"                       ~ a number is needed
            post,2,"1,5",5     ~ 3:8 ~ "x" is "1,5"                             ~ the decimal sign is a dot: 1.5
            post,2,12 cm,5     ~ 3:8 ~ "x" is "12 cm"                           ~ write the number without its unit
            post,2,1e30,5      ~ 3:8 ~ "x" is "1e30"                            ~ from -1000000000 to 1000000000
            post,2,,5          ~ 3:8 ~ "x" is ""                                ~ the cell is empty
            post,2,5           ~ 3:1 ~ the row has 3 cells, the header in line 1 has 4    ~ an empty cell needs its comma too
            """)
    void teachesWhatIsWrong(String row, String place, String message, String hint) {
        assertThat(read("prop,pixel,x,y\npost,1,0,0\n" + row + "\n")).isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("measured.csv:" + place + ": error: " + message)
                .contains(hint);
    }

    @Test
    void tellsEverythingAtOnce() {
        assertThat(read("prop,pixel,x,y\npst,1,a,0\npst,b,0,0\npost,99,0,c\n")).isEmpty();
        assertThat(Inputs.shown(problems)).hasSize(5);
        assertThat(Inputs.shown(problems).get(0)).contains("2:1").contains("no prop \"pst\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            `prop,pixel,x,y`           ~ the file has a header, but no measurements
            `prop,pixel,x`             ~ "y"
            `prop,pixel,x,y,label`     ~ "label"
            `prop;pixel;x;y`           ~ the file has a header, but no measurements
            """)
    void refusesFilesOfAnotherForm(String header, String message) {
        assertThat(read(header)).isEmpty();
        assertThat(Inputs.shown(problems))
                .isNotEmpty()
                .anySatisfy(line -> assertThat(line).contains(message));
    }

    @Test
    void refusesDepthOfAPhoto() {
        assertThat(MeasurementReader.read(
                        Inputs.source("photo.csv", "prop,pixel,x,y,z\npost,1,0,0,0\npost,9,1,0,0\npost,20,2,2,0\n"),
                        MAP,
                        true,
                        problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .containsExactly(
                        "photo.csv:1:16: error: measurements from a photo have a column \"z\"; a photo shows no"
                                + " depth: leave the column out");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"post,1,0,0\n", "post,1,0,0\npost,20,5,900\n", "post,1,7,7\npost,2,7,7\npost,3,7,7\npost,4,7,7\n"
            })
    void refusesAPhotoThatLiesNowhere(String rows) {
        assertThat(MeasurementReader.read(Inputs.source("photo.csv", "prop,pixel,x,y\n" + rows), MAP, true, problems))
                .isEmpty();
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .contains("there are not enough measurements to lay a photo on the stage")
                .contains("3 pixels at different places at least");
    }

    @Test
    void readsAsManyRowsAsThereArePixels() {
        StringBuilder csv = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 41; pixel >= 1; pixel--) {
            for (int prop = 6; prop >= 1; prop--) {
                csv.append("daisy-").append(prop).append(',').append(pixel).append(",1,2\n");
            }
        }
        assertThat(read(csv.toString()).orElseThrow().pixelCount()).isEqualTo(246);
    }
}
