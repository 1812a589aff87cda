package org.duskloom.engine.film;

import java.util.Objects;
import java.util.Optional;
import org.duskloom.engine.file.StagedFile;
import org.duskloom.engine.format.StreamKind;
import org.duskloom.engine.frame.FrameSink;

/**
 * {@code film.html}: a page that plays the show, with everything in it.
 *
 * @param text the page, with its styles and scripts in it
 * @param facts what it says of the show
 * @param sound what is heard with it
 * @param mostBytes how large it may become: browsers hold only so much
 */
public record PageKind(PageText text, PageFacts facts, Optional<PageSound> sound, long mostBytes)
        implements StreamKind {
    /** Half a thousand million bytes: browsers refuse a little more in one page. */
    public static final long MOST_BYTES = 500_000_000;

    public PageKind {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(facts, "facts");
        Objects.requireNonNull(sound, "sound");
    }

    /** A page of a show without sound. */
    public PageKind(PageText text, PageFacts facts) {
        this(text, facts, Optional.empty(), MOST_BYTES);
    }

    @Override
    public String word() {
        return "page";
    }

    @Override
    public String help() {
        return "the show as a page for a browser";
    }

    @Override
    public String file() {
        return "film.html";
    }

    @Override
    public boolean holdsFrames() {
        return false;
    }

    @Override
    public FrameSink into(StagedFile file) {
        return new PageSink(file, this);
    }
}
