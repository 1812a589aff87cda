"use strict";

/** So long a lost graphics card may take to come back. */
const PATIENCE_MILLIS = 3000;

/** A press that moves less than this is a click. */
const CLICK_DOTS = 5;

/** The canvas with the lights: draws frames as they are seen by the camera, and is turned, moved and clicked on. */
class Stage {
  constructor(canvas, whenChanged, whenPicked) {
    this.canvas = canvas;
    this.whenChanged = whenChanged;
    this.whenPicked = whenPicked;
    this.density = 1;
    this.glow = 1;
    this.pointers = new Map();
    this.followSize();
    this.followPointers();
  }

  /** Shows another film's pixels; where they hang as before, they are seen from where they were. */
  setTable(table, spacing) {
    if (this.table === table) {
      return;
    }
    const before = this.camera;
    this.dots?.free();
    this.table = table;
    this.camera = new Camera(table, spacing);
    if (before && before.reach === this.camera.reach) {
      Object.assign(this.camera, before);
    }
    this.dots = this.makeDots();
  }

  makeDots() {
    if (this.dots instanceof PlainDots) {
      return new PlainDots(this.canvas, this.table);
    }
    try {
      return new GlowingDots(this.canvas, this.table);
    } catch (missing) {
      return new PlainDots(this.freshCanvas(), this.table);
    }
  }

  /** A canvas that was ever asked for WebGL may give nothing else. */
  freshCanvas() {
    const fresh = this.canvas.cloneNode(false);
    this.canvas.replaceWith(fresh);
    this.canvas = fresh;
    this.followSize();
    this.followPointers();
    return fresh;
  }

  draw(rgb) {
    if (!(this.dots.gl && this.dots.gl.isContextLost())) {
      this.dots.draw(this.lens(), rgb, this.density, this.glow);
    }
  }

  lens() {
    return this.camera.lens(this.canvas.width, this.canvas.height);
  }

  /** Where a pixel is seen, in dots of the canvas from its upper left corner; null behind the one who looks. */
  placeOf(pixel) {
    const seen = Camera.seen(this.lens(), this.table.x[pixel], this.table.y[pixel], this.table.z[pixel]);
    return seen && { x: this.canvas.width / 2 + seen.x, y: this.canvas.height / 2 - seen.y, radius: seen.radius };
  }

  /** The pixel at a place of the page: the nearest one within reach of a finger; -1 where there is none. */
  pixelAt(pageX, pageY) {
    const box = this.canvas.getBoundingClientRect();
    const x = (pageX - box.left) * this.density - this.canvas.width / 2;
    const y = this.canvas.height / 2 - (pageY - box.top) * this.density;
    const lens = this.lens();
    let found = -1;
    let least = 1;
    for (let i = 0; i < this.table.pixels; i++) {
      const seen = Camera.seen(lens, this.table.x[i], this.table.y[i], this.table.z[i]);
      if (seen) {
        const away = Math.hypot(seen.x - x, seen.y - y) / Math.max(1.3 * seen.radius, 14 * this.density);
        if (away < least) {
          least = away;
          found = i;
        }
      }
    }
    return found;
  }

  followSize() {
    this.sizes?.disconnect();
    this.sizes = new ResizeObserver((entries) => {
      const box = entries[0].contentRect;
      const exact = entries[0].devicePixelContentBoxSize?.[0];
      const dots = (length, exactly) => {
        const counted = length * (window.devicePixelRatio || 1);
        // What a browser measures is taken where it can be true: some leave a zoom out of it.
        return Math.max(1, Math.abs(exactly - counted) < 2 ? exactly : Math.round(counted));
      };
      this.canvas.width = dots(box.width, exact?.inlineSize);
      this.canvas.height = dots(box.height, exact?.blockSize);
      this.density = this.canvas.width / Math.max(1, box.width);
      this.whenChanged();
    });
    try {
      this.sizes.observe(this.canvas, { box: "device-pixel-content-box" });
    } catch (unknownBox) {
      this.sizes.observe(this.canvas);
    }
    this.canvas.addEventListener("webglcontextlost", (event) => {
      event.preventDefault();
      this.waiting = setTimeout(() => this.giveUpCard(), PATIENCE_MILLIS);
    });
    this.canvas.addEventListener("webglcontextrestored", (event) => {
      clearTimeout(this.waiting);
      if (event.target !== this.canvas) {
        // It came back too late: another canvas has its place.
        return;
      }
      this.dots.uploaded = null;
      this.dots.build();
      this.whenChanged();
    });
  }

  giveUpCard() {
    this.dots = new PlainDots(this.freshCanvas(), this.table);
    this.whenChanged();
  }

  followPointers() {
    const canvas = this.canvas;
    canvas.addEventListener("pointerdown", (event) => {
      canvas.setPointerCapture(event.pointerId);
      this.pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      this.moved = this.pointers.size > 1 ? Infinity : 0;
    });
    canvas.addEventListener("pointermove", (event) => this.drag(event));
    canvas.addEventListener("pointerup", (event) => {
      this.pointers.delete(event.pointerId);
      if (this.moved < CLICK_DOTS) {
        this.whenPicked(this.pixelAt(event.clientX, event.clientY));
      }
    });
    canvas.addEventListener("pointercancel", (event) => this.pointers.delete(event.pointerId));
    canvas.addEventListener("wheel", (event) => {
      event.preventDefault();
      this.approachAt(Math.exp(-event.deltaY / 500), event.clientX, event.clientY);
    }, { passive: false });
  }

  drag(event) {
    const before = this.pointers.get(event.pointerId);
    if (!before) {
      return;
    }
    const dx = event.clientX - before.x;
    const dy = event.clientY - before.y;
    this.moved += Math.abs(dx) + Math.abs(dy);
    if (this.pointers.size === 2) {
      this.pinch(event, before);
    } else if (event.shiftKey || event.buttons & 6) {
      this.camera.shiftX += dx * this.density;
      this.camera.shiftY -= dy * this.density;
    } else if (this.moved >= CLICK_DOTS) {
      this.camera.turn(dx / 250, dy / 250);
    }
    this.pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    this.whenChanged();
  }

  /** Two fingers: nearer or farther by their distance, and along with them. */
  pinch(event, before) {
    const other = [...this.pointers].find(([id]) => id !== event.pointerId)[1];
    const apart = (point) => Math.max(10, Math.hypot(point.x - other.x, point.y - other.y));
    const now = { x: event.clientX, y: event.clientY };
    this.camera.shiftX += ((now.x - before.x) / 2) * this.density;
    this.camera.shiftY -= ((now.y - before.y) / 2) * this.density;
    this.approachAt(apart(now) / apart(before), (now.x + other.x) / 2, (now.y + other.y) / 2);
  }

  approachAt(factor, pageX, pageY) {
    const box = this.canvas.getBoundingClientRect();
    const x = (pageX - box.left) * this.density - this.canvas.width / 2;
    const y = this.canvas.height / 2 - (pageY - box.top) * this.density;
    this.camera.approach(factor, x, y);
    this.whenChanged();
  }
}
