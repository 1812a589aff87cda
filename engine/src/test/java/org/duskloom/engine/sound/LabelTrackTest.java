package org.duskloom.engine.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.duskloom.engine.document.SourceText;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.time.ExactTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Label tracks as editors of sounds write them: start, tab, end, tab, text (common practice, no standard). */
class LabelTrackTest {
    private static Optional<LabelTrack> read(String text, Problems problems) {
        return SourceText.of(text.getBytes(StandardCharsets.UTF_8), "song.txt", problems)
                .flatMap(source -> LabelTrack.read(source, problems));
    }

    private static LabelTrack read(String text) {
        Problems problems = new Problems();
        LabelTrack track = read(text, problems).orElseThrow(() -> new AssertionError(problems.inFileOrder()));
        assertThat(problems.inFileOrder()).isEmpty();
        return track;
    }

    private static List<String> refused(String text) {
        Problems problems = new Problems();
        assertThat(read(text, problems)).isEmpty();
        return problems.inFileOrder().stream().map(Problem::toString).toList();
    }

    @Test
    void instantsAndStretchesAreRead() {
        LabelTrack track = read("0.350000\t0.350000\tbar\n0.818750\t0.818750\tbeat\n42.5\t91\tchorus\n");

        assertThat(track.labels()).extracting(TrackLabel::text).containsExactly("bar", "beat", "chorus");
        assertThat(track.labels()).extracting(TrackLabel::isInstant).containsExactly(true, true, false);
        assertThat(track.labels().get(1).start()).isEqualTo(new ExactTime(818_750, 1_000_000));
        assertThat(track.labels().get(2).end()).isEqualTo(ExactTime.ofSeconds(91));
        assertThat(track.labels().get(2).location()).hasToString("song.txt:3:1");
    }

    @Test
    void decimalsAreExactToTheNanosecond() {
        assertThat(read("0.1234567894\t1\tx\n").labels().get(0).start())
                .isEqualTo(new ExactTime(123_456_789, 1_000_000_000));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5\t1.5\tx", "1,5\t1,5\tx\r\n", "\ufeff1.5\t1.5\tx\r", " 1.5 \t1.5\t x \n\n"})
    void whatEditorsAndCountriesDoDifferentlyIsRead(String text) {
        assertThat(read(text).labels())
                .extracting(TrackLabel::text, TrackLabel::start)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("x", new ExactTime(3, 2)));
    }

    @Test
    void furtherDataAndBlankLinesArePassedOver() {
        assertThat(read("1\t1\ta\n\\\t200.0\t400.0\n\n2\t2\tb\n").labels())
                .extracting(TrackLabel::text)
                .containsExactly("a", "b");
    }

    @Test
    void textsMayBeMissingOrHoldTabs() {
        assertThat(read("1\t1\n2\t2\t\n3\t3\ta\tb\n").labels())
                .extracting(TrackLabel::text)
                .containsExactly("", "", "a\tb");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.5 1.5 beat|song.txt:1:1: error: this is no label: there is no tab in \"1.5 1.5 beat\"; write start, tab,"
                        + " end, tab, text: seconds with a dot, such as 12.5",
                "-1~2~x|song.txt:1:1: error: the start of the label is \"-1\"; a label cannot be before the start of the"
                        + " sound",
                "1~soon~x|song.txt:1:3: error: the end of the label is \"soon\"; write start, tab, end, tab, text: seconds"
                        + " with a dot, such as 12.5",
                "2~1~x|song.txt:1:3: error: the label ends at 1s, before its start at 2s",
                "1e3~1e3~x|song.txt:1:1: error: the start of the label is \"1e3\"; write start, tab, end, tab, text:"
                        + " seconds with a dot, such as 12.5",
            })
    void linesThatAreNoLabelsAreToldWithTheirPlace(String line, String problem) {
        assertThat(refused("\\ passed over\n" + line.replace('~', '\t')))
                .first()
                .isEqualTo(problem.replaceFirst(":1:", ":2:"));
    }

    @Test
    void unsortedLabelsAreTold() {
        assertThat(refused("2\t2\tbeat\n1\t1\tbeat\n"))
                .containsExactly("song.txt:2:1: error: the label at 1s stands after the one at 2s;"
                        + " sort the lines by their start");
    }

    @Test
    void everyWrongLineIsToldOfInOneRun() {
        assertThat(refused("x\n1\ty\tz\n2\t2\tfine\n3\t2\tback\n")).hasSize(3);
    }

    @Test
    void hostileTextsEndInErrorsOrLabels() {
        Random random = new Random(12);
        String letters = "0123456789.,-+\t\t\t\n\r\\ e\u0000\u202ebeat";
        for (int round = 0; round < 2000; round++) {
            StringBuilder text = new StringBuilder("1\t1\tbeat\n");
            for (int i = 0; i < random.nextInt(60); i++) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Problems problems = new Problems();
            Optional<LabelTrack> track = read(text.toString(), problems);
            assertThat(track.isPresent()).isNotEqualTo(problems.hasErrors());
        }
        assertThat(refused("9".repeat(400) + "\t1\tx")).hasSize(1);
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        LabelTrack track = new LabelTrack(List.of(
                TrackLabel.of(new ExactTime(15, 32), "beat"),
                TrackLabel.of(ExactTime.ofSeconds(2), new ExactTime(1, 3).plus(ExactTime.ofSeconds(2)), "verse\n2")));

        assertThat(track.text()).isEqualTo("0.468750\t0.468750\tbeat\n2.000000\t2.333333\tverse 2\n");
        assertThat(read(track.text()).text()).isEqualTo(track.text());
    }

    @Test
    void aLabelDoesNotEndBeforeItStarts() {
        assertThatThrownBy(() -> TrackLabel.of(ExactTime.ofSeconds(2), ExactTime.ofSeconds(1), "x"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
