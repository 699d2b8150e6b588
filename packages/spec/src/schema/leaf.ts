import type { z as Z } from "zod";
import { type JsonShape, jsonShapes } from "./shapes.js";
import { z } from "./zod.js";

/** What a reader says of one value: the value, or why not. */
export type Reading<Value> =
  | { readonly value: Value }
  | { readonly fault: { readonly code: string; readonly message: string } };

/** A zod type for one value, made of a reader. */
export type Leaf<Value> = Z.ZodPipe<Z.ZodUnknown, Z.ZodTransform<Value, unknown>>;

/**
 * Makes a leaf of the schema from a reader, which does all the judging, so that every message is ours.
 *
 * @param wanted what to write where there is nothing: 'a bore such as "10 mm"'
 * @param json how an editor is to see it
 * @param blank stands in for a value that could not be read, so that checks on its neighbours still run
 * @param read the reader; it is not called for nothing
 */
export function leaf<Value>(
  wanted: string,
  json: JsonShape,
  blank: Value,
  read: (given: unknown) => Reading<Value>,
): Leaf<Value> {
  const schema = z.unknown().transform((given, context): Value => {
    const reading =
      given === undefined || given === null
        ? { fault: { code: "missing", message: `missing; write ${wanted}` } }
        : read(given);
    if ("value" in reading) return reading.value;
    const { code, message } = reading.fault;
    context.addIssue({ code: "custom", message, params: { code } });
    return blank;
  });
  jsonShapes.add(schema, { json });
  return schema;
}
