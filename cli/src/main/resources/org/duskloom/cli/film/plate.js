"use strict";

/** What is known of one pixel, for the one who stands before it with a ladder. */
class Plate {
  constructor(element) {
    this.element = element;
    this.pixel = -1;
  }

  setFilm(film) {
    this.film = film;
    this.show(-1);
  }

  /** -1 for none. */
  show(pixel) {
    this.pixel = pixel < this.film.facts.pixels ? pixel : -1;
    this.element.hidden = this.pixel < 0;
    this.element.replaceChildren();
    if (this.pixel < 0) {
      return;
    }
    const name = document.createElement("b");
    name.textContent = this.propName();
    const list = document.createElement("dl");
    for (const [term, text] of this.rows()) {
      list.append(this.row(term, text));
    }
    const light = this.row("light", "");
    this.light = light.lastChild;
    list.append(light);
    this.element.append(name, list);
  }

  row(term, text) {
    const row = document.createElement("div");
    const key = document.createElement("dt");
    key.textContent = term;
    const value = document.createElement("dd");
    value.textContent = text;
    row.append(key, value);
    return row;
  }

  /** The light that it has now. */
  setLight(rgb) {
    if (this.pixel < 0) {
      return;
    }
    const codes = [...rgb.subarray(3 * this.pixel, 3 * this.pixel + 3)];
    const hex = "#" + codes.map((code) => code.toString(16).padStart(2, "0")).join("");
    if (this.light.textContent !== hex) {
      const spot = document.createElement("i");
      spot.style.background = hex;
      this.light.replaceChildren(spot, hex);
    }
  }

  propName() {
    return this.film.facts.props[this.film.table.prop[this.pixel]]?.name ?? "";
  }

  /** Terms and texts. */
  rows() {
    const { facts, table } = this.film;
    const rows = [["pixel", String(table.number[this.pixel])]];
    const parts = this.parts();
    if (parts.length) {
      rows.push([parts.length === 1 ? "part" : "parts", parts.join(", ")]);
    }
    const port = table.port[this.pixel];
    if (port >= 0) {
      rows.push(["port", facts.ports[port]]);
      rows.push(["universe", String(table.universe[this.pixel])]);
      rows.push(["slot", String(table.slot[this.pixel])]);
    } else if (facts.ports.length) {
      rows.push(["port", "on none"]);
    }
    rows.push(["hangs at", this.place()]);
    return rows;
  }

  /** The paths of the parts that it belongs to, the innermost of each branch only. */
  parts() {
    const number = this.film.table.number[this.pixel];
    const parts = this.film.facts.props[this.film.table.prop[this.pixel]]?.parts ?? [];
    const within = parts.filter(({ runs }) => {
      for (let i = 0; i < runs.length; i += 2) {
        if (number >= runs[i] && number < runs[i] + runs[i + 1]) {
          return true;
        }
      }
      return false;
    }).map(({ path }) => path);
    return within.filter((path) => !within.some((other) => other.startsWith(path + "/")));
  }

  place() {
    const { facts, table } = this.film;
    const places = [table.x, table.y, table.z].map((column, axis) =>
      String(Math.round(10 * (column[this.pixel] + facts.centre[axis])) / 10));
    const flat = table.z.every((z) => z === table.z[0]);
    return (flat ? places.slice(0, 2) : places).join(", ") + (facts.units ? " " + facts.units : "");
  }
}
