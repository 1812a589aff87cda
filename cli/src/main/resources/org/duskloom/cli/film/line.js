"use strict";

const BAR_COLOURS = ["#3f4a6b", "#4a4268", "#3a5560", "#5a4658", "#46543f", "#5a5040"];

/**
 * The line of time: a row for each layer, the top one uppermost as on the stage, with a bar for each cue; and a mark at the
 * time that is seen. A press goes there, a double press goes round that cue.
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
    this.rows = film.facts.layers.map((layer) => layer.cues).reverse();
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
    const row = this.rows[Math.floor(((event.clientY - box.top - this.ruler) / (box.height - this.ruler)) * this.rows.length)];
    const seconds =
      this.film.startSeconds +
      ((event.clientX - box.left) / box.width) * (this.film.endSeconds - this.film.startSeconds);
    // A later cue of a layer is painted over an earlier one.
    const cue = row?.findLast(
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
    const rowHeight = (height - this.ruler) / Math.max(1, this.rows.length);
    this.rows.forEach((cues, row) => this.paintRow(brush, cues, row, rowHeight, width));
  }

  paintRow(brush, cues, row, rowHeight, width) {
    const top = this.ruler + row * rowHeight;
    const gap = rowHeight > 6 ? 2 : 0;
    brush.fillStyle = "#171a22";
    brush.fillRect(0, top, width, rowHeight - gap);
    brush.font = "12px ui-sans-serif, 'Segoe UI', 'Noto Sans', sans-serif";
    brush.textBaseline = "middle";
    cues.forEach((cue, index) => {
      const left = this.shareOf(this.secondsOfShowFrame(cue.from)) * width;
      const right = this.shareOf(this.secondsOfShowFrame(cue.to)) * width;
      if (right <= left) {
        return;
      }
      brush.fillStyle = BAR_COLOURS[(row + 3 * (index % 2)) % BAR_COLOURS.length];
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

/** 1:02.50; with so many decimals. */
function timeText(seconds, decimals = 2) {
  const unit = 10 ** decimals;
  const whole = Math.floor(seconds * unit + 1e-6);
  const minutes = Math.floor(whole / (60 * unit));
  const rest = (whole - minutes * 60 * unit) / unit;
  return minutes + ":" + rest.toFixed(decimals).padStart(decimals ? decimals + 3 : 2, "0");
}
