package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.duskloom.engine.file.OutputRefusedException;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.format.OutputFolder;
import org.duskloom.engine.frame.Progress;
import org.duskloom.engine.locate.Located;
import org.duskloom.engine.locate.Locator;
import org.duskloom.engine.locate.MeasuredText;
import org.duskloom.engine.locate.PicturesRefusedException;
import org.duskloom.engine.locate.picture.LocatedPicture;
import org.duskloom.engine.map.PixelMap;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.map.Prop;
import org.duskloom.engine.preview.Raster;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code duskloom locate}. */
@Command(
        name = "locate",
        sortOptions = false,
        sortSynopsis = false,
        header = "Find where pixels hang, in pictures of a run of 'duskloom proof --find'.",
        description = {
            "",
            "Takes a photo for each step that steps.txt calls a picture, in natural order of their names, or the pictures"
                    + " of a film of the whole run, at any steady rate. Writes where each pixel is in the picture in"
                    + " which all are lit, as CSV with prop, pixel, x, y and how sure that is, 0 to 1; and located.png"
                    + " beside it, to be looked at. Tells which pixels were not found, and why, as it seems."
                    + " 'duskloom survey --photo' compares that with the display.",
            "",
            "Where the pictures cannot be those of the run, it says which one is to blame, and writes nothing. Photos hold"
                    + " places and faces: nothing but lights is written, unless --picture says so.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  duskloom locate photos/*.jpg -o measured.csv --display garden/display.json",
            "  mkdir film",
            "  ffmpeg -i film.mp4 -fps_mode passthrough -q:v 2 film/%%05d.jpg",
            "  duskloom locate film -o measured.csv --display garden/display.json",
            "      All pictures in the folder film, which were taken out of a film."
        })
final class LocateCommand implements Callable<Integer> {
    private static final String PICTURE = "located.png";

    private final Streams streams;

