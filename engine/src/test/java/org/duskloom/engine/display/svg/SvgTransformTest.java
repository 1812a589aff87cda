package org.duskloom.engine.display.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.duskloom.engine.problem.TextFormatException;
import org.joml.Matrix3x2d;
import org.joml.Vector2d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** W3C SVG 1.1 (Second Edition), sections 7.4 to 7.6. */
class SvgTransformTest {
    /**
     * The worked example of nested transforms in 7.5 (RotateScale, Nested): translate(50,90), rotate(-45),
     * translate(130,160) make [.707 -.707 .707 .707 255.03 111.21], computed there with .707 (from memory).
     */
    @Test
    void theNestedExampleOfTheStandard() throws TextFormatException {
        Matrix3x2d all = SvgTransform.parse("translate(50,90) rotate(-45) translate(130,160)");
        assertThat(all.m00).isCloseTo(0.707, within(2e-4));
        assertThat(all.m01).isCloseTo(-0.707, within(2e-4));
        assertThat(all.m10).isCloseTo(0.707, within(2e-4));
        assertThat(all.m11).isCloseTo(0.707, within(2e-4));
        assertThat(all.m20).isCloseTo(255.03, within(0.05));
        assertThat(all.m21).isCloseTo(111.21, within(0.05));
    }

    /** Where (3, 4) goes, by the equations of 7.6. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''; 3; 4",
                "translate(10); 13; 4",
                "translate(10 -20); 13; -16",
                "scale(2); 6; 8",
                "scale(2,-1); 6; -4",
                "rotate(90); -4; 3",
                "rotate(180 1 1); -1; -2",
                "matrix(1 2 3 4 5 6); 20; 28",
                "skewX(45); 7; 4",
                "skewY(45); 3; 7",
                "' translate(1,1)  ,  scale(2) '; 7; 9",
                "scale(2)translate(1,1); 8; 10"
            })
    void placesMoveAsTheStandardSays(String transform, double x, double y) throws TextFormatException {
        Vector2d place = SvgTransform.parse(transform).transformPosition(new Vector2d(3, 4));
        assertThat(place.x).isCloseTo(x, within(1e-12));
        assertThat(place.y).isCloseTo(y, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "translate",
                "translate()",
                "translate(1,2,3)",
                "scale(1,2,3)",
                "rotate(1,2)",
                "matrix(1,2,3,4,5)",
                "skewX(1,2)",
                "perspective(3)",
                "translate(1) nonsense",
                "rotate(a)",
                "rotate(3",
                ") rotate(3)"
            })
    void whatIsNoTransformIsRefused(String transform) {
        assertThatThrownBy(() -> SvgTransform.parse(transform)).isInstanceOf(TextFormatException.class);
    }
}
