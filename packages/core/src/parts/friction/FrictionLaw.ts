import { LAMINAR_END, TURBULENT_START } from "./borders.js";
import { colebrookRoot, TWO_OVER_LN10 } from "./colebrookRoot.js";

/**
 * How the passage between laminar and turbulent flow is drawn: *smooth* joins Re 2300 to Re 4000 without a step;
 * *early* takes Colebrook–White from Re 2300 up, which is the worse case there and has a step at 2300.
 */
export type Passage = "smooth" | "early";

/**
 * Friction of one wall roughness over all Reynolds numbers, as G(Re) = f Re^2.
 *
 * In G a line's drop is a constant times G, so G must rise with Re: 64 Re in laminar flow, Re^2/root^2 in turbulent
 * flow, and between them the cubic that meets value and slope at both ends. Its end slopes stay below three times the
 * mean slope for every roughness up to 0.05, which makes it monotone (Fritsch and Carlson, SIAM J. Numer. Anal. 17
 * (1980) 238).
 *
 * `update` turns `reynolds` into `value` (G) and `slope` (dG/dRe): the solver always wants both.
 */
export class FrictionLaw {
  /** set by the caller, 0 or more */
  reynolds = 0;
  value = 0;
  slope = 64;
  private readonly rough: number;
  private readonly relativeRoughness: number;
  private readonly turbulentFrom: number;
  // Where the passage ends; worked out when it is first needed, since most lines never get there.
  private endValue = Number.NaN;
  private endSlope = Number.NaN;

  constructor(relativeRoughness: number, passage: Passage) {
    this.relativeRoughness = relativeRoughness;
    this.rough = relativeRoughness / 3.7;
    this.turbulentFrom = passage === "early" ? LAMINAR_END : TURBULENT_START;
  }

  update(): void {
    if (this.reynolds <= LAMINAR_END) {
      this.value = 64 * this.reynolds;
      this.slope = 64;
    } else if (this.reynolds < this.turbulentFrom) this.between();
    else this.turbulent();
  }

  private findEnd(): void {
    const { reynolds } = this;
    this.reynolds = TURBULENT_START;
    this.turbulent();
    this.endValue = this.value;
    this.endSlope = this.slope;
    this.reynolds = reynolds;
  }

  private turbulent(): void {
    const { reynolds, rough } = this;
    const root = colebrookRoot(reynolds, this.relativeRoughness);
    const smooth = 2.51 / reynolds;
    const pull = (TWO_OVER_LN10 * smooth) / (rough + smooth * root);
    const frictionTimesReynolds = reynolds / (root * root);
    this.value = frictionTimesReynolds * reynolds;
    this.slope = (2 * frictionTimesReynolds) / (1 + pull);
  }

  private between(): void {
    if (Number.isNaN(this.endValue)) this.findEnd();
    const width = TURBULENT_START - LAMINAR_END;
    const start = 64 * LAMINAR_END;
    const rise = this.endValue - start;
    const t = (this.reynolds - LAMINAR_END) / width;
    const first = 64 * width;
    const last = this.endSlope * width;
    // start + first t + c t^2 + d t^3 with the end's value and slope met at t = 1
    const c = 3 * rise - 2 * first - last;
    const d = first + last - 2 * rise;
    this.value = start + t * (first + t * (c + t * d));
    this.slope = (first + t * (2 * c + t * 3 * d)) / width;
  }
}
