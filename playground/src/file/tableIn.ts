/** The table among dropped files, if it is one by its name. */
export function tableIn(event: DragEvent): File | null {
  const [file] = event.dataTransfer?.files ?? [];
  return file !== undefined && /\.(csv|tsv|txt)$/i.test(file.name) ? file : null;
}
