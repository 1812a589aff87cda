package org.duskloom.engine.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of a few dots, each with a code: what of them is lit. */
class OverviewTest {
    /** By picture, then by dot. */
    private static Overview overview(int[]... codes) throws Exception {
        PictureSize size = new PictureSize(codes[0].length, 1);
        Pictures pictures = new Pictures() {
            @Override
            public int count() {
                return codes.length;
            }

            @Override
            public String name(int picture) {
                return "";
            }

            @Override
            public PictureSize size(int picture) {
                return size;
            }

            @Override
            public void read(int picture, byte[] into) {
                for (int dot = 0; dot < into.length; dot++) {
                    into[dot] = (byte) codes[picture][dot];
                }
            }
        };
        return Overview.of(pictures, new Plane(size));
    }

    /** 24 codes above its darkest may be noise; codes have no sign. */
    @ParameterizedTest
    @CsvSource({"0, 24, 0", "0, 25, 1", "100, 124, 0", "100, 125, 1", "200, 255, 1", "120, 140, 0"})
    void aDotIsLitWhereItIsClearlyBrighterThanEver(int dark, int lit, int count) throws Exception {
        Overview overview = overview(new int[] {dark}, new int[] {lit}, new int[] {dark});
        assertThat(overview.count()).isEqualTo(3);
        assertThat(overview.lit(0)).isZero();
        assertThat(overview.lit(1)).isEqualTo(count);
        assertThat(overview.lit(2)).isZero();
    }

    /** A light is lit for half of the time or so; what is lit for more than 0.7 of it is a lamp. */
    @ParameterizedTest
    @CsvSource({"1, 1", "7, 1", "8, 0", "9, 0"})
    void whatIsLitForMostOfTheTimeIsALamp(int times, int count) throws Exception {
        int[][] codes = IntStream.range(0, 10)
                .mapToObj(picture -> new int[] {picture < times ? 200 : 0, 10})
                .toArray(int[][]::new);
        assertThat(overview(codes).lit(0)).isEqualTo(count);
        assertThat(overview(codes).lit(9)).isZero();
    }

    /** Of the pictures in which all is lit it must be lit in more than 0.6, of the dark ones in less than 0.3. */
    @ParameterizedTest
    @CsvSource({"10, 0, 1", "7, 0, 1", "6, 0, 0", "10, 2, 1", "10, 3, 0", "0, 0, 0"})
    void whatDoesNotFollowIsNotCounted(int litInAll, int litInNone, int count) throws Exception {
        int[][] codes = IntStream.range(0, 30)
                .mapToObj(picture -> new int[] {
                    picture < litInAll || picture >= 10 && picture < 10 + litInNone || picture == 20 ? 200 : 0
                })
                .toArray(int[][]::new);
        Overview overview = overview(codes);
        assertThat(overview.lit(20)).isEqualTo(1);
        overview.keepFollowing(
                IntStream.range(0, 10).toArray(), IntStream.range(10, 20).toArray());
        assertThat(overview.lit(20)).isEqualTo(count);
    }

    /** Every dot of a small picture is a sample, in the last row and column, too. */
    @Test
    void allOfASmallPictureIsLookedAt() throws Exception {
        int[] lit = IntStream.range(0, 97).map(dot -> 90).toArray();
        assertThat(overview(new int[97], lit).lit(1)).isEqualTo(97);
    }
}
