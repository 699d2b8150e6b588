// What "#mathjs" is to a bundler: a default export like that of mathjs's single-file build, which Node takes, with only
// the parts the unit class is made of, so that nothing else of mathjs comes into a page.
import { create, createBigNumberClass, createComplexClass, createFractionClass, createUnitClass } from "mathjs";

export default {
  create: () => create({ createBigNumberClass, createComplexClass, createFractionClass, createUnitClass }),
};