    @Parameters(arity = "1..*", paramLabel = "PICTURE", description = "The pictures, JPEG or PNG, or their folders.")
    private List<Path> pictures;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE.csv",
            required = true,
            description = "The places; - is standard output, without a picture.")
    private Path output;

    @Option(
            names = "--display",
            paramLabel = "DISPLAY.json",
            description = "Whose pixels they are. Of a display the shapes of its props also tell what is a reflection;"
                    + " of a pixel map, MAP.csv, only the names and the order count.")
    private Path display;

    @Option(
            names = "--pixels",
            paramLabel = "N",
            description = "In place of a display: how many pixels the run was made for. They are called lights 1, 2 and"
                    + " so on.")
    private Integer pixels;

    @Option(names = "--apart", paramLabel = "K", description = "As the run was made.")
    private Integer apart;

    @Option(names = "--picture", description = "Draw located.png over the whole picture, with all that it shows.")
    private boolean whole;

    @Mixin
    private TableOptions tables;

    @Option(names = "--force", description = "Replace files that stand there, once the new ones are complete.")
    private boolean force;

    @Mixin
    private HelpOptions helpOptions;

    LocateCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() throws IOException {
        requireOneSource();
        refuseWhatStandsThere();
        Problems problems = new Problems();
        Optional<LoadedPixels> loaded = display == null ? Optional.empty() : LoadedPixels.load(display, problems);
        ProblemPrinter.print(problems, streams);
        if (display != null && loaded.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        PixelMap map = loaded.map(LoadedPixels::map).orElseGet(() -> line(pixels));
        boolean places = loaded.flatMap(LoadedPixels::display).isPresent();
        FindRun run = new FindRun(map.pixelCount(), Math.min(FindOptions.rounds(apart), map.pixelCount()));
        try {
            Problems leftOut = new Problems();
            List<Path> files = PictureNames.files(pictures, Set.of(output, located()), leftOut);
            ProblemPrinter.print(leftOut, streams);
            return ProgressBar.<PicturesRefusedException>during(
                            streams, "picture", progress -> locate(files, progress, run, map, places))
                    ? ExitCode.DONE
                    : ExitCode.FAILED;
        } catch (PicturesRefusedException refused) {
            Problems said = new Problems();
            String where = refused.picture().isEmpty()
                    ? pictures.get(0) + (pictures.size() > 1 ? " ..." : "")
                    : refused.picture();
            said.error(Location.ofFile(where), refused.getMessage(), refused.hint());
            ProblemPrinter.print(said, streams);
            return ExitCode.BAD_INPUT;
        }
    }

    private boolean locate(List<Path> files, Progress progress, FindRun run, PixelMap map, boolean places)
            throws IOException, PicturesRefusedException {
        Photos photos = Photos.of(files, progress);
        Located located = new Locator(photos, run, map, places).locate();
        byte[] csv = MeasuredText.of(located, map, tables.style()).getBytes(StandardCharsets.UTF_8);
        String report = LocateReport.of(
                located,
                map,
                photos.files().get(located.picture()).getFileName().toString(),
                places);
        if (OutputNames.isStandardOutput(output)) {
            streams.print(new String(csv, StandardCharsets.UTF_8), StandardCharsets.UTF_8);
            report.lines().forEach(streams::tell);
            return true;
        }
        write(csv, raster(photos, located, map), photos);
        streams.print(report);
        return true;
    }

    private Raster raster(Photos photos, Located located, PixelMap map) throws IOException, PicturesRefusedException {
        if (!whole) {
            return LocatedPicture.draw(located, map);
        }
        byte[] codes = new byte[located.size().width() * located.size().height()];
        photos.read(located.picture(), codes);
        return LocatedPicture.drawOver(codes, located, map);
    }

    private void write(byte[] csv, Raster picture, Photos photos) throws IOException {
        Path parent = located().getParent();
        try (OutputFolder folder = new OutputFolder(
                parent == null ? Path.of("") : parent,
                OutputNames.ifExists(force),
                target -> StagedFile.refuseInput(target, photos.files()))) {
            folder.open(output.getFileName().toString()).writeWhole(csv);
            picture.writePng(folder.open(PICTURE));
            folder.publish();
        }
    }

    /** Before photos are read, which may take minutes. Nobody has named the picture, so it says how it comes there. */
    private void refuseWhatStandsThere() throws OutputRefusedException {
        if (force || OutputNames.isStandardOutput(output)) {
            return;
        }
        if (Files.exists(output)) {
            throw OutputRefusedException.ofExisting(output);
        }
        if (Files.exists(located())) {
            throw new OutputRefusedException(located() + " exists already, perhaps of another table, and one is drawn"
                    + " beside each; use --force to replace it, or name a table in another folder");
        }
    }

    /** The picture stands beside the table. */
    private Path located() {
        return output.resolveSibling(PICTURE);
    }

    private void requireOneSource() {
        if (display == null && pixels == null) {
            throw new MisuseException("whose pixels? "
                    + displayAmongPictures()
                            .map(file -> "put --display before " + file + ", if that is the display")
                            .orElseGet(() -> "name the display with --display, or say how many there are with --pixels"
                                    + countsOfPixels()));
        }
        if (display != null && pixels != null) {
            throw new MisuseException("--pixels takes the place of --display; leave out one of them");
        }
        FindOptions.checkPixels(pixels);
        String name = output.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".png") || name.endsWith(".jpg") || name.endsWith(".jpeg")) {
            throw new MisuseException("-o " + output + ": that is the name of a picture; name the table, as in -o"
                    + " measured.csv, and " + PICTURE + " is written beside it");
        }
    }

    private Optional<Path> displayAmongPictures() {
        return pictures.stream()
                .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(".json"))
                .findFirst();
    }

    /** For how many pixels a run has as many pictures as are handed over. */
    private String countsOfPixels() {
        try {
            int count = PictureNames.files(pictures, Set.of(), new Problems()).size();
            return FindRun.pixelsWithPictures(count)
                    .map(sizes -> "; " + count + " photos are the run of " + sizes)
                    .orElse("");
        } catch (IOException | PicturesRefusedException none) {
            return "";
        }
    }

    /** Pixels of which nothing is known but their order. */
    private static PixelMap line(int count) {
        Positions none = new Positions(new double[count], new double[count], new double[count]);
        return new PixelMap(List.of(new Prop("lights", 0, count, List.of(), Location.ofFile("--pixels"))), none, none);
    }
}
