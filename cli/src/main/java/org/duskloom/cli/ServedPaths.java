package org.duskloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the page can ask for, by names: itself, and the newest film, its table and its pieces. */
final class ServedPaths {
    private static final Pattern NAME = Pattern.compile("(films|tables|sounds)/([0-9]{1,15})(?:/([0-9]{1,9}))?");

    private final NewsBoard board;
    private final Answer page =
            new Answer("text/html; charset=utf-8", PlayerPage.served().getBytes(StandardCharsets.UTF_8));

    /** Pages may ask for more at a time than this machine can render. */
    private final Semaphore rendering = new Semaphore(Rendering.usualThreads());

    ServedPaths(NewsBoard board) {
        this.board = board;
    }

    /** Bytes and their media type; without bytes for what there was, and is no longer. */
    record Answer(String type, byte[] body) {
        private static final Answer SUPERSEDED = new Answer("text/plain", new byte[0]);

        boolean isSuperseded() {
            return this == SUPERSEDED;
        }
    }

    /**
     * What stands under a name; nothing if there is no such thing.
     *
     * @param name {@code ""} for the page, {@code films/NUMBER}, {@code films/NUMBER/PIECE}, {@code tables/NUMBER} or
     *     {@code sounds/NUMBER}
     */
    Optional<Answer> answer(String name) throws IOException, InterruptedException {
        if (name.isEmpty()) {
            return Optional.of(page);
        }
        Matcher asked = NAME.matcher(name);
        Optional<ServedFilm> film = board.newest().film();
        if (film.isEmpty() || !asked.matches()) {
            return Optional.empty();
        }
        return answer(film.get(), asked.group(1), Long.parseLong(asked.group(2)), asked.group(3));
    }

    private Optional<Answer> answer(ServedFilm film, String kind, long number, String piece)
            throws IOException, InterruptedException {
        long newest = switch (kind) {
            case "tables" -> film.tableNumber();
            case "sounds" -> film.soundNumber();
            default -> film.number();
        };
        if (number < 1 || number > newest || piece != null && !kind.equals("films")) {
            return Optional.empty();
        }
        if (number < newest) {
            // A page asks for it until it has heard of the newer one.
            return Optional.of(Answer.SUPERSEDED);
        }
        return switch (kind) {
            case "tables" -> Optional.of(ofBytes(film.table()));
            case "sounds" -> Optional.of(sound(film));
            default -> film(film, piece);
        };
    }

    private static Answer sound(ServedFilm film) {
        return film.sound()
                .map(sound -> new Answer(sound.mediaType(), sound.bytes()))
                .orElse(Answer.SUPERSEDED);
    }

    private Optional<Answer> film(ServedFilm film, String piece) throws IOException, InterruptedException {
        if (piece == null) {
            return Optional.of(new Answer("application/json", film.json().getBytes(StandardCharsets.UTF_8)));
        }
        int index = Integer.parseInt(piece);
        return index < film.pieces() ? Optional.of(piece(film, index)) : Optional.empty();
    }

    private Answer piece(ServedFilm film, int piece) throws IOException, InterruptedException {
        rendering.acquire();
        try {
            return ofBytes(film.piece(piece));
        } finally {
            rendering.release();
        }
    }

    private static Answer ofBytes(byte[] bytes) {
        return new Answer("application/octet-stream", bytes);
    }
}
