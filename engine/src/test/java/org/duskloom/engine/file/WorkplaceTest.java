package org.duskloom.engine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.duskloom.engine.file.Folders.namesIn;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Who may write what, and what becomes of what others have left. */
class WorkplaceTest {
    private static final List<Long> RUNNING = List.of(7L, 8L);

    @TempDir
    private Path folder;

    @Test
    void aSecondRunIsTold() throws IOException {
        Path target = folder.resolve("frames.rgb");
        try (OutputGroup first = group(7)) {
            StagedFile file = first.open(target);
            assertThatThrownBy(() -> group(8).open(target))
                    .isInstanceOf(OutputRefusedException.class)
                    .hasMessage(target + " is in use by process 7; wait for its end, or write somewhere else");
            Folders.write(file, "seven");
            file.finish();
            first.publish();
        }
        assertThat(target).hasContent("seven");
        assertThat(namesIn(folder)).containsExactly("frames.rgb");
    }

    @Test
    void runsWithOutputsOfTheirOwnShareAFolder() throws IOException {
        try (OutputGroup first = group(7);
                OutputGroup second = group(8)) {
            StagedFile one = first.open(folder.resolve("left.png"));
            StagedFile other = second.open(folder.resolve("right.png"));
            one.finish();
            other.finish();
            first.publish();
            second.publish();
        }
        assertThat(namesIn(folder)).containsExactly("left.png", "right.png");
    }

    /** Of processes on other machines nothing is known. */
    @Test
    void aRunOnAnotherMachineIsTold() throws IOException {
        Owner far = new Owner(9, 1, "shed", 0);
        Staging elsewhere = new Staging(new SystemCalls(), far, owner -> true);
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE, elsewhere, false)) {
            group.open(folder.resolve("frames.rgb"));
            assertThat(far.mayRun()).isTrue();
            Staging here = new Staging(new SystemCalls(), new Owner(7, 1, "garden", 0), Owner::mayRun);
            assertThatThrownBy(() -> new OutputGroup(IfExists.REFUSE, here, false).open(folder.resolve("frames.rgb")))
                    .isInstanceOf(OutputRefusedException.class)
                    .hasMessageContaining("is in use by process 9 on shed; if that has ended, remove ")
                    .hasMessageEndingWith(".frames.rgb.part");
        }
    }

    @Test
    void aLivingRunIsLeftAloneHoweverOldItsFilesAre() throws IOException {
        try (OutputGroup slow = group(7)) {
            StagedFile file = slow.open(folder.resolve("frames.rgb"));
            Path part = folder.resolve(".frames.rgb.part");
            FileTime longAgo = FileTime.from(Instant.EPOCH);
            Files.setLastModifiedTime(part.resolve("new"), longAgo);
            Files.setLastModifiedTime(part, longAgo);
            try (OutputGroup other = group(8)) {
                other.open(folder.resolve("strip.png")).close();
            }
            Folders.write(file, "slow");
            file.finish();
            slow.publish();
        }
        assertThat(folder.resolve("frames.rgb")).hasContent("slow");
    }

    @Test
    void whatADeadRunLeftGoesWithTheNext() throws IOException {
        OutputGroup dead = group(5);
        StagedFile file = dead.open(folder.resolve("frames.rgb"));
        Folders.write(file, "half");
        dead.open(folder.resolve("time.png"));
        Files.createDirectory(folder.resolve(".part-5.1.garden.3"));
        Files.createDirectory(folder.resolve(".part-7.1.garden.3"));
        Files.createDirectory(folder.resolve(".empty.part"));
        assertThat(namesIn(folder)).hasSize(5);
        try (OutputGroup next = group(8)) {
            next.open(folder.resolve("strip.png")).finish();
            next.publish();
        }
        assertThat(namesIn(folder)).containsExactly(".part-7.1.garden.3", "strip.png");
    }

    @Test
    void whatIsNotOursStays() throws IOException {
        Files.createDirectory(folder.resolve(".git"));
        Files.createDirectory(folder.resolve(".other.part"));
        Files.writeString(folder.resolve(".other.part/notes.txt"), "mine");
        Files.writeString(folder.resolve(".film.part"), "a download");
        Files.writeString(folder.resolve(".part-x"), "mine");
        try (OutputGroup next = group(8)) {
            next.open(folder.resolve("strip.png")).close();
        }
        assertThat(namesIn(folder)).containsExactly(".film.part", ".git", ".other.part", ".part-x");
        assertThat(folder.resolve(".other.part/notes.txt")).hasContent("mine");
    }

    /** Of eight processes that come to the place of a dead one at the same time, one gets it. */
    @Test
    void oneOfManyInheritsAPlace() throws Exception {
        Path target = folder.resolve("frames.rgb");
        List<Long> all = List.of(11L, 12L, 13L, 14L, 15L, 16L, 17L, 18L);
        ExecutorService threads = Executors.newFixedThreadPool(all.size());
        try {
            for (int round = 0; round < 50; round++) {
                group(5).open(target);
                List<Callable<Boolean>> takers =
                        all.stream().map(number -> taker(number, all, target)).toList();
                int taken = 0;
                for (Future<Boolean> taker : threads.invokeAll(takers)) {
                    taken += taker.get() ? 1 : 0;
                }
                assertThat(taken).isEqualTo(1);
                Trees.delete(folder.resolve(".frames.rgb.part"), new SystemCalls());
            }
        } finally {
            threads.shutdown();
        }
    }

    private static Callable<Boolean> taker(long number, List<Long> running, Path target) {
        return () -> {
            try {
                new OutputGroup(IfExists.REFUSE, TestRun.process(number, new SystemCalls(), running), false)
                        .open(target);
                return true;
            } catch (OutputRefusedException inUse) {
                assertThat(inUse).hasMessageContaining("in use by process");
                return false;
            }
        };
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void replacingKeepsPermissions() throws IOException {
        Path alone = withMode("alone.png", "rw-r-----");
        Path frames = withMode("frames.rgb", "rw-rw-rw-");
        Path manifest = withMode("frames.json", "r--r--r--");
        StagedFile.open(alone, IfExists.REPLACE).finish();
        try (OutputGroup group = new OutputGroup(IfExists.REPLACE)) {
            group.open(frames).finish();
            group.openManifest(manifest).finish();
            group.publish();
        }
        assertThat(modeOf(alone)).isEqualTo("rw-r-----");
        assertThat(modeOf(frames)).isEqualTo("rw-rw-rw-");
        assertThat(modeOf(manifest)).isEqualTo("r--r--r--");
        assertThat(frames).isEmptyFile();
    }

    @Test
    void aGroupHasOneManifest() throws IOException {
        try (OutputGroup group = new OutputGroup(IfExists.REFUSE)) {
            group.openManifest(folder.resolve("frames.json"));
            assertThatThrownBy(() -> group.openManifest(folder.resolve("other.json")))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void anOutputNeedsAName() {
        assertThatThrownBy(() -> StagedFile.open(Path.of(""), IfExists.REPLACE))
                .isInstanceOf(OutputRefusedException.class)
                .hasMessage("an output has no name");
    }

    private Path withMode(String name, String mode) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "old");
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    private static String modeOf(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static OutputGroup group(long process) {
        return new OutputGroup(IfExists.REFUSE, TestRun.process(process, new SystemCalls(), RUNNING), false);
    }
}
