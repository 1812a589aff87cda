"use strict";

const SPEEDS = [0.1, 0.25, 0.5, 1, 2, 4];

/** Puts the parts of the page together: what is pressed becomes time, and time becomes light. */
class Player {
  constructor(page) {
    this.page = page;
    this.at = (id) => page.getElementById(id);
    this.clock = new ShowClock(0, 1);
    this.stage = new Stage(this.at("lights"), () => this.redraw(), (pixel) => this.pick(pixel));
    this.line = new TimeLine(this.at("line"), {
      seek: (seconds) => this.seekFrame(this.film.frameAt(seconds)),
      loop: (from, to) => this.loopFrames(from, to),
    });
    this.plate = new Plate(this.at("plate"));
    this.keys = new Keys(this.at("keys"), this);
    this.followButtons();
    this.wasDrawn = null;
    this.framesDrawn = 0;
    this.tick = this.tick.bind(this);
    requestAnimationFrame(this.tick);
  }

  /**
   * Shows a film. Where another was shown before, the new one goes on at the time of the old one, as it ran or rested, seen
   * from where it was.
   */
  show(film) {
    const before = this.film && this.clock.now();
    const loop = this.clock.loop;
    const pixel = this.film ? film.pixelLike(this.plate.pixel, this.film) : -1;
    this.film = film;
    film.whenFaulty = (piece, fault) => this.tell(`A piece of this film cannot be read (${piece + 1}): ${fault.message}`);
    this.edges = edgesOf(film);
    this.page.title = film.facts.title;
    this.at("title").textContent = film.facts.title;
    this.at("size").textContent = sizeText(film);
    this.clock.setSpan(film.startSeconds, film.endSeconds);
    this.clock.seek(before ?? film.startSeconds);
    this.stage.setTable(film.table, film.facts.spacing);
    this.line.setFilm(film);
    this.plate.setFilm(film);
    this.plate.show(pixel);
    this.keepLoop(loop);
    this.redraw();
  }

  /**
   * Has the time from a sound, or from none; it is heard when the show is played, which browsers allow after a press only.
   */
  hear(sound, startsSeconds) {
    this.clock.follow(sound, startsSeconds);
    this.clock.whenHeard = (heard) => this.tellOfSound(heard);
    this.at("mute").hidden = !sound;
    this.at("lag").hidden = !sound;
  }

  /** What others have said stays. */
  tellOfSound(heard) {
    if (heard === Boolean(this.soundWaits)) {
      this.soundWaits = !heard;
      this.tell(heard ? "" : "The sound waits for a press of a key or a button.");
    }
  }

  /** Says something over the lights, until something else is said. */
  tell(text) {
    this.at("told").textContent = text;
  }

  get frame() {
    return this.film.frameAt(this.clock.now());
  }

  tick() {
    if (this.film) {
      this.drawIfNew();
      this.keepPace(performance.now());
    }
    requestAnimationFrame(this.tick);
  }

  /** Where drawing does not keep up for a second, as without a graphics card, glow is given up, by halves. */
  keepPace(millis) {
    if (!this.clock.running || !this.paceSince) {
      [this.paceSince, this.paceTicks] = [millis, 0];
      return;
    }
    this.paceTicks++;
    const elapsed = millis - this.paceSince;
    if (elapsed < 1000) {
      return;
    }
    const wanted = Math.min(30, 1 / this.film.secondsPerFrame);
    if ((1000 * this.paceTicks) / elapsed < wanted * 0.9) {
      this.stage.glow = this.stage.glow < 0.2 ? 0 : this.stage.glow / 2;
    }
    [this.paceSince, this.paceTicks] = [millis, 0];
  }

  redraw() {
    this.wasDrawn = null;
  }

  drawIfNew() {
    const frame = this.frame;
    if (frame !== this.wasDrawn) {
      const rgb = frame === this.lastFrame && this.lastFilm === this.film ? this.lastLight : this.film.frame(frame);
      if (!rgb) {
        return;
      }
      [this.lastFrame, this.lastFilm, this.lastLight] = [frame, this.film, rgb];
      this.stage.draw(rgb);
      this.plate.setLight(rgb);
      this.placeRing();
      this.wasDrawn = frame;
      this.framesDrawn++;
      this.showTime(frame);
    }
  }

