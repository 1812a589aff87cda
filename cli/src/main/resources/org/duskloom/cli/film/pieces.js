"use strict";

/*
 * A film comes in packed pieces: some frames that follow each other, which hang on nothing before them. Whoever has pieces
 * has `list`, an array of {first, frames, crc}, where `first` counts frames of the film from 0, and `packed(index)`, a
 * promise of the bytes of one.
 */

/** Pieces that stand in this page, each in an element of its own: one text of all would be too long for some browsers. */
class PiecesInPage {
  constructor(root) {
    this.elements = [...root.querySelectorAll("script.piece")];
    this.list = this.elements.map((element) => ({
      first: Number(element.dataset.first),
      frames: Number(element.dataset.frames),
      crc: Number(element.dataset.crc),
    }));
  }

  async packed(index) {
    return bytesOfBase64(this.elements[index].textContent);
  }
}

/** Pieces that a server has, each under an address of its own. */
class PiecesFromServer {
  constructor(list, addressOf) {
    this.list = list;
    this.addressOf = addressOf;
  }

  async packed(index) {
    const answer = await fetch(this.addressOf(index));
    if (!answer.ok) {
      throw new Error(`the program says ${answer.status}`);
    }
    return new Uint8Array(await answer.arrayBuffer());
  }
}
