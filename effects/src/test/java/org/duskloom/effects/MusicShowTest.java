package org.duskloom.effects;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.plan.PlanCompiler;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.render.FramePainter;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Effects in time with music: sixteen beats at 120 a minute, then at 150 (a beat lasts 60 / beats per minute seconds,
 * Standard MIDI Files 1.0, from memory), so beat 16 is at 8 s, beat 17 at 8.4 s, beat 20 at 9.6 s. Ten pixels in a row.
 */
class MusicShowTest {
    private static final int RATE = 40;
    private static final int PIXELS = 10;

    @TempDir
    Path folder;

    @BeforeEach
    void writeMap() throws IOException {
        StringBuilder map = new StringBuilder("prop,pixel,x,y\n");
        for (int pixel = 1; pixel <= PIXELS; pixel++) {
            map.append("row,").append(pixel).append(',').append(pixel).append(",0\n");
        }
        Files.writeString(folder.resolve("map.csv"), map);
        writeTrack(0);
        writeSound(second -> second % 1 < 0.5 ? 0.5 * StrictMath.sin(2 * StrictMath.PI * 60 * second) : 0);
    }

    /** The beats, of which the last but one is that much later. */
    private void writeTrack(double late) throws IOException {
        StringBuilder track = new StringBuilder();
        for (int beat = 0; beat <= 32; beat++) {
            double second = beat < 16 ? 0.5 * beat : 8 + 0.4 * (beat - 16) + (beat == 31 ? late : 0);
            line(track, second, beat % 4 == 0 ? "bar" : "beat");
            if (beat == 9 || beat == 20) {
                line(track, second, "hit");
            }
        }
        Files.writeString(folder.resolve("song.txt"), track);
    }

    private static void line(StringBuilder track, double second, String text) {
        track.append(String.format(Locale.ROOT, "%.6f\t%.6f\t%s\n", second, second, text));
    }

