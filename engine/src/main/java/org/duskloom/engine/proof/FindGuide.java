package org.duskloom.engine.proof;

import org.duskloom.engine.find.FindRun;
import org.duskloom.engine.text.Counted;

/** What to do while a run by which pixels tell a camera their numbers is played. */
final class FindGuide {
    private FindGuide() {}

    /** The page above the list of steps. */
    static String of(FindRun run) {
        String pictures = Counted.of(run.pictures().size(), "photo");
        String rounds = run.apart() == 1 ? "" : " The pixels take turns: there are " + run.apart() + " rounds of it.";
        return """
                How the lights tell a camera where they hang.

                1. A dark evening without wind. Switch off the lamps near by, close curtains, cover windows and dry what is wet:
                   lights that are mirrored there are seen twice.
                2. Put the camera on a tripod, level, where it sees the whole display, best from the front. Do not touch it again until
                   the end; nothing and nobody walks through the picture.
                3. Set focus, zoom, exposure and white balance by hand and leave them alone; no flash, no night mode. Play the step "lit"
                   alone, in a loop, and make the exposure so short that lights are small grey dots, not white spots.
                4. Film all of it, from before the first blink until after the last. Or make one photo in each step that is called a
                   picture below, PHOTOS in their order, none twice, none while the lights change; make the steps longer for it. A
                   remote control keeps the tripod still.
                5. Hand the photos, or the pictures of the film, to "duskloom locate".ROUNDS

                People who are sensitive to flashing light should look away: all pixels blink three times at the start of a round and at the
                end of all, at most twice a second; WCAG 2.2 (W3C) takes three flashes within a second as the limit on screens.

                """.replace("PHOTOS", pictures).replace("ROUNDS", rounds);
    }
}
