"use strict";

/** The bytes that a text in base64 (RFC 4648) holds. */
function bytesOfBase64(text) {
  const chars = atob(text.trim());
  const bytes = new Uint8Array(chars.length);
  for (let i = 0; i < chars.length; i++) {
    bytes[i] = chars.charCodeAt(i);
  }
  return bytes;
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) {
    value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return value;
});

/** CRC-32 as in W3C PNG, annex D; 0 or more. */
function crc32(bytes) {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) {
    crc = CRC_TABLE[(crc ^ bytes[i]) & 0xff] ^ (crc >>> 8);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/**
 * Unpacks raw deflate (RFC 1951). Read chunk by chunk: what is wrong with a stream is told differently by every browser, and
 * some drop its last chunk then, so the length is counted.
 */
async function inflated(packed, length) {
  const unpacker = new DecompressionStream("deflate-raw");
  const writer = unpacker.writable.getWriter();
  writer.write(packed).then(() => writer.close()).catch(() => {});
  const reader = unpacker.readable.getReader();
  const bytes = new Uint8Array(length);
  let at = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) {
      break;
    }
    if (at + value.length > length) {
      throw new Error("there are more bytes than there should be");
    }
    bytes.set(value, at);
    at += value.length;
  }
  if (at !== length) {
    throw new Error(`there are ${at} bytes of ${length}`);
  }
  return bytes;
}
