package org.duskloom.cli;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.duskloom.engine.digest.Fingerprint;
import org.duskloom.engine.digest.FingerprintWriter;
import org.duskloom.engine.document.JsonText;
import org.duskloom.engine.film.FilmPieces;
import org.duskloom.engine.film.PageFacts;
import org.duskloom.engine.film.PageSound;
import org.duskloom.engine.frame.FrameSource;
import org.duskloom.engine.plan.Plan;
import org.duskloom.engine.show.ShowFiles;

/** A show as the page asks for it: what is known of it, where its pixels hang, and its frames in pieces. */
final class ServedFilm {
    /** Half of a fingerprint tells pieces apart as well, and there may be thousands of them. */
    private static final int KEY_DIGITS = 32;

    private final long number;
    private final long tableNumber;
    private final byte[] table;
    private final String facts;
    private final FilmPieces pieces;
    private final List<Fingerprint> fingerprints;
    private final LoadedShow show;
    private final String soundDigest;
    private final long soundNumber;

    /**
     * A show that is to be seen.
     *
     * @param choice which of its pixels are
     * @param before the one before it, if there was one
     */
    ServedFilm(LoadedShow loaded, PixelChoice choice, Optional<ServedFilm> before) {
        FrameSource frames = choice.of(loaded.frames(), loaded.show().groups());
        int[] seen = choice.pixels(loaded.show().groups());
        PageFacts page = new PageFacts(loaded.show(), seen);
        byte[] places = page.table(frames.info());
        Optional<ServedFilm> alike = before.filter(film -> Arrays.equals(film.table, places));
        this.number = before.map(ServedFilm::number).orElse(0L) + 1;
        this.tableNumber = alike.map(film -> film.tableNumber).orElse(number);
        this.table = alike.map(film -> film.table).orElse(places);
        this.facts = page.json(frames.info());
        this.pieces = new FilmPieces(frames);
        this.fingerprints = fingerprints(loaded.plan(), seen, pieces.pieceFrames());
        this.show = loaded;
        this.soundDigest = soundDigest(loaded);
        this.soundNumber = soundDigest.isEmpty()
                ? 0
                : before.filter(film -> film.soundDigest.equals(soundDigest))
                        .map(film -> film.soundNumber)
                        .orElse(number);
    }

    /** What decides each piece, by value. */
    private static List<Fingerprint> fingerprints(Plan plan, int[] seen, int pieceFrames) {
        Fingerprint pixels = new FingerprintWriter("pixels seen/1").wholes(seen).finish();
        return plan.fingerprints(pieceFrames).stream()
                .map(frames -> new FingerprintWriter("piece/1")
                        .part(pixels)
                        .part(frames)
                        .finish())
                .toList();
    }

    /** Of the file of the sound; empty where there is none. */
    private static String soundDigest(LoadedShow loaded) {
        ShowFiles files = loaded.show().files();
        return loaded.show()
                .timeline()
                .sound()
                .flatMap(sound -> files.remembered(sound.file()))
                .map(files::sha256Hex)
                .orElse("");
    }

    /** Counts from 1; another one for every show. */
    long number() {
        return number;
    }

    /** The number of the first film whose pixels hang as those of this one: who knows that table knows this one. */
    long tableNumber() {
        return tableNumber;
    }

    /** The number of the first film with the same sound; 0 where there is none. */
    long soundNumber() {
        return soundNumber;
    }

    /** The whole sound; nothing if it cannot be read any more, of which there will be news. */
    Optional<PageSound> sound() {
        try {
            return show.sound(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        } catch (IOException changed) {
            return Optional.empty();
        }
    }

    private double soundStartSeconds() {
        return show.show()
                .timeline()
                .sound()
                .map(sound -> sound.starts().seconds())
                .orElse(0.0);
    }

    /** See {@link PageFacts#table}. */
    byte[] table() {
        return table;
    }

    /** See {@link FilmPieces#packed}. */
    byte[] piece(int index) throws IOException {
        return pieces.packed(index);
    }

    /** How many pieces there are. */
    int pieces() {
        return pieces.count();
    }

    /**
     * {@code facts} as of {@link PageFacts#json}; the numbers of the {@code table} and of the {@code sound}, and when
     * that {@code starts}; how many {@code pieceFrames} a piece has, and the {@code keys} of all pieces, as many digits
     * for each, without anything between them: a piece of another film with the same key is the same piece.
     */
    String json() {
        String keys = fingerprints.stream()
                .map(print -> print.hex().substring(0, KEY_DIGITS))
                .collect(Collectors.joining());
        return JsonText.object(
                        "facts", new JsonText.Inline(facts),
                        "table", tableNumber,
                        "sound", soundNumber,
                        "starts", soundStartSeconds(),
                        "pieceFrames", pieces.pieceFrames(),
                        "keyDigits", KEY_DIGITS,
                        "keys", keys)
                .json();
    }
}
