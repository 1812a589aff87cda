package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.duskloom.engine.effect.EffectRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What the shells themselves make of the script. */
@DisabledOnOs(OS.WINDOWS)
class CompletionCommandTest {
    /** What bash does on Tab, as its manual says under "Programmable Completion"; outside of that, compopt refuses. */
    private static final String ON_TAB = """
            compopt() { :; }
            source "$1"
            shift
            cd "$1"
            while IFS= read -r line; do
                read -ra COMP_WORDS <<<"$line"
                [[ $line == *' ' ]] && COMP_WORDS+=("")
                COMP_LINE=$line COMP_POINT=${#line} COMP_CWORD=$((${#COMP_WORDS[@]} - 1)) COMPREPLY=()
                $(complete -p duskloom | sed 's/.*-F \\([^ ]*\\).*/\\1/')
                echo "${COMPREPLY[*]}"
            done
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            duskloom re                      | render report
            duskloom effects sw              | sweep swell
            duskloom schema_                 | timeline display manifest
            duskloom render show.json --fo   | --force
            duskloom strip --by_             | time cue
            duskloom strip --kind_           | contact time
            duskloom render --as p           | ports packets
            duskloom check sh                | show.json shed.json
            duskloom new garden --map m      | map.csv
            """)
    void bashCompletes(String typed, String completed) throws Exception {
        assertThat(inBash(List.of(typed.replace('_', ' '))).get(0).split(" "))
                .containsExactlyInAnyOrder(completed.split(" "));
    }

    @Test
    void bashCompletesEveryCommandEveryOptionAndEveryEffect() throws Exception {
        Map<String, CommandLine> commands =
                new Program(Streams.ofProcess()).whole().getSubcommands();
        List<String> typed = new ArrayList<>(List.of("duskloom ", "duskloom effects "));
        commands.keySet().forEach(name -> typed.add("duskloom " + name + " -"));
        List<String> completed = inBash(typed);
        assertThat(completed.get(0).split(" ")).containsExactlyElementsOf(commands.keySet());
        assertThat(completed.get(1).split(" "))
                .containsExactlyElementsOf(EffectRegistry.installed().names());
        int line = 2;
        for (CommandLine command : commands.values()) {
            List<String> options = command.getCommandSpec().options().stream()
                    .flatMap(option -> Arrays.stream(option.names()))
                    .toList();
            assertThat(completed.get(line++).split(" "))
                    .as(command.getCommandName())
                    .containsExactlyInAnyOrderElementsOf(options);
        }
    }

    /** As its help says for zsh: read into the shell. */
    @Test
    void zshCompletesWhenItHasReadTheScript() throws Exception {
        inZsh("autoload -U +X compinit && compinit -u -D; source '" + script() + "'");
    }

    /** As the .deb has it: a file that zsh finds by itself, and reads when Tab is typed for the first time. */
    @Test
    void zshCompletesByTheFileOfTheDeb() throws Exception {
        Path found = Files.createDirectories(folder.resolve("vendor-completions"));
        String file = Files.readString(Path.of("src/dist/zsh-completion"));
        String installed = "/usr/share/bash-completion/completions/duskloom";
        assertThat(file).startsWith("#compdef duskloom\n").containsOnlyOnce(installed);
        Files.writeString(found.resolve("_duskloom"), file.replace(installed, "'" + script() + "'"));
        inZsh("fpath=('" + found + "' $fpath); autoload -Uz compinit && compinit -u -D");
    }

    /** In a terminal of zsh's own (zsh/zpty): Tab completes the word, and the command is called with it. */
    private void inZsh(String begin) throws Exception {
        Installed.require("zsh", "--version");
        Path pty = Files.writeString(folder.resolve("pty.zsh"), """
                zmodload zsh/zpty
                zpty z zsh -f -i
                zpty -w z 'PS1=; '"$1"
                zpty -w z 'duskloom() { print "called:" "$@" "."; }; print re""ady'
                zpty -r -m z all '*ready*'
                for typed in 'schema man' 'rep' 'render show.json --fo' 'effects swee' 'strip --by ti'; do
                    zpty -w -n z "duskloom $typed"$'\t\n'
                    zpty -r -m z got $'*called:* .*\n*'
                    print -r -- "$got"
                done
                zpty -d z
                """);
        String said = run("zsh", "-f", pty.toString(), begin);
        assertThat(said)
                .contains(
                        "called: schema manifest .",
                        "called: report .",
                        "called: render show.json --force .",
                        "called: effects sweep .",
                        "called: strip --by time .")
                .doesNotContain("not found");
    }

    @Test
    void isTheSameEveryTime() {
        Ran first = Ran.with("completion");
        assertThat(first.code()).isZero();
        assertThat(first.err()).isEmpty();
        assertThat(first.out())
                .startsWith("#!/usr/bin/env bash\n")
                .isEqualTo(Ran.with("completion").out());
    }

    private List<String> inBash(List<String> typed) throws Exception {
        Installed.require("bash", "--version");
        Path lines = Files.write(folder.resolve("typed.txt"), typed);
        Path tab = Files.writeString(folder.resolve("tab.sh"), ON_TAB);
        Path home = Files.createDirectories(folder.resolve("home"));
        for (String name : List.of("show.json", "shed.json", "map.csv")) {
            Files.writeString(home.resolve(name), "");
        }
        String script = script().toString();
        Process bash = new ProcessBuilder("bash", "--norc", "--noprofile", tab.toString(), script, home.toString())
                .redirectInput(lines.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(bash.waitFor()).isZero();
        return said.lines().toList();
    }

    private Path script() throws IOException {
        Path script = folder.resolve("duskloom completion");
        assertThat(Ran.with("completion", "-o", script, "--force").code()).isZero();
        return script;
    }

    private static String run(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }
}
