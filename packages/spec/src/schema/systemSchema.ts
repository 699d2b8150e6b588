import { fileBlock } from "./file.js";
import { jsonShapes } from "./shapes.js";
import { z } from "./zod.js";

/**
 * The JSON Schema (draft 2020-12) of a system file, for editors: keys, descriptions, examples and units. It knows the
 * form only; that a branch climbs as far as its neighbour, `readSystem` alone can tell.
 */
export function systemSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(fileBlock, {
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      const shape = jsonShapes.get(zodSchema)?.json;
      if (shape === undefined) return;
      const full = { ...jsonSchema };
      for (const key of Object.keys(full)) delete (jsonSchema as Record<string, unknown>)[key];
      Object.assign(jsonSchema, isShorthand(zodSchema) ? { anyOf: [shape, full] } : { ...shape, ...full });
    },
  });
  return { ...schema, title: "System file of a fuel supply", description: spreads };
}

const spreads =
  'Any quantity may carry a spread: "0.4 mg/L ± 50 %", "0.40 ± 0.05 mg/L", "2 to 5 mg/L"; +/- does for ±. Codes take none.';

/** Whether a schema takes a short form: only those are pipes that begin with a transform. */
function isShorthand(schema: z.core.$ZodType): boolean {
  const { def } = schema._zod;
  return def.type === "pipe" && (def as z.core.$ZodPipeDef).in._zod.def.type === "transform";
}
