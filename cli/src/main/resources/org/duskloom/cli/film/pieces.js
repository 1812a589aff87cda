"use strict";

/*
 * A film comes in packed pieces: some frames that follow each other, which hang on nothing before them. Whoever has pieces
 * has `list`, an array of {first, frames}, where `first` counts frames of the film from 0, and `packed(index)`, a promise of
 * {bytes, crc} of one. Pieces of two films that have the same `key` are the same; those without a key are not compared.
 */

/** Pieces that stand in this page, each in an element of its own: one text of all would be too long for some browsers. */
class PiecesInPage {
  constructor(root) {
    this.elements = [...root.querySelectorAll("script.piece")];
    this.list = this.elements.map((element) => ({
      first: Number(element.dataset.first),
      frames: Number(element.dataset.frames),
    }));
  }

  async packed(index) {
    const element = this.elements[index];
    return { bytes: bytesOfBase64(element.textContent), crc: Number(element.dataset.crc) };
  }
}

/** Of a film that another one has taken the place of, a server has no pieces any more. */
class Superseded extends Error {}

/** What a server has under an address; this says with an empty answer that it has something newer. */
async function asked(address, signal) {
  const answer = await fetch(address, { signal });
  if (answer.status === 204) {
    throw new Superseded("there is a newer film");
  }
  if (!answer.ok) {
    throw new Error(`the program says ${answer.status}`);
  }
  return answer;
}

/** Pieces that a server has, each under an address of its own; their sum stands in front of them, the highest byte first. */
class PiecesFromServer {
  /** Its list is set once it is known. */
  constructor(addressOf) {
    this.list = [];
    this.addressOf = addressOf;
    this.giveUp = new AbortController();
    this.early = null;
  }

  /** Asks for a piece that will probably be wanted first: so it comes beside what has to be known before. */
  askEarly(index) {
    const answer = this.asked(index);
    answer.catch(() => {});
    this.early = { index, answer };
  }

  async packed(index) {
    const { early } = this;
    this.early = null;
    const bytes = await (index === early?.index ? early.answer : this.asked(index));
    return { bytes: new Uint8Array(bytes, 4), crc: new DataView(bytes).getUint32(0) };
  }

  async asked(index) {
    return (await asked(this.addressOf(index), this.giveUp.signal)).arrayBuffer();
  }

  /** Nothing more is wanted of them. */
  stop() {
    this.giveUp.abort();
  }
}
