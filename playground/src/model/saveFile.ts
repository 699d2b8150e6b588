/** Hands a file to the reader's browser to keep. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // Not at once: the browser may still be reading it.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A machine's name as a file is called: "Heron, port engine" is "heron-port-engine". */
export function fileNameOf(name: string): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return plain === "" ? "fuel-system" : plain.slice(0, 60);
}
