package org.duskloom.engine.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.document.Inputs;
import org.duskloom.engine.map.Part;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimilarNamesTest {
    private final Problems problems = new Problems();

    private static Shape shape(String name, int line, Part... parts) {
        double[] zero = new double[1];
        Location at = new Location("garden.json", line, 5);
        return new Shape(name, new Positions(zero, zero, zero), List.of(parts), List.of(), at);
    }

    private static Part part(String name, Part... inside) {
        return new Part(name, new int[] {0}, List.of(inside));
    }

    private List<String> shapes(String... names) {
        List<Shape> shapes = new ArrayList<>();
        for (String name : names) {
            shapes.add(shape(name, shapes.size() + 1));
        }
        SimilarNames.warnOfShapes(shapes, problems);
        return Inputs.shown(problems);
    }

    @ParameterizedTest
    @CsvSource({
        "daisy, Daisy, true",
        "daisy, dAISY, true",
        "BLÜTE, blüte, true",
        "daisy, daisies, false",
        "daisy, 'daisy ', false",
        "daisy-1, daisy_1, false",
        "o, 0, false"
    })
    void onlyTheCaseMakesNamesSimilar(String first, String second, boolean told) {
        assertThat(shapes(first, second)).hasSize(told ? 1 : 0);
    }

    /** Told at the later one, beside the first of its kind, so that the line to look at is known. */
    @Test
    void everyLaterOneIsToldBesideTheFirst() {
        String why = " differ by upper and lower case only; give one of them another name";
        assertThat(shapes("lamp", "fern", "Lamp", "LAMP", "FERN"))
                .containsExactly(
                        "garden.json:3:5: warning: shape \"Lamp\" and shape \"lamp\"" + why,
                        "garden.json:4:5: warning: shape \"LAMP\" and shape \"lamp\"" + why,
                        "garden.json:5:5: warning: shape \"FERN\" and shape \"fern\"" + why);
        assertThat(problems.errorCount()).isZero();
    }

    /** Parts of one name may be in different parts: petals/tip and sepals/Tip are no slip. */
    @Test
    void partsAreComparedWithTheirNeighboursOnly() {
        SimilarNames.warnOfParts(
                shape("daisy", 2, part("petals", part("tip"), part("rim")), part("sepals", part("Tip"))), problems);
        assertThat(Inputs.shown(problems)).isEmpty();
        SimilarNames.warnOfParts(shape("daisy", 7, part("petals", part("a", part("tip"), part("TIP")))), problems);
        assertThat(Inputs.shown(problems))
                .singleElement()
                .asString()
                .startsWith("garden.json:7:5: warning: part \"tip\" and part \"TIP\" differ");
    }

    /** Shapes and parts are asked for in different places, and may be called alike. */
    @Test
    void shapesAndPartsDoNotMeet() {
        Shape daisy = shape("daisy", 1, part("Daisy"));
        SimilarNames.warnOfShapes(List.of(daisy), problems);
        SimilarNames.warnOfParts(daisy, problems);
        assertThat(Inputs.shown(problems)).isEmpty();
    }
}
