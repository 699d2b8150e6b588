import face from "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url";

/** Pixels of a picture to one of its drawing, so that it stays sharp on paper. */
const SHARP = 2;

/**
 * A drawing as a picture (PNG), in the page's own face.
 *
 * @throws Error where the browser cannot draw it
 */
export async function pictureOf(drawing: string): Promise<Blob> {
  const image = new Image();
  const url = URL.createObjectURL(new Blob([withFace(drawing, await faceData())], { type: "image/svg+xml" }));
  try {
    image.src = url;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = SHARP * image.width;
    canvas.height = SHARP * image.height;
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture")))),
    );
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** The face as data: a drawing shown as an image may fetch nothing. */
async function faceData(): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(face)).arrayBuffer());
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(text)}`;
}

function withFace(drawing: string, data: string): string {
  const rule = `@font-face{font-family:"Atkinson Hyperlegible Next Variable";font-weight:200 800;src:url(${data})}`;
  return drawing.replace(/(<svg[^>]*>)/, `$1<style>${rule}</style>`);
}
