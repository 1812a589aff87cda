"use strict";

/** Draws pixels where there is no WebGL 2: the same discs, and less glow. */
class PlainDots {
  constructor(canvas, table) {
    this.canvas = canvas;
    this.table = table;
    this.brush = canvas.getContext("2d", { alpha: false });
  }

  draw(lens, rgb, density, glow) {
    const brush = this.brush;
    const { width, height } = this.canvas;
    brush.globalCompositeOperation = "source-over";
    brush.fillStyle = `rgb(${NIGHT.map((part) => 255 * part).join(" ")})`;
    brush.fillRect(0, 0, width, height);
    const seen = this.inOrder(lens);
    brush.globalCompositeOperation = "screen";
    for (const dot of glow > 0 ? seen : []) {
      this.disc(dot, Math.min(3 * dot.radius, dot.radius + 10 * density), rgb, 0.14);
    }
    brush.globalCompositeOperation = "source-over";
    for (const dot of seen) {
      this.disc(dot, dot.radius, rgb, 1);
    }
  }

  /** From the farthest to the nearest, as the nearer ones hide the others. */
  inOrder(lens) {
    const seen = [];
    for (let i = 0; i < this.table.pixels; i++) {
      const dot = Camera.seen(lens, this.table.x[i], this.table.y[i], this.table.z[i]);
      if (dot) {
        seen.push({ ...dot, pixel: i, radius: Math.max(LEAST_RADIUS, dot.radius) });
      }
    }
    return lens.turned ? seen.sort((one, other) => other.away - one.away) : seen;
  }

  disc(dot, radius, rgb, opacity) {
    const at = 3 * dot.pixel;
    const [red, green, blue] = [rgb[at], rgb[at + 1], rgb[at + 2]];
    const dark = Math.max(red, green, blue) < 255 * UNLIT[2];
    if (dark && opacity < 1) {
      return;
    }
    const brush = this.brush;
    brush.beginPath();
    brush.arc(this.canvas.width / 2 + dot.x, this.canvas.height / 2 - dot.y, radius, 0, 2 * Math.PI);
    brush.fillStyle = `rgb(${red} ${green} ${blue} / ${opacity})`;
    brush.fill();
    if (dark && radius > 2) {
      brush.strokeStyle = `rgb(${UNLIT.map((part) => Math.round(255 * part)).join(" ")})`;
      brush.stroke();
    }
  }

  colourAt(x, y) {
    return [...this.brush.getImageData(x, y, 1, 1).data.subarray(0, 3)];
  }

  free() {}
}
