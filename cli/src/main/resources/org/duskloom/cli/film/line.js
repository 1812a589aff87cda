"use strict";

const BAR_COLOURS = ["#3f4a6b", "#4a4268", "#3a5560", "#5a4658", "#46543f", "#5a5040"];

/** So many rows a layer takes at most of the line; more lanes of it are thinner. */
const MOST_ROWS_OF_LAYER = 6;

/**
 * The line of time: a row for each layer, the top one uppermost as on the stage, with a bar for each cue, and more rows for a
 * layer whose cues overlap; and a mark at the time that is seen. A press goes there, a double press goes round that cue.
 */
class TimeLine {
  /** @param asked is told a time to go to, or a loop of frames of the show to go round */
  constructor(element, asked) {
    this.element = element;
    this.canvas = element.querySelector("canvas");
    this.head = element.querySelector("#head");
    this.span = element.querySelector("#span");
    this.asked = asked;
    new ResizeObserver(() => this.film && this.paint()).observe(element);
    element.addEventListener("pointerdown", (event) => {
      element.setPointerCapture(event.pointerId);
      this.goTo(event);
    });
    element.addEventListener("pointermove", (event) => {
      if (event.buttons & 1) {
        this.goTo(event);
      } else {
        element.title = this.cueAt(event)?.text ?? "";
      }
    });
    element.addEventListener("dblclick", (event) => {
      const cue = this.cueAt(event);
      if (cue) {
        this.asked.loop(cue.from, cue.to);
      }
    });
  }

  setFilm(film) {
    this.film = film;
    this.layers = film.facts.layers.map((layer) => lanesOf(layer.cues).reverse()).reverse();
    const rows = (lanes) => Math.min(lanes.length, MOST_ROWS_OF_LAYER);
    this.rows = this.layers.reduce((sum, lanes) => sum + rows(lanes), 0);
    let top = 0;
    this.lanes = this.layers.flatMap((lanes, layer) => {
      const height = rows(lanes) / lanes.length;
      const first = top;
      top += rows(lanes);
      return lanes.map((cues, lane) => ({ cues, layer, top: first + lane * height, height, last: lane === lanes.length - 1 }));
    });
    this.element.style.setProperty("--lanes", this.rows);
    this.paint();
  }

  /** Shows the time; most of the line does not change with it. */
  setTime(seconds, text) {
    this.head.style.left = 100 * this.shareOf(seconds) + "%";
    this.element.setAttribute("aria-valuemin", String(this.film.startSeconds));
    this.element.setAttribute("aria-valuemax", String(this.film.endSeconds));
    this.element.setAttribute("aria-valuenow", seconds.toFixed(3));
    this.element.setAttribute("aria-valuetext", text);
  }

  setLoop(loop) {
    this.span.hidden = !loop;
    if (loop) {
      this.span.style.left = 100 * this.shareOf(loop.from) + "%";
      this.span.style.right = 100 * (1 - this.shareOf(loop.to)) + "%";
    }
  }

  shareOf(seconds) {
    const share = (seconds - this.film.startSeconds) / (this.film.endSeconds - this.film.startSeconds);
    return Math.max(0, Math.min(1, share));
  }

  secondsOfShowFrame(frame) {
    return (frame * this.film.facts.rate[1]) / this.film.facts.rate[0];
  }

  goTo(event) {
    const box = this.element.getBoundingClientRect();
    const share = Math.max(0, Math.min(1, (event.clientX - box.left) / box.width));
    this.asked.seek(this.film.startSeconds + share * (this.film.endSeconds - this.film.startSeconds));
  }

  cueAt(event) {
    const box = this.element.getBoundingClientRect();
    const row = ((event.clientY - box.top - this.ruler) / (box.height - this.ruler)) * this.rows;
    const lane = this.lanes.find(({ top, height }) => top <= row && row < top + height);
    const seconds =
      this.film.startSeconds +
      ((event.clientX - box.left) / box.width) * (this.film.endSeconds - this.film.startSeconds);
    const cue = lane?.cues.find(
      ({ from, to }) => this.secondsOfShowFrame(from) <= seconds && seconds < this.secondsOfShowFrame(to));
    return cue && { ...cue, text: `${cue.name}, ${timeText(this.secondsOfShowFrame(cue.from))} to ${timeText(this.secondsOfShowFrame(cue.to))}` };
  }

