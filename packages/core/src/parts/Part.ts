import type { Filter } from "./filter/index.js";
import type { Fitting } from "./fitting.js";
import type { Line } from "./line.js";
import type { Orifice } from "./orifice.js";
import type { Rise } from "./rise.js";
import type { Strainer } from "./strainer.js";
import type { Valve } from "./valve.js";

/** One part of a path. */
export type Part = Line | Fitting | Filter | Rise | Valve | Orifice | Strainer;