  /** Round the pixel that was chosen. */
  placeRing() {
    const place = this.plate.pixel < 0 ? null : this.stage.placeOf(this.plate.pixel);
    const ring = this.at("ring");
    ring.hidden = !place;
    if (place) {
      const { density } = this.stage;
      const size = Math.max(18, (2 * place.radius) / density + 12) + "px";
      Object.assign(ring.style, { left: place.x / density + "px", top: place.y / density + "px", width: size, height: size });
    }
  }

  showTime(frame) {
    const seconds = this.film.secondsOf(frame);
    const text = timeText(seconds);
    this.at("time").textContent = text;
    this.at("count").textContent = `frame ${this.film.frameNumber(frame)}`;
    this.line.setTime(seconds, text);
    this.showCues(this.film.frameNumber(frame));
  }

  showCues(number) {
    const now = this.film.facts.layers.flatMap((layer) =>
      layer.cues.filter(({ from, to }) => from <= number && number < to).map((cue) => [layer.name, cue.name]));
    const text = now.map((names) => names.join(" ")).join(" · ");
    if (text === this.cuesShown) {
      return;
    }
    this.cuesShown = text;
    const nodes = now.flatMap(([layer, cue], index) => {
      const name = document.createElement("em");
      name.textContent = cue;
      return [index ? "  ·  " : "", layer + " ", name];
    });
    this.at("playing").replaceChildren(...nodes);
  }

  toggle() {
    if (this.clock.running) {
      this.clock.pause();
      // It stays on a frame, not between two.
      this.seekFrame(this.frame);
    } else {
      this.clock.play();
    }
    this.page.body.classList.toggle("playing", this.clock.running);
    this.at("play").setAttribute("aria-label", this.clock.running ? "pause" : "play");
  }

  rest() {
    if (this.clock.running) {
      this.toggle();
    }
  }

  seekFrame(frame) {
    const within = Math.max(0, Math.min(this.film.frames - 1, frame));
    this.clock.seek(this.film.secondsOf(within));
    this.redraw();
  }

  step(frames) {
    this.rest();
    this.seekFrame(this.frame + frames);
  }

  /** To the nearest beginning or end of a cue in a direction. */
  toEdge(direction) {
    const here = this.film.frameNumber(this.frame);
    const edge = direction < 0
      ? this.edges.findLast((candidate) => candidate < here)
      : this.edges.find((candidate) => candidate > here);
    this.seekFrame(edge === undefined ? (direction < 0 ? 0 : this.film.frames - 1) : this.filmFrame(edge));
  }

  /** The first frame of the film that is not before a frame of the show. */
  filmFrame(number) {
    return Math.ceil((number - this.film.facts.firstFrame) / this.film.facts.step);
  }

  toggleLoop() {
    if (this.clock.loop) {
      this.setLoop(null);
      return;
    }
    const here = this.film.frameNumber(this.frame);
    const from = this.edges.findLast((edge) => edge <= here) ?? this.edges[0];
    this.loopFrames(from, this.edges.find((edge) => edge > here) ?? this.edges.at(-1));
  }

  /** Lets the loop begin an edge earlier, or end an edge later. */
  growLoop(direction) {
    if (!this.clock.loop) {
      this.toggleLoop();
      return;
    }
    const { from, to } = this.loopNumbers;
    if (direction < 0) {
      this.loopFrames(this.edges.findLast((edge) => edge < from) ?? from, to);
    } else {
      this.loopFrames(from, this.edges.find((edge) => edge > to) ?? to);
    }
  }

  /** Goes round between two frames of the show, the second not included. */
  loopFrames(from, to) {
    this.loopNumbers = { from, to };
    const perFrame = this.film.facts.rate[1] / this.film.facts.rate[0];
    const loop = {
      from: Math.max(this.film.startSeconds, from * perFrame),
      to: Math.min(this.film.endSeconds, to * perFrame),
    };
    this.setLoop(loop.to > loop.from ? loop : null);
  }

