package org.duskloom.engine.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the bytes, reading ends with a map or with errors at places in the file, never with an exception. */
class MapMutationTest {
    private static final String SOUND = """
            prop,pixel,x,y,part,ownx,owny
            # arch
            a,1,0,0,rim;petals/1,0,0
            a,2,-1.5,2e2,rim;petals/2#1,1,1
            "b \"\"c\"\"",2,3,3,top#1,2,2
            "b \"\"c\"\"",1,4,4,top#2,3,3
            """;
    private static final String SPICE = "\"#/;,*?@ab12\n\r -.e9\0";

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void survivesMutations(long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < 5_000; round++) {
            Problems problems = new Problems();
            Optional<PixelMap> map = SourceText.of(mutated(random), "m.csv", problems)
                    .flatMap(source -> MapReader.read(source, problems));
            assertThat(map.isPresent() || problems.hasErrors()).isTrue();
            for (Problem problem : problems.inFileOrder()) {
                assertThat(problem.location().line()).isPositive();
                assertThat(problem.toString()).doesNotContain("\n", "\r", "\0");
            }
            sound += problems.hasErrors() ? 0 : 1;
        }
        assertThat(sound).isBetween(100, 4_900);
    }

    private static byte[] mutated(Random random) {
        byte[] bytes = SOUND.getBytes(StandardCharsets.UTF_8);
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            int at = random.nextInt(bytes.length);
            bytes[at] = random.nextInt(10) == 0
                    ? (byte) random.nextInt(256)
                    : (byte) SPICE.charAt(random.nextInt(SPICE.length()));
        }
        return bytes;
    }
}
