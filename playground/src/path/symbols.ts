import type { System, SystemPart } from "@thirstline/spec/system";
import { nothing, type SVGTemplateResult, svg } from "lit";

// Symbols after ISO 1219-1, drawn about 0,0 with the fuel running along +x. `pipe` is what fuel runs through, `ink` an
// outline, `solid` filled with ink.

/** Half of the room a symbol takes along the path, px. */
export const REACH = 22;
/** How far behind a symbol's middle the arrow of its flow ends, px. */
export const ARROW_TIP = REACH + 14;

const through = svg`<path class="pipe" d="M-22 0H22" /><path class="fuel" d="M-22 0H22" />`;

/** The symbol of a part of the path. */
export function partSymbol(part: SystemPart): SVGTemplateResult {
  switch (part.part) {
    case "line":
      return part.surface === "rubber hose" ? hose : through;
    case "fitting":
      return fittingSymbol(part.kind ?? "");
    case "rise":
      return riseSymbol(part.height);
    case "valve":
      return part.oneWay ? checkValve(part.opening > 0) : cock;
    case "orifice":
      return svg`${through}<path class="ink" d="M-9 -13Q0 -2 9 -13M-9 13Q0 2 9 13" />`;
    case "strainer":
      return svg`${onCorner}<path class="mesh" d="M-9 -9L9 9M-14 -4L4 14M-4 -14L14 4M-9 9L9 -9M-14 4L4 -14M-4 14L14 -4" />`;
    case "filter":
      return filterSymbol(part);
    case "bank":
      return sideBySide;
  }
}

const onCorner = svg`<path class="body" d="M-19 0L0 -19L19 0L0 19Z" />`;

/** A bank where there is no room for its branches. */
const sideBySide = svg`<path class="body" d="M-22 0H-14L0 -14L14 0H22M-14 0L0 14L14 0" /><path class="body" d="M-9 -11L0 -20L9 -11L0 -2ZM-9 11L0 2L9 11L0 20Z" />`;

const hose = svg`<path class="pipe" d="M-22 0Q-11 13 0 0T22 0" /><path class="fuel" d="M-22 0Q-11 13 0 0T22 0" />`;

const cock = svg`${through}<path class="body" d="M-13 -10V10L13 -10V10Z" />`;

function filterSymbol({ style, blocked, reversed }: Extract<SystemPart, { part: "filter" }>): SVGTemplateResult {
  const bowl = style === "bowl" ? svg`<path class="ink" d="M-9.5 9.5H9.5M0 19V25" />` : nothing;
  const shut = blocked ? svg`<path class="wrong" d="M-15 -15L15 15M-15 15L15 -15" />` : nothing;
  const arrow = reversed ? svg`<path class="wrong" d="M8 -26H-8M-3 -30L-8 -26L-3 -22" />` : nothing;
  return svg`${onCorner}<path class="dashed" d="M0 -19V19" />${bowl}${shut}${arrow}`;
}

function fittingSymbol(kind: string): SVGTemplateResult {
  if (kind.startsWith("elbow")) {
    const bent = "M-22 0H-7V-10Q-7 -12 -5 -12H5Q7 -12 7 -10V0H22";
    return svg`<path class="pipe" d=${bent} /><path class="fuel" d=${bent} />`;
  }
  if (kind.startsWith("tee")) return svg`<path class="pipe" d="M0 0V-15" />${through}`;
  if (/valve|globe/.test(kind)) return cock;
  if (kind === "swing check") return checkValve(false);
  return svg`${through}<path class="ink" d="M-6 -10V10M6 -10V10" />`;
}

function checkValve(spring: boolean): SVGTemplateResult {
  const pipe = spring ? "M-22 0H-11M19 0H22" : "M-22 0H-11M8 0H22";
  const coil = spring ? svg`<path class="ink" d="M8 0L10 -7L13 7L16 -7L18 0M20 -9V9" />` : nothing;
  return svg`<path class="pipe" d=${pipe} /><path class="fuel" d=${pipe} />
    <path class="ink" d="M3 -14L-11 0L3 14" /><circle class="body" r="7.5" />${coil}`;
}

function riseSymbol(height: number): SVGTemplateResult {
  const tip = height < 0 ? "M-4 -14L0 -9L4 -14M0 -9V-27" : "M-4 -22L0 -27L4 -22M0 -27V-9";
  return svg`${through}<path class="ink" d=${tip} />`;
}

/** A tank open to the air, its fuel and the pick-up, which leaves to the side or `down`; `level` is its fill, 0 to 1. */
export function tankSymbol(level: number, down: boolean): SVGTemplateResult {
  const top = 24 - 44 * level;
  const pickUp = down ? "M0 16V26" : "M0 17V0H26";
  return svg`
    <path class="level" d="M-24 ${top}H24V24H-24Z" />
    <path class="surface" d="M-24 ${top}H24" />
    <path class="ink" d="M-24 -24V24H24V-24" />
    <path class="pipe" d=${pickUp} /><path class="fuel" d=${pickUp} />`;
}

/** A pump by its kind: a circle with a solid triangle; the pulse pump with its diaphragm. */
export function pumpSymbol(kind: System["pump"]["kind"]): SVGTemplateResult {
  const membrane = kind === "pulse" ? svg`<path class="ink" d="M-12 -15Q2 0 -12 15" />` : nothing;
  return svg`<circle class="body" r="20" /><path class="solid" d="M20 0L1 -11V11Z" />${membrane}`;
}

/** Where the path ends: the injection pump, or the engine itself. */
export function engineSymbol(injection: boolean): SVGTemplateResult {
  return injection
    ? svg`<rect class="body" x="-22" y="-22" width="44" height="44" rx="2" /><circle class="ink" r="14" />
        <path class="solid" d="M14 0L1 -8V8Z" />`
    : svg`<rect class="body" x="-22" y="-22" width="44" height="44" rx="2" />
        <path class="ink" d="M-13 -12H-3V4H-13ZM3 -12H13V4H3ZM-8 4V15H8V4M-13 -5H-3M3 -5H13" />`;
}