  /** Goes on round the same stretch of time, if a new film has it. */
  keepLoop(loop) {
    const { startSeconds, endSeconds, facts } = this.film;
    const has = loop && loop.to <= endSeconds + 1e-6 && loop.from >= startSeconds - 1e-6;
    if (has) {
      const number = (seconds) => Math.round((seconds * facts.rate[0]) / facts.rate[1]);
      this.loopNumbers = { from: number(loop.from), to: number(loop.to) };
    }
    this.setLoop(has ? loop : null);
  }

  setLoop(loop) {
    this.clock.setLoop(loop);
    this.line.setLoop(loop);
    this.at("loop").setAttribute("aria-pressed", String(Boolean(loop)));
  }

  changeSpeed(direction) {
    const now = SPEEDS.indexOf(this.clock.speed);
    this.setSpeed(SPEEDS[Math.max(0, Math.min(SPEEDS.length - 1, now + direction))]);
  }

  setSpeed(speed) {
    this.clock.setSpeed(speed);
    this.at("pace").textContent = speed + "×";
    this.at("pace").setAttribute("aria-pressed", String(speed !== 1));
  }

  turn(radians, tiltRadians) {
    this.stage.camera.turn(radians, tiltRadians);
    this.redraw();
  }

  approach(factor) {
    this.stage.camera.approach(factor);
    this.redraw();
  }

  toFront() {
    this.stage.camera.toFront();
    this.redraw();
  }

  pick(pixel) {
    this.plate.show(pixel);
    this.redraw();
  }

  pickBy(step) {
    const count = this.film.facts.pixels;
    this.pick(this.plate.pixel < 0 ? (step > 0 ? 0 : count - 1) : (this.plate.pixel + step + count) % count);
  }

  pickNextProp() {
    const { prop } = this.film.table;
    const next = prop.findIndex((index, pixel) => pixel > this.plate.pixel && index !== prop[this.plate.pixel]);
    this.pick(Math.max(0, next));
  }

  toggleSound() {
    if (this.clock.sound) {
      this.clock.sound.muted = !this.clock.sound.muted;
      this.at("mute").setAttribute("aria-pressed", String(!this.clock.sound.muted));
    }
  }

  forget() {
    this.pick(-1);
    this.setLoop(null);
  }

  followButtons() {
    const on = (id, act) => this.at(id).addEventListener("click", act);
    on("play", () => this.toggle());
    on("back", () => this.step(-1));
    on("on", () => this.step(1));
    on("loop", () => this.toggleLoop());
    on("pace", () => this.setSpeed(SPEEDS[(SPEEDS.indexOf(this.clock.speed) + 1) % SPEEDS.length]));
    on("front", () => this.toFront());
    on("mute", () => this.toggleSound());
    on("help", () => this.keys.toggle());
    this.at("lag-millis").addEventListener("input", (event) => {
      this.clock.lateSeconds = (Number(event.target.value) || 0) / 1000;
    });
  }
}

/** Where cues begin or end, in frames of the show, within the film, rising; its start and its end are among them. */
function edgesOf(film) {
  const first = film.frameNumber(0);
  const end = film.frameNumber(film.frames - 1) + film.facts.step;
  const edges = new Set([first, end]);
  for (const layer of film.facts.layers) {
    for (const { from, to } of layer.cues) {
      edges.add(Math.max(first, Math.min(end, from)));
      edges.add(Math.max(first, Math.min(end, to)));
    }
  }
  return [...edges].sort((one, other) => one - other);
}

function sizeText(film) {
  const { pixels, props, rate, step } = film.facts;
  const counted = (number, word) => `${number.toLocaleString("en")} ${word}${number === 1 ? "" : "s"}`;
  const perSecond = Math.round((100 * rate[0]) / rate[1] / step) / 100;
  return `${counted(pixels, "pixel")} in ${counted(props.length, "prop")}, ${counted(perSecond, "frame")} a second`;
}
