package org.duskloom.engine.file;

import java.io.IOException;
import java.nio.file.Path;

/** A program that is stopped while it writes: see {@link StagedFilesTest}. */
final class StoppedRun {
    private StoppedRun() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        StagedFiles.abandonOnShutdown();
        Path folder = Path.of(arguments[0]);
        StagedFile done = StagedFile.open(folder.resolve("done.txt"), IfExists.REPLACE);
        Folders.write(done, "new");
        done.finish();
        StagedFile half = StagedFile.open(folder.resolve("half.txt"), IfExists.REPLACE);
        half.write(new byte[1 << 20], 0, 1 << 20);
        StagedFile deep = StagedFile.open(folder.resolve("made/for/it.txt"), IfExists.REPLACE);
        deep.write(new byte[1 << 20], 0, 1 << 20);
        System.out.println("writing");
        Thread.sleep(60_000);
    }
}
