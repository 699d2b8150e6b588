// Three explicit forms of the turbulent friction factor, as witnesses for Colebrook–White: each was made by other people
// from other algebra and claims to follow it within a stated bound. Values and sources: references/lines/explicit-*.csv.

/** P. K. Swamee and A. K. Jain (1976). */
export function swameeJain(reynolds: number, rough: number): number {
  return 0.25 / Math.log10(rough / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

/** S. E. Haaland (1983). */
export function haaland(reynolds: number, rough: number): number {
  return 1 / (-1.8 * Math.log10((rough / 3.7) ** 1.11 + 6.9 / reynolds)) ** 2;
}

/** S. W. Churchill (1977): laminar flow, the passage and turbulent flow in one. */
export function churchill(reynolds: number, rough: number): number {
  const turbulent = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * rough))) ** 16;
  const passage = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + (turbulent + passage) ** -1.5) ** (1 / 12);
}