  paint() {
    const density = window.devicePixelRatio || 1;
    const width = this.element.clientWidth;
    const height = this.element.clientHeight;
    this.canvas.width = Math.round(width * density);
    this.canvas.height = Math.round(height * density);
    const brush = this.canvas.getContext("2d");
    brush.scale(density, density);
    this.ruler = 22;
    this.paintRuler(brush, width);
    const rowHeight = (height - this.ruler) / Math.max(1, this.rows);
    this.lanes.forEach((lane) => this.paintLane(brush, lane, rowHeight, width));
  }

  paintLane(brush, lane, unitHeight, width) {
    const top = this.ruler + lane.top * unitHeight;
    const rowHeight = lane.height * unitHeight;
    const gap = rowHeight > 6 ? (lane.last ? 2 : 1) : 0;
    brush.fillStyle = "#171a22";
    brush.fillRect(0, top, width, rowHeight - gap);
    brush.font = "12px ui-sans-serif, 'Segoe UI', 'Noto Sans', sans-serif";
    brush.textBaseline = "middle";
    lane.cues.forEach((cue) => {
      const left = this.shareOf(this.secondsOfShowFrame(cue.from)) * width;
      const right = this.shareOf(this.secondsOfShowFrame(cue.to)) * width;
      if (right <= left) {
        return;
      }
      brush.fillStyle = BAR_COLOURS[(lane.layer + 3 * (cue.index % 2)) % BAR_COLOURS.length];
      brush.fillRect(left, top, Math.max(1, right - left - 1), rowHeight - gap);
      if (rowHeight >= 14 && right - left > 34) {
        brush.save();
        brush.beginPath();
        brush.rect(left, top, right - left - 4, rowHeight);
        brush.clip();
        brush.fillStyle = "#cdd2de";
        brush.fillText(cue.name, left + 5, top + (rowHeight - gap) / 2);
        brush.restore();
      }
    });
  }

  paintRuler(brush, width) {
    const seconds = this.film.endSeconds - this.film.startSeconds;
    const steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1800, 3600];
    const step = steps.find((candidate) => (candidate / seconds) * width >= 64) ?? 7200;
    brush.fillStyle = "#8b91a0";
    brush.font = "13px ui-sans-serif, 'Segoe UI', 'Noto Sans', sans-serif";
    brush.textBaseline = "top";
    for (let k = Math.ceil(this.film.startSeconds / step - 1e-9); k * step < this.film.endSeconds; k++) {
      const left = this.shareOf(k * step) * width;
      brush.fillRect(left, 14, 1, 6);
      const text = timeText(k * step, step < 1 ? 1 : 0);
      const room = width - brush.measureText(text).width;
      brush.fillText(text, Math.min(left, room), 0);
    }
  }
}

/**
 * The cues of a layer in as few lanes as they need so that none hides another, each with its index in the layer: from the
 * earliest on, each in the lowest lane that is free. A layer without cues has one lane.
 */
function lanesOf(cues) {
  const lanes = [[]];
  const rising = cues.map((cue, index) => ({ ...cue, index })).sort((one, other) => one.from - other.from);
  for (const cue of rising) {
    const free = lanes.find((lane) => !lane.length || lane.at(-1).to <= cue.from);
    if (free) {
      free.push(cue);
    } else {
      lanes.push([cue]);
    }
  }
  return lanes;
}

/** 1:02.50; with so many decimals. */
function timeText(seconds, decimals = 2) {
  const unit = 10 ** decimals;
  const whole = Math.floor(seconds * unit + 1e-6);
  const minutes = Math.floor(whole / (60 * unit));
  const rest = (whole - minutes * 60 * unit) / unit;
  return minutes + ":" + rest.toFixed(decimals).padStart(decimals ? decimals + 3 : 2, "0");
}
