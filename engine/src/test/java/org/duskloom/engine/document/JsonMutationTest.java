package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the bytes, reading ends with a value or with an error at a place in the file, never with an exception. */
class JsonMutationTest {
    private static final String SOUND = """
            { // a timeline
              "title": "Längster Tag \\u263c", "rate": 40, "list": [1, -2.5e3, true, null, {}],
              "layers": [{"name": "ground", "cues": [{"at": "0s", "with": {"tail": 0.4, "on": []}}]}], /* end */
            }
            """;
    private static final byte[] SPICE = "{}[]\",:\\/*#0-9.eE+tfn\n\r\t \0\u0001".getBytes(StandardCharsets.UTF_8);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void survivesMutations(long seed) {
        Random random = new Random(seed);
        int refused = 0;
        for (int round = 0; round < 5_000; round++) {
            byte[] bytes = mutated(SOUND.getBytes(StandardCharsets.UTF_8), random);
            Problems problems = new Problems();
            Optional<Node> node = SourceText.of(bytes, "m.json", problems).flatMap(s -> JsonReader.read(s, problems));
            assertThat(node.isPresent() || problems.hasErrors()).isTrue();
            for (Problem problem : problems.inFileOrder()) {
                assertThat(problem.location().line()).isPositive();
                assertThat(problem.toString()).doesNotContain("\n", "Source:", "Jackson");
            }
            refused += node.isPresent() ? 0 : 1;
        }
        assertThat(refused).isBetween(1_000, 4_999);
    }

    static byte[] mutated(byte[] bytes, Random random) {
        byte[] mutated = bytes.clone();
        for (int times = random.nextInt(4); times >= 0; times--) {
            int at = random.nextInt(mutated.length);
            switch (random.nextInt(4)) {
                case 0 -> mutated[at] = (byte) random.nextInt(256);
                case 1 -> mutated[at] = SPICE[random.nextInt(SPICE.length)];
                case 2 -> mutated = Arrays.copyOf(mutated, at + 1);
                default ->
                    System.arraycopy(
                            bytes,
                            0,
                            mutated,
                            at,
                            Math.min(random.nextInt(20), Math.min(bytes.length, mutated.length - at)));
            }
        }
        return mutated;
    }
}
