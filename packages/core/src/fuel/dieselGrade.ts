import { InputError } from "../InputError.js";
import { type DieselGrade, dieselGrades } from "./dieselGrades.js";

/**
 * The limits of a diesel grade. A grade bounds the fuel; it does not say what was delivered.
 *
 * @param standard "EN 590" or "ASTM D975"
 * @param grade A to F or 0 to 4; "No. 1-D" or "No. 2-D"
 * @throws InputError for a grade the standard does not have, naming those it has
 * @example
 * dieselGrade("EN 590", "F").coldFilterPluggingPointAtMost // 253.15 K, -20 degC
 */
export function dieselGrade(standard: DieselGrade["standard"], grade: string): DieselGrade {
  const ofStandard = dieselGrades.filter((one) => one.standard === standard);
  if (ofStandard.length === 0) throw new InputError("dieselGrade", "standard", "one of EN 590, ASTM D975", standard);
  const found = ofStandard.find((one) => one.grade === grade);
  if (found === undefined) {
    const known = ofStandard.map((one) => one.grade).join(", ");
    throw new InputError("dieselGrade", "grade", `one of ${known} (${standard})`, grade);
  }
  return found;
}
