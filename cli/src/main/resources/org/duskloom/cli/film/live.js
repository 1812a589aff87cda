"use strict";

/** So long the program may be silent before the page says so: it gives a sign of life every five seconds. */
const SILENCE_MILLIS = 15000;

/** How often it is looked whether frames are missing. */
const FETCH_PAUSE_MILLIS = 200;

/**
 * Follows a show that is being written: the program that served this page tells it of every show that was saved, and of what
 * is wrong with it. A page that nobody sees does not listen: browsers let few pages do so at a time.
 */
class LiveShow {
  /** @param player shows the films */
  constructor(player) {
    this.player = player;
    this.turn = 0;
    this.number = 0;
    this.soundNumber = 0;
    this.soundAddress = null;
    this.audio = new Audio();
    this.report = new Report(document.querySelector("footer"));
    this.setEmpty(true);
    document.addEventListener("visibilitychange", () => this.listenIfSeen());
    window.addEventListener("pagehide", () => this.close());
    window.addEventListener("pageshow", () => this.listenIfSeen());
    setInterval(() => this.noticeSilence(), SILENCE_MILLIS / 5);
    this.listenIfSeen();
    this.fetchOutward();
  }

  /** Without a film there is nothing to press. */
  setEmpty(empty) {
    document.querySelector("footer").inert = empty;
    document.querySelector("main").inert = empty;
  }

  listenIfSeen() {
    if (document.visibilityState === "visible") {
      this.open();
    } else {
      this.close();
    }
  }

  open() {
    if (this.stream) {
      return;
    }
    this.stream = new EventSource("events");
    const heard = () => {
      this.heardMillis = performance.now();
      this.say("");
    };
    heard();
    this.stream.addEventListener("here", heard);
    this.stream.addEventListener("message", (event) => {
      heard();
      this.take(JSON.parse(event.data));
    });
    this.stream.addEventListener("error", () => this.say(this.isListening(EventSource.CLOSED)
      ? "Nothing is served here any more: duskloom watch names another address whenever it is started."
      : "duskloom watch has ended. The last show that it sent plays on."));
  }

  close() {
    this.stream?.close();
    this.stream = null;
  }

  isListening(state = EventSource.OPEN) {
    return this.stream?.readyState === state;
  }

  noticeSilence() {
    if (this.isListening() && performance.now() - this.heardMillis > SILENCE_MILLIS) {
      this.say("duskloom watch does not answer. The last show that it sent plays on.");
    }
  }

  /** Says how it stands with the program; what others have said over the lights stays. */
  say(text) {
    if (text !== (this.said ?? "")) {
      this.said = text;
      this.player.tell(text);
    }
  }

  /** Takes news: the number of the film that is to be seen, 0 for none yet, and what is wrong with the files. */
  async take(news) {
    const turn = ++this.turn;
    this.report.show(news);
    if (news.film === this.number) {
      return;
    }
    try {
      const film = await this.filmOf(news);
      if (turn === this.turn) {
        this.change(film, news.film);
      } else {
        film.pieces.stop();
      }
    } catch (fault) {
      this.complain(turn, "What was saved cannot be shown: ", fault);
    }
  }

  /** Unless it is about what is not wanted any more, or what is newer is on its way, or the program is not there at all. */
  complain(turn, what, fault) {
    if (turn === this.turn && !(fault instanceof Superseded) && this.isListening()) {
      this.player.tell(what + fault.message);
    }
  }

  /** A film, with the frames that are seen now, which are asked for at once: mostly they are what was changed. */
  async filmOf({ film: number, pieces: count }) {
    const before = this.player.film;
    const pieces = new PiecesFromServer((index) => `films/${number}/${index}`);
    pieces.askEarly(before ? Math.min(before.pieceOf(this.player.frame), count - 1) : 0);
    const { facts, table, sound, starts, pieceFrames, keyDigits, keys } = await (await asked("films/" + number)).json();
    for (let first = 0; first < facts.frames; first += pieceFrames) {
      const key = keys.substr(pieces.list.length * keyDigits, keyDigits);
      pieces.list.push({ first, frames: Math.min(pieceFrames, facts.frames - first), key });
    }
    const film = new Film(facts, await this.tableOf(table, facts.pixels), pieces);
    film.sound = { number: sound, starts };
    if (before) {
      film.takeOver(before);
    }
    await film.ready(before ? film.frameAt(this.player.clock.now()) : 0);
    return film;
  }

