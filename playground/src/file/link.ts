import { PlainFault } from "./PlainFault.js";

/** Longest link that is made or opened, in characters behind the address: mail and messages cut longer ones. */
const LONGEST_LINK = 8000;
/** Most that a link may unfold to, bytes: what a system file may hold. */
const MOST_BYTES = 32 * 1024;
const KEY = "#s=";

/**
 * A system file's text as the part of an address behind "#", which browsers keep to themselves: nothing of it is sent.
 *
 * @throws PlainFault when it gets too long
 */
export async function fragmentOf(text: string): Promise<string> {
  const packed = await through(new TextEncoder().encode(text), new CompressionStream("deflate-raw"), Infinity);
  const fragment =
    KEY +
    btoa(String.fromCharCode(...packed))
      .replaceAll("+", "-")
      .replaceAll("/", "_")
      .replace(/=+$/, "");
  if (fragment.length > LONGEST_LINK)
    throw new PlainFault("This system is too large for a link. Save the file and send that.");
  return fragment;
}

/** Whether a fragment is meant to hold a system. */
export function isSystemFragment(fragment: string): boolean {
  return fragment.startsWith(KEY);
}

/**
 * The text of the system file a fragment holds.
 *
 * @throws PlainFault when it is too long, damaged, or unfolds to more than a file may hold
 */
export async function textOf(fragment: string): Promise<string> {
  if (fragment.length > LONGEST_LINK)
    throw new PlainFault("That link is longer than any this page makes, so it was not opened.");
  const coded = fragment.slice(KEY.length);
  if (!/^[A-Za-z0-9_-]+$/.test(coded)) throw damaged();
  try {
    const packed = Uint8Array.from(atob(coded.replaceAll("-", "+").replaceAll("_", "/")), (one) => one.charCodeAt(0));
    const bytes = await through(packed, new DecompressionStream("deflate-raw"), MOST_BYTES);
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    throw error instanceof PlainFault ? error : damaged();
  }
}

function damaged(): PlainFault {
  return new PlainFault("That link is damaged or cut short, so it was not opened. Ask for it again, or for the file.");
}

/** Bytes through a stream, stopped as soon as more come out than are taken. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: GenericTransformStream,
  most: number,
): Promise<Uint8Array> {
  const reader: ReadableStreamDefaultReader<Uint8Array> = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const pieces: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new PlainFault("That link unfolds to more than a system file may hold, so it was not opened.");
    }
    pieces.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
