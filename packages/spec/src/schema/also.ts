import type { z as Z } from "zod";

/** Adds a fault at a path below the value checked; an empty path is the value itself. */
export type Report = (path: readonly (string | number)[], code: string, message: string) => void;

/**
 * Adds a check across the fields of a block, which runs also when some of them are faulty, so that all faults come at
 * once. Fields that could not be read are NaN or undefined there: every comparison with NaN is false, and a check asks
 * in such a way that false means no fault.
 */
export function also<Schema extends Z.ZodType>(
  schema: Schema,
  check: (data: Partial<Z.output<Schema>>, report: Report) => void,
): Schema {
  return schema.superRefine(
    (data, context) => {
      check(data as Partial<Z.output<Schema>>, (path, code, message) => {
        context.addIssue({ code: "custom", message, path: [...path], params: { code } });
      });
    },
    { when: (payload) => hasForm(payload.value, schema) },
  );
}

/** Whether a value is a list where a list is wanted and a block where one is: otherwise that alone is its fault. */
function hasForm(value: unknown, schema: Z.ZodType): boolean {
  const wantsList = schema._zod.def.type === "array";
  return typeof value === "object" && value !== null && Array.isArray(value) === wantsList;
}
