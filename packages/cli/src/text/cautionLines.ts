import type { Caution } from "@thirstline/spec";
import { type CheckPoint, capital, cautionText, quantity, type UnitSystem } from "@thirstline/study";
import { wrap } from "./wrap.js";

/** Codes of cautions about what a filter catches, which neither verdict nor vacuum depends on. */
const ELSEWHERE: ReadonlySet<string> = new Set(["one beta"]);

/** A caution and the temperatures it is said of, K. */
interface Said {
  readonly text: string;
  readonly at: number[];
}

/** Every caution once, the file's first; one that is not for all temperatures says for which. */
export function cautionLines(
  fileCautions: readonly Caution[],
  points: readonly Pick<CheckPoint, "cautions" | "temperature">[],
  units: UnitSystem,
): string[] {
  const said = new Map<string, Said>();
  for (const { cautions, temperature } of points) {
    for (const caution of cautions) {
      const text = cautionText(caution, units);
      const before = said.get(text) ?? { text, at: [] };
      if (!before.at.includes(temperature)) before.at.push(temperature);
      said.set(text, before);
    }
  }
  const found = [...said.values()].map(({ text, at }) => {
    const some = at.length < points.length;
    return some
      ? `At ${at.map((one) => quantity(one, "temperature", units)).join(", ")}: ${text}.`
      : `${capital(text)}.`;
  });
  return cautionItems([...fileCautionTexts(fileCautions), ...found]);
}

/** What a file leaves open, as sentences. */
export function fileCautionTexts(fileCautions: readonly Caution[]): string[] {
  return fileCautions.filter(({ code }) => !ELSEWHERE.has(code)).map(({ message }) => message);
}

/** Cautions one under another; none leave no line. */
export function cautionItems(texts: readonly string[]): string[] {
  if (texts.length === 0) return [];
  const sentences = texts.map((text) => (text.endsWith(".") ? text : `${capital(text)}.`));
  return ["Keep in mind", ...sentences.flatMap((text) => wrap(`- ${text}`, "  ", 76).map((line) => `  ${line}`))];
}