  /** Where the pixels hang, which most saves do not change. */
  async tableOf(number, pixels) {
    if (this.tableKept?.number !== number) {
      const bytes = await (await asked("tables/" + number)).arrayBuffer();
      this.tableKept = { number, table: new PixelTable(new Uint8Array(bytes), pixels) };
    }
    return this.tableKept.table;
  }

  change(film, number) {
    const turn = this.turn;
    const before = this.player.film;
    this.number = number;
    this.player.tell("");
    this.player.show(film);
    film.whenFaulty = (piece, fault) => this.complain(turn, "Some frames cannot be had: ", fault);
    this.setEmpty(false);
    this.hear(film.sound, turn);
    if (before) {
      before.whenFaulty = () => {};
      before.pieces.stop();
    }
  }

  /** The sound comes when it comes, and once only: it is larger than all the rest. */
  async hear({ number, starts }, turn) {
    this.soundStarts = starts;
    if (number !== this.soundNumber) {
      this.soundNumber = number;
      this.player.hear(null, 0);
      this.setSound(null);
      try {
        const sound = number ? await (await asked("sounds/" + number)).blob() : null;
        if (number === this.soundNumber) {
          this.setSound(sound);
        }
      } catch (fault) {
        this.soundNumber = 0;
        this.complain(turn, "The sound cannot be had: ", fault);
      }
    }
    const { clock } = this.player;
    if (this.soundAddress && (clock.sound !== this.audio || clock.soundStarts !== this.soundStarts)) {
      this.player.hear(this.audio, this.soundStarts);
    }
  }

  setSound(bytes) {
    URL.revokeObjectURL(this.soundAddress);
    this.soundAddress = bytes && URL.createObjectURL(bytes);
    if (bytes) {
      this.audio.src = this.soundAddress;
    } else {
      this.audio.removeAttribute("src");
    }
  }

  /** Has all frames unpacked, from those that are seen outwards, as far as there is room for them. */
  async fetchOutward() {
    for (;;) {
      const film = this.player.film;
      const index = film && this.isListening() ? film.nearestMissing(this.player.frame) : -1;
      if (index >= 0) {
        await film.unpack(index);
      }
      if (index < 0 || !film.unpacked.has(index)) {
        await new Promise((done) => setTimeout(done, FETCH_PAUSE_MILLIS));
      }
    }
  }
}

/** What is wrong with the files of the show, between the lights and the line of time. */
class Report {
  constructor(footer) {
    this.element = document.createElement("section");
    this.element.id = "report";
    this.element.setAttribute("role", "status");
    this.element.hidden = true;
    footer.before(this.element);
  }

  /** Errors are open to be read, warnings can be opened. */
  show({ film, errors, warnings, problems }) {
    const counted = (number, word) => (number ? [`${number} ${word}${number === 1 ? "" : "s"}`] : []);
    const title = document.createElement("summary");
    title.textContent = [...counted(errors, "error"), ...counted(warnings, "warning")].join(", ")
      + (errors ? (film ? "; the last show without errors plays on" : "; there is nothing to show yet") : "");
    const list = document.createElement("ol");
    list.append(...problems.map((problem) => this.line(problem)));
    const more = errors + warnings - problems.length;
    if (more > 0) {
      const rest = document.createElement("li");
      rest.textContent = `and ${more} more`;
      list.append(rest);
    }
    const details = document.createElement("details");
    details.open = errors > 0;
    details.append(title, list);
    this.element.replaceChildren(details);
    this.element.className = errors ? "error" : "warning";
    this.element.hidden = errors + warnings === 0;
  }

  line({ place, severity, message, hint }) {
    const line = document.createElement("li");
    line.className = severity;
    const words = [["b", place], ["span", message], ["i", hint]].filter(([, text]) => text);
    line.append(...words.flatMap(([name, text]) => {
      const element = document.createElement(name);
      element.textContent = text;
      return [element, " "];
    }));
    return line;
  }
}

const player = new Player(document);

const live = new LiveShow(player);
