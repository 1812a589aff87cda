"use strict";

/** The player of this page; a page that is served gives it further films. */
const player = new Player(document);

/** Resolves when the film that stands in the page is shown. */
const started = (async () => {
  if (!("DecompressionStream" in window)) {
    player.tell("This browser is too old for the film: it needs DecompressionStream, which browsers have since 2023.");
    return;
  }
  try {
    const facts = JSON.parse(document.getElementById("facts").textContent);
    const table = await PixelTable.unpacked(bytesOfBase64(document.getElementById("table").textContent), facts.pixels);
    player.show(new Film(facts, table, new PiecesInPage(document)));
    const sound = document.getElementById("sound");
    if (sound) {
      player.hear(sound, Number(sound.dataset.starts));
    }
  } catch (fault) {
    player.tell("This film cannot be shown: " + fault.message);
  }
})();
