package org.duskloom.engine.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the bytes, reading ends with rows or with errors at places in the file, never with an exception. */
class CsvMutationTest {
    private static final String SOUND =
            "# arch\r\nprop,pixel,x,part\r\n\"däisy\",1, 2.5 ,\"rim;\"\"a\"\"\"\n\n,,,\n # no\nb,2,3,\r\"c\nd\",4,5,x\n";
    private static final String ALPHABET = "\"\"\"\",,,\n\r# \tab\u00a0é";

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void survivesMutations(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 5_000; round++) {
            check(JsonMutationTest.mutated(SOUND.getBytes(StandardCharsets.UTF_8), random));
        }
    }

    /** Texts of few different characters, in which quotes and line ends meet in every way. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void placesEveryCellWhereItsTextStands(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 5_000; round++) {
            StringBuilder text = new StringBuilder("p\n");
            for (int i = random.nextInt(30); i >= 0; i--) {
                text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
            check(text.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void check(byte[] bytes) {
        Problems problems = new Problems();
        SourceText.of(bytes, "m.csv", problems)
                .ifPresent(source -> CsvReader.read(source, problems)
                        .ifPresent(table -> table.forEachRow(row -> checkPlaces(source, table, row))));
        for (Problem problem : problems.inFileOrder()) {
            assertThat(problem.location().line()).isPositive();
            assertThat(problem.toString()).doesNotContain("\n", "CSVFormat", "null");
        }
    }

    /** The text of a cell without inner quotes stands, character for character, behind the place given for it. */
    private static void checkPlaces(SourceText source, CsvTable table, CsvRow row) {
        for (int column = 0; column < table.header().size(); column++) {
            if (table.header().get(column).text().isEmpty()) {
                continue;
            }
            String cell = row.text(column);
            String rest =
                    source.text().substring(new CsvScan(source.text(), table.style()).cellStart(row.start(), column));
            boolean quoted = rest.startsWith("\"");
            String expected = quoted ? '"' + cell.replace("\"", "\"\"") : cell;
            assertThat(rest).startsWith(expected);
            row.number(column, 0, 1);
        }
    }
}
