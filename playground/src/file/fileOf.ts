import type { System } from "@thirstline/spec/system";
import { withNotes } from "./assumedNotes.js";
import { PlainFault } from "./PlainFault.js";

/**
 * A system as the text of a file, read back before it is handed out: what could not be opened again is not saved.
 *
 * @throws PlainFault naming the first thing that a reader would refuse
 */
export async function fileOf(system: System): Promise<string> {
  const [{ quantity, readSystem, spreadQuantity }, { writeSystem }] = await Promise.all([
    import("@thirstline/spec"),
    import("./writeSystem.js"),
  ]);
  const text = withNotes(writeSystem(system, { quantity, spreadQuantity }), system);
  const back = readSystem(text, { file: "the file" });
  if ("system" in back) return text;
  const [first] = back.faults;
  const where = first === undefined || first.path === "" ? "" : `${first.path}: `;
  throw new PlainFault(`What is on the sheet cannot be written as a file yet. ${where}${first?.message ?? ""}.`);
}
