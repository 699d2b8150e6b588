import type { z as Z } from "zod";
import { z } from "./zod.js";

/** A JSON Schema fragment. */
export type JsonShape = Readonly<Record<string, unknown>>;

/**
 * What an editor is to see of a schema beyond zod's own account of it: a leaf's whole form, since to zod it is "anything"
 * (the readers take it apart themselves), and for a block what it describes.
 */
export const jsonShapes = z.registry<{ readonly json: JsonShape }>();

/** Adds to what an editor is to see of a schema. */
export function withJson<Schema extends Z.ZodType>(schema: Schema, json: JsonShape): Schema {
  jsonShapes.add(schema, { json: { ...jsonShapes.get(schema)?.json, ...json } });
  return schema;
}
