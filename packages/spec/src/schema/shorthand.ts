import type { z as Z } from "zod";
import { type JsonShape, jsonShapes } from "./shapes.js";
import { z } from "./zod.js";

/** A zod type that takes a short form beside the full one. */
export type Shorthand<Full extends Z.ZodType> = Z.ZodPipe<Z.ZodTransform<unknown, unknown>, Full>;

/**
 * Takes a short form for the full one: "0.9 m" for { height: 0.9 m }, "none" for { kind: none }.
 *
 * @param full the schema of the full form
 * @param expand makes the full form of a short one, and hands anything else on
 * @param json the short form as an editor is to see it
 */
export function shorthand<Full extends Z.ZodType>(
  full: Full,
  expand: (given: unknown) => unknown,
  json: JsonShape,
): Shorthand<Full> {
  const schema = z.preprocess((given) => expand(given), full) as unknown as Shorthand<Full>;
  jsonShapes.add(schema, { json });
  return schema;
}

/** Whether a value is neither a block, a list nor nothing: what a short form may be. */
export function isScalar(given: unknown): boolean {
  return given !== null && given !== undefined && typeof given !== "object";
}
