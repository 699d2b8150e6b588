/** Octets in a line of a calendar file, its line end aside (RFC 5545, section 3.1; from memory). */
const WIDTH = 75;

/** Folds the lines of a calendar file anew, by octets of UTF-8 and never inside a letter. */
export function foldLines(text: string): string {
  const unfolded = text.replace(/\r\n[ \t]/g, "");
  return unfolded.split("\r\n").map(fold).join("\r\n");
}

function fold(line: string): string {
  const pieces: string[] = [];
  let piece = "";
  let octets = 0;
  for (const letter of line) {
    const size = octetsOf(letter);
    if (octets + size > WIDTH) {
      pieces.push(piece);
      piece = "";
      octets = 1; // the space that a continued line begins with
    }
    piece += letter;
    octets += size;
  }
  return [...pieces, piece].join("\r\n ");
}

function octetsOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
