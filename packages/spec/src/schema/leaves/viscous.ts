import { shown } from "../../shown.js";
import { kinds } from "../../units/kinds.js";
import { type Viscosity, viscosity } from "../../units/viscosity.js";
import { type Leaf, leaf } from "../leaf.js";
import { asWritten } from "./asWritten.js";
import { fault } from "./fault.js";

/** A viscosity, kinematic or dynamic. */
export function viscous(): Leaf<Viscosity> {
  const [kinematic, dynamic] = [kinds.kinematicViscosity.example, kinds.dynamicViscosity.example];
  const either = `"${kinematic}" or "${dynamic}"`;
  const json = { type: "string", description: `a viscosity with its unit, such as ${either}`, unit: "m^2/s or Pa s" };
  return leaf<Viscosity>(`a viscosity such as ${either}`, json, { kinematic: Number.NaN }, (given) => {
    if (typeof given !== "string" && typeof given !== "number") {
      return fault("not a quantity", `${shown(given)} is not a quantity; write a viscosity such as ${either}`);
    }
    const read = viscosity(asWritten(given));
    return "fault" in read ? read : { value: read };
  });
}
