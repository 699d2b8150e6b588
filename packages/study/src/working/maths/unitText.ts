/** Amounts in the asker's own currency: the parser knows none, so a dimension that nothing else here has stands in for it. */
const MONEY: readonly string[] = ["catalogue currency", "stated currency"];

/** A unit as the parser writes it: "kg/m3" is "kg/m^3", "1/m3" is "m^-3"; "" for a pure number. */
export function unitText(unit: string): string {
  if (unit === "1") return "";
  if (MONEY.includes(unit)) return "cd";
  const [over = "", under] = unit.split("/");
  const powers = (text: string) => text.replace(/([A-Za-z])(\d)/g, "$1^$2").replace(/^d$/, "day");
  if (over === "1")
    return powers(under ?? "").replace(/^([A-Za-z]+)(\^(\d+))?$/, (_, name, __, power = "1") => `${name}^-${power}`);
  return under === undefined ? powers(over) : `${powers(over)}/${powers(under)}`;
}
