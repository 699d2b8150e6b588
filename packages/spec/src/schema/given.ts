/** An object's type with the fields that may be undefined made optional. */
export type Given<Fields> = {
  [Key in keyof Fields as undefined extends Fields[Key] ? never : Key]: Fields[Key];
} & {
  [Key in keyof Fields as undefined extends Fields[Key] ? Key : never]?: Exclude<Fields[Key], undefined>;
};

/** Leaves out what was not given: a field is there with a value, or not at all. */
export function given<const Fields extends object>(fields: Fields): Given<Fields> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Given<Fields>;
}
