package org.duskloom.engine.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.duskloom.engine.effect.Canvas;
import org.duskloom.engine.effect.Effect;
import org.duskloom.engine.effect.EffectRegistry;
import org.duskloom.engine.effect.FileSetting;
import org.duskloom.engine.effect.Kernel;
import org.duskloom.engine.effect.Setting;
import org.duskloom.engine.effect.SettingException;
import org.duskloom.engine.effect.Settings;
import org.duskloom.engine.problem.Problem;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.Show;
import org.duskloom.engine.show.ShowReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A file that an effect reads counts among the inputs of the show. */
class FileSettingInputsTest {
    /** SHA-256 of the three bytes "abc": FIPS 180-4, examples of the NIST Computer Security Resource Center. */
    private static final String SHA_256_OF_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    @BeforeEach
    void writeTheMap() throws IOException {
        Files.writeString(folder.resolve("map.csv"), "prop,pixel,x,y\nfence,1,0,0\n");
    }

    @Test
    void areListedWithTheirChecksumOnceEach() throws IOException {
        Files.createDirectory(folder.resolve("pictures"));
        Files.writeString(folder.resolve("pictures/bee"), "abc");
        Show show = compiled("\"pictures/bee\"", "\"pictures/bee\"");

        assertThat(problems.inFileOrder()).isEmpty();
        assertThat(show.inputs())
                .extracting(input -> folder.relativize(input.path()).toString())
                .containsExactly("show.json", "map.csv", "pictures/bee");
        assertThat(show.inputs().get(2).sha256Hex()).isEqualTo(SHA_256_OF_ABC);
        assertThat(show.inputs().get(2).shownName()).isEqualTo(folder + "/pictures/bee");
    }

    @Test
    void areMissedAtTheirPlace() throws IOException {
        Show show = compiled("\"bee\"");

        assertThat(problems.inFileOrder()).hasSize(1);
        Problem problem = problems.inFileOrder().get(0);
        assertThat(problem.location().line()).isEqualTo(2);
        assertThat(problem.message()).contains("no file \"bee\"");
        assertThat(show.inputs()).hasSize(2);
    }

    /** A file is known by its bytes, wherever it lies. */
    @Test
    void decideTheFingerprintByTheirBytes() throws IOException {
        Files.createDirectory(folder.resolve("pictures"));
        Files.writeString(folder.resolve("pictures/bee"), "abc");
        Files.writeString(folder.resolve("wasp"), "abc");
        Files.writeString(folder.resolve("moth"), "abd");
        Show show = compiled("\"pictures/bee\"", "\"wasp\"", "\"moth\"");
        List<String> prints = PlanCompiler.compile(show, EffectRegistry.of(List.of(new Reading())), problems)
                .orElseThrow()
                .layers()
                .get(0)
                .cues()
                .stream()
                .map(cue -> cue.fingerprint().hex())
                .toList();
        assertThat(prints.get(1)).isEqualTo(prints.get(0));
        assertThat(prints.get(2)).isNotEqualTo(prints.get(0));
    }

    @Test
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void arePlainFiles() throws Exception {
        assumeThat(new ProcessBuilder("mkfifo", folder.resolve("bee").toString())
                        .start()
                        .waitFor())
                .isZero();
        compiled("\"bee\"");
        assertThat(problems.inFileOrder())
                .extracting(Problem::message)
                .containsExactly("\"bee\" is a pipe or a device, not a file");
    }

    private Show compiled(String... files) throws IOException {
        StringBuilder cues = new StringBuilder();
        for (String file : files) {
            cues.append("""
                    {"at": "0s", "for": "1s", "on": "fence", "effect": "reading", "with": {"file": %s}},
                    """.formatted(file));
        }
        Path timeline = Files.writeString(folder.resolve("show.json"), """
                {"duskloom": "timeline/1", "map": "map.csv", "rate": 40, "length": "1s", "layers": [{"cues": [
                %s]}]}
                """.formatted(cues));
        Show show = ShowReader.read(timeline, problems).orElseThrow();
        PlanCompiler.compile(show, EffectRegistry.of(List.of(new Reading())), problems);
        return show;
    }

    /** An effect with a file. */
    private static final class Reading implements Effect {
        private static final FileSetting FILE = FileSetting.of("file", "anything", "a file");

        @Override
        public String name() {
            return "reading";
        }

        @Override
        public String summary() {
            return "nothing";
        }

        @Override
        public String formula() {
            return "nothing";
        }

        @Override
        public List<Setting<?>> settings() {
            return List.of(FILE);
        }

        @Override
        public Kernel prepare(Settings settings, Canvas canvas) throws SettingException {
            if (settings.value(FILE).isEmpty()) {
                throw new SettingException("file", "there is none", "");
            }
            return () -> null;
        }
    }
}
