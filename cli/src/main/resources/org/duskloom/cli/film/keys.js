"use strict";

/** Every key with what it does; a list of them is shown as well. Each has a name, as `event.key` has it, and a shift or none. */
class Keys {
  constructor(dialog, player) {
    this.dialog = dialog;
    this.player = player;
    this.list = [
      [[" "], "space", "play, pause", () => player.toggle()],
      [["ArrowLeft", ","], "← →", "one frame back, on", () => player.step(-1)],
      [["ArrowRight", "."], "", "", () => player.step(1)],
      [["ArrowUp"], "↑ ↓", "to the cue before, after", () => player.toEdge(-1)],
      [["ArrowDown"], "", "", () => player.toEdge(1)],
      [["Home"], "Home End", "to the start, to the end", () => player.seekFrame(0)],
      [["End"], "", "", () => player.seekFrame(player.film.frames - 1)],
      [["l"], "L", "round and round from cue to cue, or not", () => player.toggleLoop()],
      [["["], "[ ]", "let it begin a cue earlier, end a cue later", () => player.growLoop(-1)],
      [["]"], "", "", () => player.growLoop(1)],
      [["s"], "S F", "slower, faster", () => player.changeSpeed(-1)],
      [["f"], "", "", () => player.changeSpeed(1)],
      [["shift ArrowLeft"], "shift ← → ↑ ↓", "turn what is seen", () => player.turn(-0.1, 0)],
      [["shift ArrowRight"], "", "", () => player.turn(0.1, 0)],
      [["shift ArrowUp"], "", "", () => player.turn(0, -0.1)],
      [["shift ArrowDown"], "", "", () => player.turn(0, 0.1)],
      [["+", "="], "+ −", "nearer, farther", () => player.approach(1.2)],
      [["-"], "", "", () => player.approach(1 / 1.2)],
      [["0"], "0", "from the front again", () => player.toFront()],
      [["n"], "N B", "the next pixel, the one before", () => player.pickBy(1)],
      [["b"], "", "", () => player.pickBy(-1)],
      [["p"], "P", "the first pixel of the next prop", () => player.pickNextProp()],
      [["m"], "M", "sound on or off", () => player.toggleSound()],
      [["h", "?"], "H", "these keys", () => this.toggle()],
      [["Escape"], "Esc", "forget pixel and loop", () => player.forget()],
    ];
    this.fill();
    document.addEventListener("keydown", (event) => this.press(event));
    dialog.addEventListener("click", () => dialog.close());
    dialog.addEventListener("close", () => document.getElementById("help").setAttribute("aria-expanded", "false"));
  }

  fill() {
    const title = document.createElement("h2");
    title.textContent = "Keys";
    const list = document.createElement("dl");
    for (const [, keys, meaning] of this.list) {
      if (keys) {
        const key = document.createElement("dt");
        key.textContent = keys;
        const text = document.createElement("dd");
        text.textContent = meaning;
        list.append(key, text);
      }
    }
    const hint = document.createElement("p");
    hint.textContent = "Drag to turn, with shift to move, wheel or two fingers to come nearer, click for a pixel. "
      + "A double click on the line goes round a cue.";
    hint.style.marginTop = "14px";
    this.dialog.append(title, list, hint);
  }

  press(event) {
    const typing = event.target instanceof HTMLInputElement;
    if (event.ctrlKey || event.metaKey || event.altKey || typing) {
      return;
    }
    // What has the focus and is pressed by space, that is its own matter.
    if (event.key === " " && event.target.closest?.("button, summary")) {
      return;
    }
    if (this.dialog.open && event.key === "Escape") {
      return;
    }
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    const pressed = event.shiftKey && event.key.startsWith("Arrow") ? "shift " + key : key;
    const entry = this.list.find(([names]) => names.includes(pressed));
    if (entry && this.player.film) {
      event.preventDefault();
      entry[3]();
    }
  }

  toggle() {
    document.getElementById("help").setAttribute("aria-expanded", String(!this.dialog.open));
    if (this.dialog.open) {
      this.dialog.close();
    } else {
      this.dialog.showModal();
    }
  }
}
