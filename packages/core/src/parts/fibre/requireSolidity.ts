import { InputError } from "../../InputError.js";

/** Refuses a solidity (fibre volume over bed volume) at or outside the open interval in which a law means anything. */
export function requireSolidity(caller: string, solidity: number, below: number): void {
  if (!(typeof solidity === "number" && solidity > 0 && solidity < below)) {
    throw new InputError(caller, "solidity", `more than 0 and less than ${below}`, solidity);
  }
}
