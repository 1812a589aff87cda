package org.duskloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.duskloom.engine.document.NearbyFile;
import org.duskloom.engine.locate.PicturesRefusedException;
import org.duskloom.engine.problem.Location;
import org.duskloom.engine.problem.Problems;
import org.duskloom.engine.text.Quoted;

/** Which files pictures are read from. */
final class PictureNames {
    /** What systems leave in folders of pictures; and all whose name begins with a dot. */
    private static final Set<String> LEFT_BY_SYSTEMS = Set.of("thumbs.db", "ehthumbs.db", "desktop.ini");

    private final Set<Path> written;
    private final Problems problems;
    private final List<Path> files = new ArrayList<>();

    private PictureNames(Set<Path> written, Problems problems) {
        this.written = written;
        this.problems = problems;
    }

    /**
     * The files that are named, and those in the folders that are named.
     *
     * @param written what is written itself, and is not read again
     * @param problems where it is told what is left out, as warnings
     */
    static List<Path> files(List<Path> named, Set<Path> written, Problems problems)
            throws IOException, PicturesRefusedException {
        Set<Path> absolute = new HashSet<>();
        written.forEach(file -> absolute.add(file.toAbsolutePath().normalize()));
        PictureNames names = new PictureNames(absolute, problems);
        for (Path name : named) {
            if (Files.isDirectory(name)) {
                names.addInside(name);
            } else if (Files.isRegularFile(name)) {
                names.addNamed(name);
            } else {
                throw refused(name, "is neither a file nor a folder", missingHint(name));
            }
        }
        return names.files;
    }

    private static String missingHint(Path name) {
        return NearbyFile.lostLink(name)
                .or(() -> NearbyFile.orFolder(name).map(near -> "did you mean " + Quoted.of(near) + "?"))
                .orElse("name pictures, or a folder that holds them");
    }

    private static PicturesRefusedException refused(Path file, String message, String hint) {
        return new PicturesRefusedException(file.toString(), message, hint);
    }

    /** A star in a name takes what systems leave, too. */
    private void addNamed(Path file) {
        if (!isLeftBySystem(file)) {
            files.add(file);
        }
    }

    private static boolean isLeftBySystem(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith(".") || LEFT_BY_SYSTEMS.contains(name.toLowerCase(Locale.ROOT));
    }

    private void addInside(Path folder) throws IOException, PicturesRefusedException {
        Map<Path, PhotoFormat> inside = new LinkedHashMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                if (!isLeftBySystem(file)
                        && !written.contains(file.toAbsolutePath().normalize())) {
                    inside.put(file, PhotoFormat.of(file));
                }
            }
        }
        if (inside.values().stream().allMatch(PhotoFormat::isNoPicture)) {
            throw refused(folder, "holds no picture", "name pictures, or the folder that holds them");
        }
        boolean hasPictures = inside.values().stream().anyMatch(PhotoFormat::isRead);
        Set<String> bases = new HashSet<>();
        inside.forEach((file, format) -> {
            if (format.isRead()) {
                bases.add(PhotoFormat.base(file));
            }
        });
        inside.forEach((file, format) -> {
            if (hasPictures && isNoPictureOfTheRun(format, bases.contains(PhotoFormat.base(file)))) {
                problems.warn(Location.ofFile(file.toString()), format.what() + ", and is left out", "");
            } else {
                files.add(file);
            }
        });
    }

    /**
     * Cameras write raw data and small films beside a picture; but a picture that cannot be read may be one of the
     * run.
     *
     * @param hasTwin whether a picture of the same name can be read
     */
    private static boolean isNoPictureOfTheRun(PhotoFormat format, boolean hasTwin) {
        return switch (format) {
            case JPEG, PNG, EMPTY -> false;
            case HEIC, RAW, UNREAD -> hasTwin;
            case FILM, TEXT, OTHER -> true;
        };
    }
}
