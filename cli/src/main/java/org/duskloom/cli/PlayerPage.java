package org.duskloom.cli;

import java.util.Map;
import org.duskloom.engine.film.PageText;

/** The page that plays shows: plain files beside the program's classes, put together. */
final class PlayerPage {
    private static final String FOLDER = "film/";

    private PlayerPage() {}

    /** The page in one file, with the small film in it that it has without the program. */
    static PageText text() {
        return new PageText(file("page.html")).inOneFile(PlayerPage::file);
    }

    /** The page in one file that asks whoever served it for its films, and for what else it should know. */
    static String served() {
        String live = "<link rel=\"stylesheet\" href=\"live.css\">\n<script src=\"live.js\"></script>";
        return new PageText(file("page.html"))
                .filled(Map.of("film", "", "start", live))
                .inOneFile(PlayerPage::file)
                .html();
    }

    private static String file(String name) {
        return ProgramText.of(FOLDER + name);
    }
}
