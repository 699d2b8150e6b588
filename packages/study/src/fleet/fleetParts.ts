import type { ShelfPart } from "@thirstline/spec/system";
import { dateOf, SECONDS_A_DAY } from "./day.js";
import type { FleetPart } from "./FleetAnswer.js";
import type { Judged, JudgedElement } from "./fleetEntry.js";
import type { Window } from "./groupOf.js";

interface Need {
  readonly part: string;
  readonly style: string | null;
  readonly systems: Set<string>;
  readonly machines: Set<string>;
  readonly days: number[];
  readonly onShelf: boolean;
}

/**
 * Parts that fall due within the window, by what the shelf calls them; elements the shelf does not know are one part where
 * name, style and figures are the same. What is due again within the window, after the change now ahead, counts again.
 */
export function fleetParts(judged: readonly Judged[], shelf: readonly ShelfPart[], window: Window): FleetPart[] {
  const needs = new Map<string, Need>();
  for (const one of judged) {
    if (one.entry.group === "cannot say") continue;
    for (const element of one.elements) {
      const days = daysOf(element, one, window);
      if (days.length === 0) continue;
      const { key, need } = needOf(element, one.entry.system, shelf);
      const known = needs.get(key) ?? need;
      needs.set(key, known);
      known.systems.add(one.entry.system);
      known.machines.add(one.entry.machine);
      known.days.push(...days);
    }
  }
  return [...needs.values()].map((need) => partOf(need, shelf, window)).sort(inOrder);
}

function inOrder(left: FleetPart, right: FleetPart): number {
  const [one, other] = [left.part + left.systems.join(), right.part + right.systems.join()];
  return right.short - left.short || right.count - left.count || (one < other ? -1 : one > other ? 1 : 0);
}

/** Days, by `dayOf`, on which an element is changed within the window; what is past due is changed today. */
function daysOf({ limits }: JudgedElement, { hours, distance }: Judged, { on, within }: Window): number[] {
  const first = Math.max(limits[0]?.day ?? Infinity, on);
  const rates = { hours: hours?.rate.perDay ?? 0, distance: distance?.rate.perDay ?? 0 };
  const lasts = limits.map(({ by, after }) => {
    if (after === null) return Infinity;
    const perDay = by === "distance" ? rates.distance : rates.hours;
    return perDay > 0 ? Math.max(1, Math.floor(after / perDay)) : Infinity;
  });
  const again = Math.min(...lasts);
  const days: number[] = [];
  for (let day = first; day <= on + within; day += again) days.push(day);
  return days;
}

function needOf({ state }: JudgedElement, system: string, shelf: readonly ShelfPart[]): { key: string; need: Need } {
  const { name, style, figures } = state.element;
  const own = shelf.filter(({ element }) => element === name);
  const fits = own.find((one) => one.system === system) ?? own.find((one) => one.system === null);
  const need = { style, systems: new Set<string>(), machines: new Set<string>(), days: [] };
  if (fits) return { key: `shelf ${fits.part}`, need: { part: fits.part, ...need, onShelf: true } };
  return { key: `${name} ${style} ${figures}`, need: { part: name, ...need, onShelf: false } };
}

function partOf(
  { part, style, systems, machines, days, onShelf }: Need,
  shelf: readonly ShelfPart[],
  window: Window,
): FleetPart {
  const rows = onShelf ? shelf.filter((one) => one.part === part) : [];
  const onHand = rows.find((one) => one.onHand !== null)?.onHand ?? null;
  const delivery = rows.find((one) => one.delivery !== null)?.delivery ?? null;
  days.sort((left, right) => left - right);
  const missed = days[onHand ?? 0];
  return {
    part,
    style,
    systems: [...systems].sort(),
    count: days.length,
    machines: machines.size,
    first: dateOf(days[0] ?? window.on),
    onHand,
    delivery,
    short: Math.max(0, days.length - (onHand ?? 0)),
    orderBy: missed === undefined || delivery === null ? null : dateOf(missed - Math.ceil(delivery / SECONDS_A_DAY)),
  };
}
