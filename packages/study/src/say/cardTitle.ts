import type { CardFacts } from "../card/CardAnswer.js";
import { namesWords } from "./namesWords.js";

/** What a card is for. */
export function cardTitle({ elements, verdict }: Pick<CardFacts, "elements" | "verdict">): string {
  if (verdict === "cannot say") return "Nothing to change";
  const named = (screens: boolean) =>
    namesWords(elements.filter(({ style }) => (style === "screen") === screens).map(({ name }) => name));
  const [fresh, cleaned] = [named(false), named(true)];
  if (fresh === "") return `Clean ${cleaned}`;
  return cleaned === "" ? `Change ${fresh}` : `Change ${fresh}; clean ${cleaned}`;
}
