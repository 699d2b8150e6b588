/** What every part may carry besides its figures. */
export interface Named {
  /** What people call it; shown in answers. */
  readonly name?: string;
}

/** The given name as a field, or no field at all. */
export function nameOf(given: Named): Named {
  return given.name === undefined ? {} : { name: given.name };
}
