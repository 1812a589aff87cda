package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.duskloom.engine.file.FaultyCalls.Fault;
import org.duskloom.engine.file.FaultyCalls.Killed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A group with outputs in two folders, such as a page and a folder of tables. */
class SpreadGroupTest {
    private static final List<String> NAMES =
            List.of("page.html", "page.json", "tables/one.csv", "tables/two.csv", "tables/three.csv");

    @TempDir(factory = MemoryFolder.class)
    private Path scratch;

    private Path folder;

    @BeforeEach
    void openFolder() throws IOException {
        folder = Files.createDirectory(scratch.resolve("run"));
    }

    /** Whoever comes next to one of the folders puts both in order, or finds both so. */
    @ParameterizedTest
    @ValueSource(strings = {"notes.txt", "tables/notes.txt"})
    void aKillIsMendedInBothFoldersFromEither(String next) throws IOException {
        int number = 0;
        int mixed = 0;
        FaultyCalls calls;
        do {
            write("old", process(1, FaultyCalls.none()));
            calls = new FaultyCalls(Fault.KILL, ++number, Set.of());
            try {
                write("new", process(2, calls));
            } catch (Killed killed) {
                mixed += found().equals(all("old")) || found().equals(all("new")) ? 0 : 1;
            }
            begin(next, process(3, FaultyCalls.none()));
            assertThat(found()).as("killed after " + calls.made()).isIn(all("old"), all("new"));
            begin("notes.txt", process(4, FaultyCalls.none()));
            begin("tables/notes.txt", process(5, FaultyCalls.none()));
            assertNothingIsLeft();
        } while (calls.struck());
        assertThat(mixed).as("kills between the first name and the last").isGreaterThan(3);
    }

    /** The run that mends it may be killed in its turn, and the one after it comes to the other folder. */
    @ParameterizedTest
    @ValueSource(strings = {"notes.txt", "tables/notes.txt"})
    void mendingMayBeKilledToo(String next) throws IOException {
        String last = next.equals("notes.txt") ? "tables/notes.txt" : "notes.txt";
        int number = 0;
        FaultyCalls second;
        do {
            killBeforeTheLastName();
            second = new FaultyCalls(Fault.KILL, ++number, Set.of());
            try {
                begin(next, process(3, second));
            } catch (Killed killed) {
                assertThat(second.struck()).isTrue();
            }
            begin(last, process(4, FaultyCalls.none()));
            assertThat(found()).as("killed after " + second.made()).isIn(all("old"), all("new"));
            begin(next, process(5, FaultyCalls.none()));
            assertNothingIsLeft();
        } while (second.struck());
        assertThat(number).isGreaterThan(20);
    }

    /** What is noted may have been moved or removed since: then each folder is for itself. */
    @Test
    void aFolderThatIsGoneIsNotMissed() throws IOException {
        killBeforeTheLastName();
        Files.move(folder.resolve("tables"), scratch.resolve("elsewhere"));
        begin("notes.txt", process(3, FaultyCalls.none()));
        assertThat(Files.readString(folder.resolve("page.html"))).isEqualTo("new page.html");
        assertThat(Folders.namesIn(folder)).containsExactly("page.html", "page.json");
        begin("../elsewhere/notes.txt", process(3, FaultyCalls.none()));
        assertThat(Files.readString(scratch.resolve("elsewhere/one.csv"))).isEqualTo("old tables/one.csv");
        assertThat(Folders.namesIn(scratch.resolve("elsewhere"))).containsExactly("one.csv", "three.csv", "two.csv");
    }

    /** Somebody is just putting it in order from the other folder. */
    @Test
    void whatAnotherRunIsMendingIsLeftToIt() throws IOException {
        killBeforeTheLastName();
        Map<String, String> before = found();
        Path place = folder.resolve("tables/.one.csv.part");
        Path claim = place.resolve(Folders.namesIn(place).stream()
                .filter(name -> name.contains("@"))
                .findFirst()
                .orElseThrow());
        Files.move(claim, place.resolve(claim.getFileName().toString().split("@")[0] + "@7.1.garden.0"));
        begin("notes.txt", TestRun.process(3, FaultyCalls.none(), List.of(3L, 7L)));
        assertThat(found()).isEqualTo(before);
        begin("notes.txt", process(4, FaultyCalls.none()));
        assertThat(found()).isEqualTo(all("old"));
    }

    @Test
    void aGroupInOneFolderNotesNothing() throws IOException {
        FaultyCalls calls = FaultyCalls.none();
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE, process(1, calls), false)) {
            for (String name : List.of("a.csv", "b.csv")) {
                finish(group.open(folder.resolve(name)), "text");
            }
            group.publish();
        }
        assertThat(calls.made()).isNotEmpty().noneMatch(call -> call.contains("folders"));
    }

    private void killBeforeTheLastName() throws IOException {
        write("old", process(1, FaultyCalls.none()));
        FaultyCalls whole = FaultyCalls.none();
        write("new", process(2, whole));
        write("old", process(1, FaultyCalls.none()));
        int lastName = 0;
        for (int i = 0; i < whole.made().size(); i++) {
            lastName = whole.made().get(i).equals("rename tables/three.csv") ? i + 1 : lastName;
        }
        try {
            write("new", process(2, new FaultyCalls(Fault.KILL, lastName, Set.of())));
        } catch (Killed killed) {
            assertThat(found()).isNotIn(all("old"), all("new"));
            return;
        }
        throw new AssertionError("it was not killed at " + lastName + " of " + whole.made());
    }

    private static Staging process(long number, FileCalls calls) {
        return TestRun.process(number, calls, List.of(number));
    }

    private void write(String word, Staging process) throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE, process, false)) {
            for (String name : NAMES) {
                finish(group.open(folder.resolve(name)), word + " " + name);
            }
            group.publish();
        }
    }

    private static void finish(StagedFile file, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        file.write(bytes, 0, bytes.length);
        file.finish();
    }

    /** A run that begins something else there, and gives it up. */
    private void begin(String name, Staging process) throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE, process, false)) {
            group.open(folder.resolve(name).normalize());
        }
    }

    private Map<String, String> found() throws IOException {
        Map<String, String> found = new TreeMap<>();
        for (String name : NAMES) {
            found.put(name, Files.exists(folder.resolve(name)) ? Files.readString(folder.resolve(name)) : "");
        }
        return found;
    }

    private static Map<String, String> all(String word) {
        Map<String, String> all = new TreeMap<>();
        NAMES.forEach(name -> all.put(name, word + " " + name));
        return all;
    }

    private void assertNothingIsLeft() throws IOException {
        assertThat(Folders.namesIn(folder)).containsExactly("page.html", "page.json", "tables");
        assertThat(Folders.namesIn(folder.resolve("tables"))).containsExactly("one.csv", "three.csv", "two.csv");
    }
}