    /** Fourteen seconds of one channel at 8 kHz, 16 bits: IBM and Microsoft's RIFF WAVE of 1991. */
    private void writeSound(DoubleUnaryOperator wave) throws IOException {
        int count = 14 * 8000;
        ByteBuffer wav = ByteBuffer.allocate(44 + 2 * count).order(ByteOrder.LITTLE_ENDIAN);
        wav.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + 2 * count);
        wav.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        wav.putShort((short) 1).putShort((short) 1).putInt(8000).putInt(16000);
        wav.putShort((short) 2).putShort((short) 16);
        wav.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * count);
        for (int i = 0; i < count; i++) {
            wav.putShort((short) (32767 * wave.applyAsDouble(i / 8000.0)));
        }
        Files.write(folder.resolve("song.wav"), wav.array());
    }

    private static String cue(String fields) {
        return "{\"on\": \"row\", " + fields.replace('\'', '"') + "}";
    }

    private static final String MUSIC =
            "\"sound\": {\"file\": \"song.wav\"}, \"beats\": \"song.txt\", \"markers\": \"song.txt\",";

    private Optional<Plan> plan(String music, int rate, Problems problems, String... cues) {
        try {
            Path file = Files.writeString(
                    folder.resolve("show.json"), """
                    {"duskloom": "timeline/1", "map": "map.csv", "rate": %d, "length": "14s", %s
                     "layers": [{"cues": [
                    %s]}]}""".formatted(rate, music, String.join(",\n", cues)));
            Show show = ShowReader.read(file, problems).orElseThrow(() -> new AssertionError(problems.inFileOrder()));
            return PlanCompiler.compile(show, EffectRegistry.installed(), problems);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Plan plan(int rate, String... cues) {
        Problems problems = new Problems();
        return plan(MUSIC, rate, problems, cues).orElseThrow(() -> new AssertionError(problems.inFileOrder()));
    }

    private List<String> problems(String music, String cue) {
        Problems problems = new Problems();
        plan(music, RATE, problems, cue);
        return problems.inFileOrder().stream()
                .map(Problem::toString)
                .map(text -> text.replace(folder + "/", ""))
                .toList();
    }

    private static byte[] frame(Plan plan, long frame) {
        byte[] codes = new byte[3 * PIXELS];
        new FramePainter(plan).render(frame, codes, 0);
        return codes;
    }

    /** How many pixels of the row are lit. */
    private static long lit(Plan plan, double second) {
        byte[] codes = frame(plan, Math.round(second * RATE));
        return IntStream.range(0, PIXELS).filter(i -> codes[3 * i] != 0).count();
    }

    /** A pass is two beats: at 0.5, 8.4 and 9.2 s half of one has gone by, at 8, 8.8 and 9.6 s a whole one. */
    @Test
    void aPassOfTwoBeatsTakesTwoBeatsWhereverTheyLie() {
        Plan plan = plan(RATE, cue("'effect': 'chase', 'with': {'every': '2b', 'tail': 0.3}"));
        for (double second : new double[] {1, 4, 8, 8.8, 9.6, 13.6}) {
            assertThat(frame(plan, Math.round(second * RATE)))
                    .as("%s s", second)
                    .isEqualTo(frame(plan, 0));
        }
        for (double second : new double[] {7.5, 8.4, 9.2}) {
            assertThat(frame(plan, Math.round(second * RATE)))
                    .as("%s s", second)
                    .isEqualTo(frame(plan, 20));
        }
        assertThat(frame(plan, 20)).isNotEqualTo(frame(plan, 0));
    }

    /** From off the beat: 0.25 s is beat 1/2, and beat 16 1/2 is at 8.2 s. */
    @Test
    void passesCountFromTheStartOfTheCue() {
        Plan plan = plan(RATE, cue("'at': '250ms', 'effect': 'chase', 'with': {'every': '1 bar', 'tail': 0.3}"));
        assertThat(frame(plan, 328)).isEqualTo(frame(plan, 10)).isNotEqualTo(frame(plan, 329));
    }

    /** A share of 1, 0.5 and 0.25 is left at beats 2, 2 1/2 and 16 3/4; pixels lie at 0.05, 0.15 and so on. */
    @ParameterizedTest
    @CsvSource({"1, 10", "1.25, 5", "8.3, 2", "8.4, 10", "8.8, 10"})
    void aNumberMayFollowTheBeat(double second, long lit) {
        Plan plan = plan(
                RATE,
                cue(
                        "'effect': 'gauge', 'with': {'from': 'order', 'soft': 0, 'amount': {'follow': 'beat', 'from': 0, 'to': 1}}"));
        assertThat(lit(plan, second)).isEqualTo(lit);
    }

    /** The code of a level: 0.75 gives 225, 0.5 gives 188, 0.25 gives 137 (IEC 61966-2-1). */
    @ParameterizedTest
    @CsvSource({
        "beat, 8, 255",
        "beat, 8.1, 225",
        "beat, 8.2, 188",
        "beat, 8.4, 255",
        "bar, 9.6, 255",
        "bar, 9.2, 137",
        "bar, 8.8, 188",
        "hit, 4, 0",
        "hit, 4.5, 255",
        "hit, 5.5, 188",
        "hit, 6.5, 0",
        "hit, 9.6, 0",
        "hit*, 9.6, 255",
        "h*, 10.6, 188"
    })
    void swellsStartOnBeatsBarsAndMarkers(String on, double second, int code) {
        Plan plan = plan(
                RATE,
                cue("'effect': 'swell', 'with': {'on': '" + on + "', 'attack': 0, 'decay': 1, 'easing': 'linear'}"));
        assertThat(frame(plan, Math.round(second * RATE))[0] & 0xff).isEqualTo(code);
    }

    /** The marker at beat 20, 9.6 s: two beats take 0.8 s from there. */
    @Test
    void aSwellTakesAsManyBeatsAsItIsTold() {
        Plan plan = plan(
                RATE,
                cue(
                        "'effect': 'swell', 'with': {'on': 'hit*', 'attack': 0, 'decay': 1, 'easing': 'linear', 'every': '2b'}"));
        assertThat(frame(plan, 400)[0] & 0xff).isEqualTo(188);
        assertThat(frame(plan, 416)[0]).isZero();
    }

    /** The first swell that starts with the cue has the first colour, wherever the cue is. */
    @Test
    void coloursTakeTurnsFromTheStartOfTheCue() {
        String swell =
                "'effect': 'swell', 'with': {'on': 'beat', 'attack': 0, 'decay': 1, 'along': 'turn', 'palette': ['red',"
                        + " 'blue']}";
        Plan plan = plan(RATE, cue("'at': '5b', 'for': '4b', " + swell), cue("'at': '16b', 'for': '4b', " + swell));
        for (int frame : new int[] {100, 320}) {
            assertThat(frame(plan, frame)[0]).isEqualTo((byte) 255);
            assertThat(frame(plan, frame)[2]).isZero();
        }
        assertThat(frame(plan, 120)[2]).isEqualTo((byte) 255);
    }

    /** A tone of 60 Hz in the first half of every second: the low band is loud there, and falls by e in 50 ms after. */
    @Test
    void aNumberFollowsTheLowBandOfTheSound() {
        Plan plan = plan(
                RATE,
                cue(
                        "'effect': 'gauge', 'with': {'from': 'order', 'soft': 0, 'amount': {'follow': 'low', 'from': 0, 'to': 1,"
                                + " 'attack': '20ms', 'release': '50ms'}}"));
        assertThat(lit(plan, 3.25)).isGreaterThanOrEqualTo(9);
        assertThat(lit(plan, 3.975)).isLessThanOrEqualTo(1);
        assertThat(lit(plan, 3.6)).isBetween(1L, 8L);
        Plan high =
                plan(RATE, cue("'effect': 'wash', 'opacity': {'follow': 'high', 'from': 1, 'to': 0, 'release': '0s'}"));
        assertThat(lit(high, 3.975)).isEqualTo(PIXELS);
    }

    private static final String[] EVERYTHING = {
        cue(
                "'at': '1b', 'until': '27b', 'effect': 'chase', 'with': {'every': '2b', 'tail': {'follow': 'low', 'from': 0.1,"
                        + " 'to': 1}}"),
        cue(
                "'at': '5b', 'for': '2 bars', 'effect': 'sweep', 'blend': 'screen', 'with': {'every': '1 bar', 'soft': 0.3},"
                        + " 'opacity': {'follow': 'beat', 'from': 0.2, 'to': 1}, 'repeat': {'count': 3, 'every': '1.5b'}"),
        cue(
                "'at': '@hit', 'effect': 'twinkle', 'blend': 'lighten', 'fade': {'in': '2b', 'out': '1b'}, 'with': {'every': '3b',"
                        + " 'density': {'follow': 'all', 'from': 0, 'to': 1}}"),
        cue(
                "'at': '10b', 'for': '16b', 'effect': 'shower', 'blend': 'lighten', 'with': {'every': '1b', 'density': {'keys':"
                        + " [['0b', 1], ['8b', 9]]}}"),
        cue(
                "'at': '3b', 'effect': 'swell', 'blend': 'plus-lighter', 'with': {'on': 'hit*', 'every': '1 bar', 'palette':"
                        + " 'navy'}")
    };

    @ParameterizedTest
    @CsvSource({"20, 40", "30, 60"})
    void twoRatesAgreeOnCommonFrames(int slow, int fast) {
        Plan slowPlan = plan(slow, EVERYTHING);
        Plan fastPlan = plan(fast, EVERYTHING);
        FramePainter slowPainter = new FramePainter(slowPlan);
        FramePainter fastPainter = new FramePainter(fastPlan);
        byte[] wanted = new byte[3 * PIXELS];
        byte[] found = new byte[3 * PIXELS];
        for (long frame = 0; frame < slowPlan.frameCount(); frame++) {
            slowPainter.render(frame, wanted, 0);
            fastPainter.render(2 * frame, found, 0);
            assertThat(found).as("frame %s", frame).isEqualTo(wanted);
        }
    }

    /** A painter that has gone through the show paints what one does that starts there. */
    @Test
    void framesHangOnNothingButTheirNumber() {
        Plan plan = plan(RATE, EVERYTHING);
        FramePainter through = new FramePainter(plan);
        byte[] found = new byte[3 * PIXELS];
        for (long frame = plan.frameCount() - 1; frame >= 0; frame--) {
            through.render(frame, found, 0);
            if (frame % 17 == 0) {
                assertThat(found).as("frame %s", frame).isEqualTo(frame(plan, frame));
            }
        }
    }

    private List<Fingerprint> fingerprints() {
        return plan(
                        RATE,
                        cue("'at': '0b', 'for': '4b', 'effect': 'wash'"),
                        cue("'at': '4b', 'for': '4b', 'effect': 'chase', 'with': {'every': '2b'}"),
                        cue("'at': '28b', 'for': '2b', 'effect': 'chase', 'with': {'every': '2b'}"),
                        cue(
                                "'at': '0b', 'for': '4b', 'effect': 'wash', 'opacity': {'follow': 'low', 'from': 0, 'to': 1}"))
                .layers()
                .get(0)
                .cues()
                .stream()
                .map(cue -> cue.fingerprint())
                .toList();
    }

    @Test
    void onlyWhatHangsOnTheMusicChangesWithIt() throws IOException {
        List<Fingerprint> before = fingerprints();
        writeSound(second -> 0.5 * StrictMath.sin(2 * StrictMath.PI * 60 * second));
        List<Fingerprint> louder = fingerprints();
        assertThat(changed(before, louder)).containsExactly(3);
        writeTrack(0.01);
        assertThat(changed(louder, fingerprints())).containsExactly(2);
    }

    private static List<Integer> changed(List<Fingerprint> before, List<Fingerprint> after) {
        List<Integer> changed = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                changed.add(i);
            }
        }
        return changed;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'follow': 'low', 'from': 0, 'to': 1|\"follow\" of \"amount\" of gauge is \"low\", but the timeline has no"
                        + " \"sound\"; name it: \"sound\": {\"file\": \"song.wav\"}",
                "'follow': 'beat', 'from': 0, 'to': 1|\"follow\" of \"amount\" of gauge is \"beat\", but the timeline has no"
                        + " \"beats\"; say where they lie: \"beats\": {\"tempo\": 120}, or the name of a label track",
                "'follow': 'bass', 'from': 0, 'to': 1|\"follow\" of \"amount\" of gauge is \"bass\"; allowed: all, low, mid,"
                        + " high, beat",
            })
    void whatCannotBeFollowedIsToldWithItsPlace(String amount, String problem) {
        assertThat(problems("", cue("'effect': 'gauge', 'with': {'amount': {" + amount + "}}")))
                .containsExactly("show.json:3:64: error: " + problem);
    }

    @Test
    void whatFollowsIsWithinTheRangeOfItsSetting() {
        assertThat(problems(
                        MUSIC,
                        cue("'effect': 'gauge', 'with': {'amount': {'follow': 'beat', 'from': -1, 'attack': '1s'}}")))
                .containsExactly(
                        "show.json:3:53: error: \"amount\" of gauge lacks the field \"to\"",
                        "show.json:3:80: error: \"from\" of \"amount\" of gauge is -1; allowed: a number from 0 to 1",
                        "show.json:3:94: error: \"attack\" of \"amount\" of gauge stands beside \"follow\": \"beat\", which has no"
                                + " level to smooth; leave it out");
    }

    @Test
    void settingsThatDoNotMoveFollowNothing() {
        assertThat(problems(
                        MUSIC, cue("'effect': 'chase', 'with': {'passes': {'follow': 'beat', 'from': 0, 'to': 1}}")))
                .singleElement()
                .asString()
                .contains("\"passes\" of chase cannot move");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'on': 'hot'|is \"hot\", and there is no marker of that name; did you mean \"hit\"?",
                "'on': 'beat', 'passes': 3|swell: on says when swells start, and passes does so too; leave one of them out;"
                        + " every may stand beside on and says how long a swell takes",
            })
    void swellsOnNothingAreTold(String with, String problem) {
        assertThat(problems(MUSIC, cue("'effect': 'swell', 'with': {" + with + "}")))
                .singleElement()
                .asString()
                .contains(problem);
    }

    @Test
    void beatsMustBeKnown() {
        assertThat(problems("", cue("'effect': 'swell', 'with': {'on': 'beat'}")))
                .singleElement()
                .asString()
                .contains(
                        "\"on\" of swell is \"beat\", but it is not known where the beats lie; say it in the timeline");
    }

    /** Whoever has no label track yet names the song. */
    @Test
    void aSoundIsNoLabelTrack() {
        assertThat(problems("\"beats\": \"song.wav\", \"markers\": \"song.mp3\",", cue("'effect': 'wash'")))
                .containsExactly(
                        "show.json:1:84: error: \"song.wav\" is a sound, and a label track is needed; this makes one of it:"
                                + " duskloom listen song.wav -o song.txt",
                        "show.json:1:107: error: \"song.mp3\" is a sound, and a label track is needed; this makes one of it:"
                                + " duskloom listen song.mp3 -o song.txt");
    }

    @Test
    void aSoundMustBeOne() throws IOException {
        Files.writeString(folder.resolve("song.wav"), "no sound at all");
        assertThat(problems("\"sound\": {\"file\": \"song.wav\"},", cue("'effect': 'wash'")))
                .singleElement()
                .asString()
                .startsWith("song.wav: error: ");
        assertThat(problems("\"sound\": {\"file\": \"sogn.wav\"},", cue("'effect': 'wash'")))
                .containsExactly("show.json:1:93: error: there is no file \"sogn.wav\"; did you mean \"song.wav\"?");
    }

    @Test
    void coloursFollowNothing() {
        assertThat(problems(MUSIC, cue("'effect': 'gauge', 'with': {'palette': {'follow': 'low', 'from': 'red'}}")))
                .containsExactly(
                        "show.json:3:54: error: \"palette\" of gauge cannot follow the music; only numbers can: let"
                                + " \"opacity\" follow, or where there are several colours what goes through them");
    }

    /** From beat 16 on four beats take 1.6 s. */
    @Test
    void aSceneThatIsTooShortSomewhereIsToldWithWhereItIsPlayed() {
        String scene = "\"scenes\": {\"s\": {\"length\": \"4b\", \"layers\": [{\"cues\": ["
                + cue("'effect': 'wash', 'for': '1800ms'") + "]}]}},";
        assertThat(problems(MUSIC + scene, "{\"scene\": \"s\", \"at\": \"4b\"}"))
                .isEmpty();
        assertThat(problems(MUSIC + scene, "{\"scene\": \"s\", \"at\": \"4b\"}, {\"scene\": \"s\", \"at\": \"16b\"}"))
                .singleElement()
                .asString()
                .endsWith("error: the cue ends at 1.8s; the scene \"s\" played at 8s ends at 1.6s; without \"for\" the"
                        + " cue lasts until then");
    }
}
