package org.duskloom.engine.preview;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import org.duskloom.engine.file.IfExists;
import org.duskloom.engine.file.StagedFile;

/** Draws pictures to look at into the folder given: whether they please, no assertion can say. */
final class PreviewSamples {
    private PreviewSamples() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        PreviewScene garden = Garden.whole().scene("Midsummer night");
        StripOptions named = new StripOptions(OptionalInt.empty(), OptionalInt.empty(), true);
        strip(folder.resolve("garden-12.png"), garden, 12, StripOptions.standard());
        strip(folder.resolve("garden-names.png"), garden, 4, named);
        strip(folder.resolve("garden-1.png"), garden, 1, StripOptions.standard());
        strip(folder.resolve("garden-60.png"), garden, 60, StripOptions.standard());
        Garden fence = new Garden();
        fence.line("fence", 0, 0, 9000, 0, 100);
        strip(folder.resolve("fence.png"), fence.scene("The fence alone"), 9, named);
        Garden mast = new Garden();
        mast.line("mast", 0, 0, 0, 6000, 80);
        strip(folder.resolve("mast.png"), mast.scene("A mast"), 8, named);
        Garden lantern = new Garden();
        lantern.line("lantern", 5, 5, 5, 5, 1);
        strip(folder.resolve("one.png"), lantern.scene("One lantern"), 6, named);
        Garden wall = new Garden();
        wall.grid("wall", 0, 0, 200, 100, 20);
        strip(folder.resolve("wall-20000.png"), wall.scene("Wall of 20,000"), 6, StripOptions.standard());
        timeStrip(folder.resolve("time-garden.png"), garden, 0, 960);
        timeStrip(folder.resolve("time-fence.png"), fence.scene("The fence alone"), 83, 203);
        timeStrip(folder.resolve("time-one.png"), lantern.scene("One lantern"), 0, 48);
        timeStrip(folder.resolve("time-wall.png"), wall.scene("Wall"), 3000, 3100);
        letters(folder.resolve("letters.png"));
        Garden hall = new Garden();
        hall.grid("hall", 0, 0, 400, 250, 20);
        strip(folder.resolve("hall-100000.png"), hall.scene("Hall of 100,000"), 12, StripOptions.standard());
        Garden meadow = new Garden();
        for (int k = 0; k < 320; k++) {
            meadow.daisy("daisy-" + k, 500 * (k % 20), 500 * (k / 20), 200);
        }
        strip(folder.resolve("meadow-19520.png"), meadow.scene("Meadow"), 4, StripOptions.standard());
    }

    private static void letters(Path target) throws IOException {
        Raster sheet = new Raster(760, 560, Ink.SHEET);
        String[] lines = {
            "ABCDEFGHIJKLMNOPQRSTUVWXYZ 0123456789",
            "abcdefghijklmnopqrstuvwxyz °·…–←↑→↓µ×",
            "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~ ÄÖÜäöüßéèêñåøæçČï",
            "The quick brown fox jumps over the lazy dog. 12.5 s 1:02.5"
        };
        int top = 20;
        for (int scale = 1; scale <= 4; scale++) {
            for (String line : lines) {
                sheet.text(line, 20, top, scale, Ink.TEXT);
                top += 13 * scale;
            }
            top += 12;
        }
        sheet.writePng(StagedFile.open(target, IfExists.REPLACE));
    }

    private static void timeStrip(Path target, PreviewScene scene, int first, int end) throws IOException {
        long start = System.nanoTime();
        StagedFile file = StagedFile.open(target, IfExists.REPLACE);
        try (TimeStrip strip = new TimeStrip(file, scene, first, end, OptionalInt.empty())) {
            for (int frame = first; frame < end; frame++) {
                strip.frame(frame, light(scene, frame));
            }
            strip.finish();
        }
        System.out.printf("%s %d ms%n", target.getFileName(), (System.nanoTime() - start) / 1_000_000);
    }

    private static void strip(Path target, PreviewScene scene, int moments, StripOptions options) throws IOException {
        long[] frames =
                LongStream.range(0, moments).map(k -> 20 * k + 7 * (k % 2)).toArray();
        long start = System.nanoTime();
        try (ContactStrip strip = new ContactStrip(StagedFile.open(target, IfExists.REPLACE), scene, frames, options)) {
            for (long frame : frames) {
                strip.frame(frame, light(scene, frame));
            }
            strip.finish();
        }
        System.out.printf("%s %d ms%n", target.getFileName(), (System.nanoTime() - start) / 1_000_000);
    }

    /** Bands of colour that cross the display, with dark between them. */
    static byte[] light(PreviewScene scene, long frame) {
        byte[] rgb = new byte[3 * scene.pixelCount()];
        StageView.Box box = StageView.Box.of(scene.x(), scene.y());
        double size = Math.max(1, Math.max(box.width(), box.height()));
        for (int i = 0; i < scene.pixelCount(); i++) {
            double along = (scene.x()[i] + 0.5 * scene.y()[i]) / size - frame / 160.0;
            double level = Math.max(0, StrictMath.cos(2 * StrictMath.PI * 1.5 * along));
            int colour = Color.HSBtoRGB((float) (0.6 + 0.35 * along), 0.85f, (float) level);
            rgb[3 * i] = (byte) (colour >> 16);
            rgb[3 * i + 1] = (byte) (colour >> 8);
            rgb[3 * i + 2] = (byte) colour;
        }
        return rgb;
    }
}
