import { examples } from "virtual:examples";
import type { Yard } from "../Lesson.js";

/** The demonstration machines as the page has them. */
export const pageYard: Yard = (file) => {
  const found = examples.find((example) => example.file === file);
  if (found === undefined) throw new Error(`there is no demonstration machine ${file}`);
  return found.system;
};
