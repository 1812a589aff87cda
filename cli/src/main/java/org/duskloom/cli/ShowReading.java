package org.duskloom.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.duskloom.engine.plan.KernelShelf;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.show.ShowFiles;

/**
 * What came of reading a show once.
 *
 * @param file the timeline, as the user named it
 * @param show the show, if it has no errors
 * @param problems what is wrong with it, or mostly is a slip
 * @param files all that were looked into
 * @param misuse that what is to be seen of it is not there, which is among the problems
 */
record ShowReading(
        Path file, Optional<LoadedShow> show, Problems problems, ShowFiles files, Optional<MisuseException> misuse) {
    /**
     * Reads and compiles a show. Nothing is thrown, whatever is in it: the next version shall be read too.
     *
     * @param choice which pixels are seen
     * @param shelf what is left from readings before
     */
    static ShowReading of(Path file, PixelChoice choice, KernelShelf shelf) {
        Problems problems = new Problems();
        ShowFiles files = ShowFiles.beside(file);
        try {
            Optional<LoadedShow> show = LoadedShow.load(file, files, shelf, problems);
            Optional<MisuseException> misuse = show.flatMap(loaded -> misuse(choice, loaded));
            misuse.ifPresent(unknown -> problems.error(Location.ofFile(file.toString()), unknown.getMessage()));
            return new ShowReading(file, show.filter(loaded -> !problems.hasErrors()), problems, files, misuse);
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError fault) {
            return failed(file, files, fault);
        }
    }

    private static Optional<MisuseException> misuse(PixelChoice choice, LoadedShow show) {
        try {
            choice.pixels(show.show().groups());
            return Optional.empty();
        } catch (MisuseException unknown) {
            return Optional.of(unknown);
        }
    }

    /** What came of a show that the program cannot bear. */
    static ShowReading failed(Path file, ShowFiles files, Throwable fault) {
        Problems problems = new Problems();
        Location whole = Location.ofFile(file.toString());
        if (fault instanceof OutOfMemoryError) {
            long megabytes = Runtime.getRuntime().maxMemory() >> 20;
            problems.error(
                    whole,
                    "this show needs more memory than the " + megabytes + " MB that Java may use",
                    "give it more with JAVA_TOOL_OPTIONS=-Xmx4g");
        } else {
            problems.error(whole, "fault in the program: " + fault);
        }
        return new ShowReading(file, Optional.empty(), problems, files, Optional.empty());
    }

    /** Whether there is no show that could be seen. */
    boolean isBroken() {
        return show.isEmpty();
    }

    /** Whether another reading found the same in the same files. */
    boolean isSameAs(ShowReading other) {
        return files.inputs().equals(other.files.inputs())
                && isBroken() == other.isBroken()
                && problems.inFileOrder().equals(other.problems.inFileOrder());
    }

    /** Tells when the files are others than those that were read. */
    FileWatch watch() {
        return new FileWatch(files.lookedFor());
    }
}
