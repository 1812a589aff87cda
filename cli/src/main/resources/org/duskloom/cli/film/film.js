"use strict";

const BYTES_KEPT = 96 << 20;

/** A piece that could not be had is not asked for again before. */
const RETRY_MILLIS = 1000;

/**
 * A film: what is known of it, where its pixels hang, and its frames, unpacked piece by piece round the place that is looked
 * at. Frames are counted from 0 in the film; frameNumber() says which of the show that is.
 */
class Film {
  /**
   * @param facts as written into the page: title, rate, layers, props and so on
   * @param table a PixelTable
   * @param pieces whoever has the packed pieces
   */
  constructor(facts, table, pieces) {
    this.facts = facts;
    this.table = table;
    this.pieces = pieces;
    this.frameBytes = 3 * facts.pixels;
    this.secondsPerFrame = (facts.step * facts.rate[1]) / facts.rate[0];
    this.startSeconds = (facts.firstFrame * facts.rate[1]) / facts.rate[0];
    this.unpacked = new Map();
    this.underWay = new Map();
    this.faultyMillis = new Map();
    this.whenFaulty = () => {};
  }

  get frames() {
    return this.facts.frames;
  }

  get endSeconds() {
    return this.startSeconds + this.frames * this.secondsPerFrame;
  }

  /** The frame of the film that is seen at a time of the show. A hair early counts: times are fractions. */
  frameAt(seconds) {
    const frame = Math.floor((seconds - this.startSeconds) / this.secondsPerFrame + 1e-6);
    return Math.max(0, Math.min(this.frames - 1, frame));
  }

  secondsOf(frame) {
    return this.startSeconds + frame * this.secondsPerFrame;
  }

  /** Its number in the show. */
  frameNumber(frame) {
    return this.facts.firstFrame + frame * this.facts.step;
  }

  /** Red, green and blue of every pixel; null while they are being unpacked. */
  frame(frame) {
    const index = this.pieceOf(frame);
    const piece = this.pieces.list[index];
    this.unpack(index);
    if (frame - piece.first >= piece.frames / 2 || piece.frames < 8) {
      this.unpack((index + 1) % this.pieces.list.length);
    }
    const bytes = this.unpacked.get(index);
    if (!bytes) {
      return null;
    }
    // Those used last stand last: the first ones are let go.
    this.unpacked.delete(index);
    this.unpacked.set(index, bytes);
    const at = (frame - piece.first) * this.frameBytes;
    return bytes.subarray(at, at + this.frameBytes);
  }

  /** A promise that the frame can be had at once. */
  async ready(frame) {
    await this.unpack(this.pieceOf(frame));
  }

  pieceOf(frame) {
    let low = 0;
    let high = this.pieces.list.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.pieces.list[middle].first <= frame) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  unpack(index) {
    const failedMillis = this.faultyMillis.get(index) ?? -Infinity;
    if (this.unpacked.has(index) || performance.now() - failedMillis < RETRY_MILLIS) {
      return Promise.resolve();
    }
    if (!this.underWay.has(index)) {
      const work = this.unpackNow(index)
        .catch((fault) => {
          this.faultyMillis.set(index, performance.now());
          this.whenFaulty(index, fault);
        })
        .finally(() => this.underWay.delete(index));
      this.underWay.set(index, work);
    }
    return this.underWay.get(index);
  }

  async unpackNow(index) {
    const { frames } = this.pieces.list[index];
    const { bytes, crc } = await this.pieces.packed(index);
    const series = await inflated(bytes, frames * this.frameBytes);
    if (crc32(series) !== crc) {
      throw new Error("its sum is not what it should be");
    }
    this.makeRoom(series.length);
    this.unpacked.set(index, framesOfSeries(series, frames, this.facts.pixels));
  }

  /** Takes over from another film what is unpacked there and is the same here. */
  takeOver(before) {
    const unpacked = new Map();
    for (const [index, bytes] of before.unpacked) {
      unpacked.set(before.pieces.list[index].key, bytes);
    }
    this.pieces.list.forEach(({ key }, index) => {
      if (key !== undefined && unpacked.has(key)) {
        this.unpacked.set(index, unpacked.get(key));
      }
    });
  }

  /**
   * Of the pieces that are not unpacked yet the nearest one to a frame, those after it before those before it; -1 where there
   * is none, or no more would be kept.
   */
  nearestMissing(frame) {
    const count = this.pieces.list.length;
    const here = this.pieceOf(frame);
    // The first piece is as large as any; the last one may be smaller.
    const kept = Math.floor(BYTES_KEPT / (this.pieces.list[0].frames * this.frameBytes)) - 2;
    for (let away = 0; away < Math.min(count, kept / 2); away++) {
      for (const index of [here + away, here - away]) {
        if (index >= 0 && index < count && !this.unpacked.has(index)) {
          return index;
        }
      }
    }
    return -1;
  }

  /** The pixel of the same number in the prop of the same name as one of another film; -1 where there is none. */
  pixelLike(pixel, other) {
    if (pixel < 0 || other.table === this.table) {
      return pixel;
    }
    const name = other.facts.props[other.table.prop[pixel]].name;
    const number = other.table.number[pixel];
    const prop = this.facts.props.findIndex((candidate) => candidate.name === name);
    return this.table.number.findIndex((candidate, index) => candidate === number && this.table.prop[index] === prop);
  }

  makeRoom(bytes) {
    let kept = bytes;
    for (const piece of this.unpacked.values()) {
      kept += piece.length;
    }
    for (const [oldest, piece] of this.unpacked) {
      if (kept <= BYTES_KEPT || this.unpacked.size < 3) {
        break;
      }
      this.unpacked.delete(oldest);
      kept -= piece.length;
    }
  }
}

/** Each channel of each pixel is a series: its first value, then what each frame adds, modulo 256. All red ones come first. */
function framesOfSeries(series, frames, pixels) {
  const rgb = new Uint8Array(series.length);
  const frameBytes = 3 * pixels;
  let from = 0;
  for (let channel = 0; channel < 3; channel++) {
    for (let pixel = 0; pixel < pixels; pixel++) {
      let value = 0;
      for (let to = 3 * pixel + channel; to < series.length; to += frameBytes) {
        value = (value + series[from++]) & 255;
        rgb[to] = value;
      }
    }
  }
  return rgb;
}

/** What is known of every pixel, in columns of four bytes, least first. */
class PixelTable {
  static COLUMNS = 8;

  constructor(bytes, pixels) {
    const column = (index, Type) => new Type(bytes.buffer, bytes.byteOffset + 4 * pixels * index, pixels);
    this.pixels = pixels;
    /** From the middle of the display, in its units. */
    this.x = column(0, Float32Array);
    this.y = column(1, Float32Array);
    this.z = column(2, Float32Array);
    this.prop = column(3, Int32Array);
    /** Along the wire of the prop, from 1. */
    this.number = column(4, Int32Array);
    /** -1 for a pixel on no port. */
    this.port = column(5, Int32Array);
    this.universe = column(6, Int32Array);
    this.slot = column(7, Int32Array);
  }

  static async unpacked(packed, pixels) {
    return new PixelTable(await inflated(packed, 4 * PixelTable.COLUMNS * pixels), pixels);
  }
}
