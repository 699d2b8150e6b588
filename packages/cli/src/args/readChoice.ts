import { type KindName, nearest, quantity } from "@thirstline/spec";
import { type AskedRating, type RemedyKind, remedyKinds } from "@thirstline/study";
import type { ArgumentFault } from "./ArgumentFault.js";
import type { Choice } from "./Choice.js";
import type { OptionName } from "./options.js";
import type { Request } from "./Request.js";

/** Arrangements shown when nobody says how many. */
const ROWS = 10;

/** Understands the options of choosing commands, or says everything that is wrong with them. */
export function readChoice({ given }: Request): Choice | { readonly faults: readonly ArgumentFault[] } {
  const reader = new Reader(given);
  const choice: Choice = {
    at: given.get("at") ?? [],
    with: reader.text("with"),
    from: reader.text("from"),
    fitted: reader.text("fitted"),
    code: reader.code(),
    rating: reader.rating(),
    interval: reader.quantities("interval", "duration")[0] ?? null,
    labour: reader.amount("labour"),
    stoppage: reader.amount("stoppage"),
    costs: reader.costs(),
    side: reader.side(),
    parallel: reader.whole("parallel", 8),
    stages: reader.whole("stages", 3),
    bores: reader.quantities("bore", "bore"),
    rows: reader.whole("rows", 1000) ?? ROWS,
  };
  return reader.faults.length > 0 ? { faults: reader.faults } : choice;
}

/** Reads one option after another and gathers what is wrong. */
class Reader {
  readonly faults: ArgumentFault[] = [];
  private readonly given: Request["given"];

  constructor(given: Request["given"]) {
    this.given = given;
  }

  text(name: OptionName): string | null {
    return this.given.get(name)?.[0] ?? null;
  }

  quantities(name: OptionName, kind: KindName): number[] {
    return (this.given.get(name) ?? []).flatMap((text) => {
      const read = quantity(text, kind);
      if ("value" in read) return [read.value];
      this.refuse(name, read.fault.code, read.fault.message);
      return [];
    });
  }

  whole(name: OptionName, most: number): number | null {
    const text = this.text(name);
    if (text === null) return null;
    const number = Number(text);
    if (/^\d+$/.test(text) && number >= 1 && number <= most) return number;
    this.refuse(name, "out of range", `"${text}" is not a whole number from 1 to ${most}`);
    return null;
  }

  amount(name: OptionName): number | null {
    const text = this.text(name);
    if (text === null) return null;
    if (/^\d{1,9}(\.\d+)?$/.test(text)) return Number(text);
    this.refuse(name, "not an amount", `"${text}" is not an amount; write a number without its currency, such as 60`);
    return null;
  }

  code(): string | null {
    const text = this.text("code");
    if (text === null || /^\d{1,2}\/\d{1,2}\/\d{1,2}$/.test(text)) return text;
    this.refuse("code", "not a code", `"${text}" is not a cleanliness code; write one such as 15/13/10`);
    return null;
  }

  rating(): AskedRating | null {
    const text = this.text("rating");
    if (text === null) return null;
    const [, beta = "", size = ""] = /^beta (\d{1,4}) at (.+)$/.exec(text.trim()) ?? [];
    const read = quantity(size, "betaSize");
    if ("value" in read && Number(beta) > 1) return { beta: Number(beta), size: read.value };
    this.refuse(
      "rating",
      "not a rating",
      `"${text}" is not a rating that is tested; write one such as "beta 75 at 10 um"`,
    );
    return null;
  }

  side(): Choice["side"] {
    const text = this.text("side");
    if (text === null || text === "suction" || text === "delivery") return text;
    this.refuse("side", "unknown side", `"${text}" is neither suction nor delivery`);
    return null;
  }

  costs(): Choice["costs"] {
    const costs: Partial<Record<RemedyKind, number>> = {};
    for (const text of this.given.get("cost") ?? []) {
      const [, kind = "", amount = ""] = /^(.*?) *= *(\d{1,9}(?:\.\d+)?)$/.exec(text.trim()) ?? [];
      const known = remedyKinds.find((one) => one === kind);
      if (known) costs[known] = Number(amount);
      else this.refuse("cost", "unknown change", this.costHint(text, kind));
    }
    return costs;
  }

  private costHint(text: string, kind: string): string {
    if (kind === "") return `"${text}" is not a change and its cost; write it as "wider bore=120"`;
    const near = nearest(kind, remedyKinds);
    const hint = near === undefined ? `there are ${remedyKinds.join(", ")}` : `did you mean "${near}"?`;
    return `"${kind}" is not a kind of change; ${hint}`;
  }

  private refuse(name: OptionName, code: string, message: string): void {
    this.faults.push({ at: `--${name}`, code, message });
  }
}
