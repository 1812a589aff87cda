package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.link.Links;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code locate} on files; what it finds in them on worse evenings is the engine's matter. */
class LocateCommandTest {
    private static final int PIXELS = 12;
    private static final int WIDTH = 240;
    private static final int HEIGHT = 100;
    private static final FindRun RUN = new FindRun(PIXELS, 1);

    /** As two props of six in the middle of a wall with a sign on it, which is bright in every picture. */
    private static final String MAP = "prop,pixel,x,y\n";

    @TempDir
    private Path folder;

    private static double x(int pixel) {
        return 20.3 + 18 * pixel;
    }

    private static double y(int pixel) {
        return 60.6 - 2 * pixel;
    }

    /** Light in linear levels, as codes of IEC 61966-2-1, in grey. */
    private static BufferedImage picture(int step) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        for (int row = 0; row < HEIGHT; row++) {
            for (int column = 0; column < WIDTH; column++) {
                boolean sign = row >= 80 && row < 95 && column >= 100 && column < 150;
                double light = sign ? 0.6 : 0.005;
                for (int pixel = 0; pixel < PIXELS; pixel++) {
                    if (RUN.isLit(RUN.pictures().get(step), pixel)) {
                        double square = Math.pow(column - x(pixel), 2) + Math.pow(row - y(pixel), 2);
                        light += 0.7 * Math.exp(-square / 4.5);
                    }
                }
                double code = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
                image.setRGB(column, row, (int) Math.round(255 * Math.min(1, code)) * 0x010101);
            }
        }
        return image;
    }

    private Path photos(String ending) throws IOException {
        Path photos = Files.createDirectories(folder.resolve("photos"));
        for (int step = 0; step < RUN.pictures().size(); step++) {
            // In the order of a plain sort 10 would come before 9.
            ImageIO.write(
                    picture(step),
                    ending,
                    photos.resolve("IMG_" + (step + 1) + "." + ending).toFile());
        }
        return photos;
    }

    private Path map() throws IOException {
        StringBuilder rows = new StringBuilder(MAP);
        for (int i = 0; i < PIXELS; i++) {
            rows.append(i < 6 ? "rose," : "lily,")
                    .append(i % 6 + 1)
                    .append(',')
                    .append(i)
                    .append(",0\n");
        }
        return Files.writeString(folder.resolve("map.csv"), rows.toString());
    }

    private Ran locate(Object... more) throws IOException {
        List<Object> args = new ArrayList<>(List.of("locate", "-o", folder.resolve("measured.csv")));
        args.addAll(List.of(more));
        return Ran.with(args.toArray()).without(folder);
    }

    private void assertPlaces(String first, int pixelsOfFirst) throws IOException {
        List<String> rows = Files.readAllLines(folder.resolve("measured.csv"));
        assertThat(rows.get(1)).isEqualTo("prop,pixel,x,y,sure");
        assertThat(rows).hasSize(2 + PIXELS);
        for (int pixel = 0; pixel < PIXELS; pixel++) {
            String[] cells = rows.get(2 + pixel).split(",");
            assertThat(cells[0]).isEqualTo(pixel < pixelsOfFirst ? first : "lily");
            assertThat(cells[1]).isEqualTo("" + (pixel % pixelsOfFirst + 1));
            assertThat(Double.parseDouble(cells[2])).isCloseTo(x(pixel), within(0.1));
            assertThat(Double.parseDouble(cells[3])).isCloseTo(y(pixel), within(0.1));
            assertThat(Double.parseDouble(cells[4])).isBetween(0.9, 1.0);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void findsPixelsInPhotos(String ending) throws IOException {
        Ran ran = locate(photos(ending), "--display", map());
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .isEqualTo("12 of 12 pixels found; the places are those in IMG_2." + ending + ".\n"
                        + "\nWithout --display nothing tells the reflection of a hidden light from the light, if it is"
                        + " bright and near the wire's run: look at the picture for what stands off its prop.\n");
        assertPlaces("rose", 6);
    }

    @Test
    void aNumberOfPixelsWillDo() throws IOException {
        assertThat(locate(photos("png"), "--pixels", "12").code()).isZero();
        assertPlaces("lights", 12);
    }

    @Test
    void theCsvMayGoToStandardOutput() throws IOException {
        Ran ran =
                Ran.with("locate", photos("png"), "--display", map(), "-o", "-").without(folder);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith("# Places in a picture of 240 x 100 dots: ")
                .contains("\nrose,1,20.3");
        assertThat(ran.err())
                .startsWith("12 of 12 pixels found; the places are those in IMG_2.png.\n\nWithout --display nothing");
        assertThat(folder.resolve("located.png")).doesNotExist();
    }

    /** The sign on the wall is in every photo, and not in what is written, unless that is asked for. */
    @Test
    void thePictureShowsLightsAlone() throws IOException {
        Path photos = photos("png");
        assertThat(locate(photos, "--display", map()).code()).isZero();
        BufferedImage drawn = ImageIO.read(folder.resolve("located.png").toFile());
        int head = drawn.getHeight() - HEIGHT;
        assertThat(drawn.getRGB(125, head + 90) & 0xFFFFFF).isEqualTo(0x090A0F);
        assertThat(drawn.getRGB((int) x(3), head + (int) y(3)) >> 16 & 0xFF).isGreaterThan(150);
        assertThat(locate(photos, "--display", map(), "--picture", "--force").code())
                .isZero();
        drawn = ImageIO.read(folder.resolve("located.png").toFile());
        assertThat(drawn.getRGB(125, head + 90) & 0xFF).isGreaterThan(150);
    }

    /**
     * CIPA DC-008, tag 274, and TIFF 6.0: the upright dot (x, y) of a picture of w by h is stored where the value says.
     */
    private static int[] stored(int value, int x, int y, int w, int h) {
        return switch (value) {
            case 2 -> new int[] {w - 1 - x, y};
            case 3 -> new int[] {w - 1 - x, h - 1 - y};
            case 4 -> new int[] {x, h - 1 - y};
            case 5 -> new int[] {y, x};
            case 6 -> new int[] {y, w - 1 - x};
            case 7 -> new int[] {h - 1 - y, w - 1 - x};
            case 8 -> new int[] {h - 1 - y, x};
            default -> new int[] {x, y};
        };
    }

    /** Behind the note come two fill bytes (ITU-T T.81, B.1.1.2). */
    private static byte[] noted(BufferedImage stored, int value) throws IOException {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(stored, "jpg", jpeg);
        byte[] plain = jpeg.toByteArray();
        ByteArrayOutputStream noted = new ByteArrayOutputStream();
        noted.write(plain, 0, 2);
        noted.write(HexFormat.of()
                .parseHex("ffe10022457869660000" + "49492a0008000000010012010300010000000" + value
                        + "00000000000000ffff"));
        noted.write(plain, 2, plain.length - 2);
        return noted.toByteArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void photosStandAsTheCameraWasHeld(int value) throws IOException {
        Path photos = Files.createDirectories(folder.resolve("photos"));
        for (int step = 0; step < RUN.pictures().size(); step++) {
            BufferedImage upright = picture(step);
            boolean isOnItsSide = value > 4;
            BufferedImage stored = new BufferedImage(
                    isOnItsSide ? HEIGHT : WIDTH, isOnItsSide ? WIDTH : HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
            for (int row = 0; row < HEIGHT; row++) {
                for (int column = 0; column < WIDTH; column++) {
                    int[] at = stored(value, column, row, WIDTH, HEIGHT);
                    stored.setRGB(at[0], at[1], upright.getRGB(column, row));
                }
            }
            Files.write(photos.resolve("IMG_" + (step + 1) + ".jpg"), noted(stored, value));
        }
        assertThat(locate(photos, "--display", map()).code()).isZero();
        assertPlaces("rose", 6);
    }

    /** Of square pictures the size does not tell that the camera was turned between them. */
    @ParameterizedTest
    @CsvSource({"6, 100, 100", "3, 120, 80"})
    void photosForWhichTheCameraWasTurnedAreRefused(int value, int width, int height) throws IOException {
        Path photos = Files.createDirectories(folder.resolve("photos"));
        BufferedImage dark = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        for (int step = 0; step < RUN.pictures().size(); step++) {
            Files.write(photos.resolve("IMG_" + (step + 1) + ".jpg"), noted(dark, step == 4 ? value : 1));
        }
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .startsWith("photos/IMG_5.jpg: error: says that the camera was held otherwise than for IMG_1.jpg; ");
    }

    @Test
    void whatIsWrongWithPhotosIsToldAndNothingIsWritten() throws IOException {
        Path photos = photos("png");
        Files.delete(photos.resolve("IMG_9.png"));
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo("photos: error: 17 pictures, but a run of 12 pixels has 18: the one that belongs to"
                        + " photos/IMG_10.png is missing, picture 9 or 10 of steps.txt; take what is missing again with"
                        + " the camera where it was, or take all of them again\n1 error\n");
        assertThat(folder.resolve("measured.csv")).doesNotExist();
        assertThat(folder.resolve("located.png")).doesNotExist();
    }

    /** Systems leave files in folders, cameras write raw data and small films beside pictures, people their notes. */
    @Test
    void whatIsNoPictureInTheFolderIsLeftOut() throws IOException {
        Path photos = photos("png");
        byte[] film = HexFormat.of().parseHex("00000014667479707174202000000000");
        for (String name : List.of("Thumbs.db", "desktop.ini", ".DS_Store", "._IMG_3.png")) {
            Files.write(photos.resolve(name), film);
        }
        Files.createDirectories(photos.resolve("older"));
        Files.writeString(photos.resolve("steps.txt"), "3 s lit");
        Files.write(photos.resolve("IMG_4.MOV"), film);
        Files.write(photos.resolve("IMG_4.DNG"), film);
        Files.writeString(photos.resolve("IMG_4.AAE"), "<xml/>");
        List<Object> args = new ArrayList<>(List.of("locate", photos, "--display", map()));
        args.addAll(List.of("-o", photos.resolve("measured.csv")));
        Ran ran = Ran.with(args.toArray()).without(folder);
        assertThat(ran.err())
                .isEqualTo("photos/IMG_4.AAE: warning: is neither JPEG nor PNG, and is left out\n"
                        + "photos/IMG_4.DNG: warning: is the raw data of a camera, and is left out\n"
                        + "photos/IMG_4.MOV: warning: is a film, and is left out\n"
                        + "photos/steps.txt: warning: is text or a table, and is left out\n4 warnings\n");
        assertThat(ran.code()).isZero();
        // What it has written itself is no picture of the run either.
        assertThat(photos.resolve("located.png")).exists();
        args.add("--force");
        assertThat(Ran.with(args.toArray()).code()).isZero();
    }

    /** A pattern of names, which a shell fills in, takes what systems leave as well. */
    @Test
    void whatSystemsLeaveMayBeNamed() throws IOException {
        Path photos = photos("png");
        Files.writeString(photos.resolve("Thumbs.db"), "thumbs");
        List<Object> args = new ArrayList<>();
        try (Stream<Path> all = Files.list(photos)) {
            all.forEach(args::add);
        }
        args.addAll(List.of("--display", map()));
        assertThat(locate(args.toArray()).code()).isZero();
    }

    /** It may be one of the run, other than what stands beside its picture. */
    @Test
    void aHeicAmongPhotosIsNotLeftOut() throws IOException {
        Path photos = photos("jpg");
        Files.delete(photos.resolve("IMG_4.jpg"));
        Files.write(photos.resolve("IMG_4.HEIC"), HexFormat.of().parseHex("00000018667479706865696300000000"));
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith("photos/IMG_4.HEIC: error: is a HEIC picture; JPEG and PNG are read");
    }

    /** A name that speaks of a picture may be one of the run, whatever is in the file. */
    @Test
    void aPictureThatIsNoneIsNotLeftOut() throws IOException {
        Path photos = photos("jpg");
        Files.writeString(photos.resolve("IMG_4.jpg"), "<html>");
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo(
                        "photos/IMG_4.jpg: error: is neither JPEG nor PNG; copy it from the camera again\n1 error\n");
    }

    @Test
    void aFolderMustHoldPictures() throws IOException {
        Path empty = Files.createDirectories(folder.resolve("photos"));
        assertThat(locate(empty, "--pixels", 12).err()).startsWith("photos: error: holds no picture; name pictures");
        Files.writeString(empty.resolve("steps.txt"), "3 s lit");
        assertThat(locate(empty, "--pixels", 12).err()).startsWith("photos: error: holds no picture; name pictures");
        Files.writeString(empty.resolve("song.wav"), "RIFF");
        assertThat(locate(empty, "--pixels", 12).err()).startsWith("photos: error: holds no picture; name pictures");
    }

    @Test
    void aTableIsNoPicture() throws IOException {
        Ran ran = locate(map(), "--pixels", 12);
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .startsWith("map.csv: error: is text or a table, and no picture; the pictures come first, the display"
                        + " behind --display, and -o names the table to be written");
    }

    /** As many photos as there are tell about how many pixels there are, from which the user knows how many. */
    @Test
    void withoutADisplayTheNumberOfPhotosSaysSomething() throws IOException {
        Ran ran = locate(photos("png"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err())
                .contains("whose pixels? name the display with --display, or say how many there are with --pixels;"
                        + " 18 photos are the run of 9 to 16 pixels");
    }

    /** Most photos hold a small one, with an end mark of its own, before the scan. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aPhotoThatIsCutOffIsNamed(boolean hasThumbnail) throws IOException {
        Path photos = photos("jpg");
        Path cut = photos.resolve("IMG_7.jpg");
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        byte[] plain = Files.readAllBytes(cut);
        whole.write(plain, 0, 2);
        if (hasThumbnail) {
            whole.write(HexFormat.of().parseHex("ffe1000a457869660000ffd9"));
        }
        whole.write(plain, 2, plain.length - 2);
        Files.write(cut, Arrays.copyOf(whole.toByteArray(), whole.size() / 2));
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .startsWith("photos/IMG_7.jpg: error: cannot be read as JPEG: it ends before its end mark");
    }

    /** ISO/IEC 23008-12 (HEIF) begins with ftyp and its brand, QuickTime with ftyp, Matroska with the mark of EBML. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IMG_1.HEIC | 00000018667479706865696300000000 | is a HEIC picture; JPEG and PNG are read; convert it and"
                        + " all of its kind: heif-convert -q 95 IMG_1.HEIC IMG_1.jpg; on a Mac: sips -s format jpeg"
                        + " IMG_1.HEIC --out IMG_1.jpg",
                "of May/IMG_1.HEIC | 00000018667479706865696300000000 | heif-convert -q 95 \"of May/IMG_1.HEIC\""
                        + " \"of May/IMG_1.jpg\"",
                "IMG_1.DNG | 49492a0008000000 | is the raw data of a camera; JPEG and PNG are read; convert it and all of"
                        + " its kind, with the same settings: dcraw -c -W IMG_1.DNG | pnmtopng > IMG_1.png",
                "film.mp4 | 0000001c667479706d70343200000000 | is a film; its pictures are read; take them out of it,"
                        + " into a folder of their own: mkdir film, then ffmpeg -i film.mp4 -fps_mode passthrough -q:v 2 film/%05d.jpg",
                "film.webm | 1a45dfa3 | is a film; its pictures are read",
                "IMG_1.webp | 524946460000000057454250 | is neither JPEG nor PNG; convert it: ffmpeg -i IMG_1.webp"
                        + " IMG_1.png",
                "IMG_1.jpg | 3c68746d6c3e | is neither JPEG nor PNG; copy it from the camera again",
                "IMG_1.jpg | '' | is empty; copy it from the camera again"
            })
    void otherFilesAreToldHowToConvert(String name, String bytes, String said) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, HexFormat.of().parseHex(bytes));
        Ran ran = locate(file, "--display", map());
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).startsWith(name + ": error: ").contains(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PHOTOS | whose pixels? name the display with --display, or say how many there are with --pixels",
                "PHOTOS garden/display.json | whose pixels? put --display before garden/display.json, if that is the"
                        + " display",
                "PHOTOS --pixels 12 --display MAP | --pixels takes the place of --display; leave out one of them",
                "PHOTOS --pixels 0 | --pixels is 0; allowed: 1 to 1000000",
                "PHOTOS --pixels 12 --apart 1 | --apart is 1; allowed: 2 to 16",
                "PHOTOS --pixels 12 -o map.JPG | -o map.JPG: that is the name of a picture; name the table, as in -o"
                        + " measured.csv, and located.png is written beside it"
            })
    void wrongUseIsTold(String words, String said) throws IOException {
        String typed = words.replace("MAP", map().toString()).replace("PHOTOS", folder.toString());
        List<Object> args = new ArrayList<>(List.of("locate"));
        args.addAll(List.of(typed.split(" ")));
        if (!words.contains("-o ")) {
            args.addAll(List.of("-o", folder.resolve("measured.csv")));
        }
        Ran ran = Ran.with(args.toArray()).without(folder);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(said);
    }

    /** No photo is read for it: here there is none. */
    @Test
    void aTableThatStandsThereIsToldFirst() throws IOException {
        Files.writeString(folder.resolve("measured.csv"), "old", StandardCharsets.UTF_8);
        Ran ran = locate(folder.resolve("photos"), "--display", map());
        assertThat(ran).isEqualTo(new Ran(1, "", "duskloom: measured.csv exists already; use --force to replace it\n"));
        assertThat(folder.resolve("measured.csv")).hasContent("old");
    }

    @Test
    void whatStandsThereStays() throws IOException {
        Path photos = photos("png");
        Files.writeString(folder.resolve("located.png"), "old", StandardCharsets.UTF_8);
        Ran ran = locate(photos, "--display", map());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err())
                .isEqualTo("duskloom: located.png exists already, perhaps of another table, and one is drawn beside"
                        + " each; use --force to replace it, or name a table in another folder\n");
        assertThat(folder.resolve("located.png")).hasContent("old");
        assertThat(folder.resolve("measured.csv")).doesNotExist();
    }

    @Test
    void missingAndDoubledNamesAreTold() throws IOException {
        Ran missing = locate(folder.resolve("none.jpg"), "--pixels", "12");
        assertThat(missing.code()).isEqualTo(3);
        assertThat(missing.err())
                .startsWith("none.jpg: error: is neither a file nor a folder; name pictures, or a folder");
        Path photos = photos("png");
        assertThat(locate(folder.resolve("photo"), "--pixels", "12").err())
                .startsWith("photo: error: is neither a file nor a folder; did you mean \"photos\"?");
        Links.symbolic(folder.resolve("lost"), folder.resolve("gone"));
        assertThat(locate(folder.resolve("lost"), "--pixels", "12").err())
                .startsWith("lost: error: is neither a file nor a folder; it is a link that leads nowhere");
        Ran doubled = locate(photos, photos.resolve("IMG_3.png"), "--pixels", "12");
        assertThat(doubled.code()).isEqualTo(3);
        assertThat(doubled.err()).startsWith("photos/IMG_3.png: error: is named twice");
    }
}
