import { type CleanlinessCode, type CodeSize, codeSizes, type ScaleNumber } from "./CleanlinessCode.js";

/**
 * The sizes at which fuel of one code is dirtier than another code allows: none means it is clean enough.
 *
 * Where the fuel was not counted it is taken as dirtier than any number; where the limit names none, all is allowed.
 *
 * @param code of the fuel
 * @param limit for example what an injection pump asks for
 * @example
 * dirtierThan(parseCode("16/13/9"), parseCode("15/13/10")) // ["at4"]
 */
export function dirtierThan(code: CleanlinessCode, limit: CleanlinessCode): CodeSize[] {
  return codeSizes.filter((size) => {
    const allowed = limit[size].scale;
    return allowed !== "*" && allowed !== "-" && ranked(code[size].scale) > ranked(allowed);
  });
}

function ranked(scale: ScaleNumber): number {
  if (scale === "*" || scale === "-") return Infinity;
  return scale === ">28" ? 29 : scale;
}
