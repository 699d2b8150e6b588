/**
 * Vacuum limits of a diesel lift pump where a manual gives none: 6 inHg with clean elements, 12 inHg at change.
 * Guidance of one engine family; the machine's own manual comes first.
 * US Army TM 5-3895-346-14 and TM 5-3810-300-24&P-3 item 11 (seen); conventional inHg of 3386.388640341 Pa.
 */
export const publishedVacuumLimits = {
  clean: 6 * 3386.388640341,
  atChange: 12 * 3386.388640341,
  source: "a public maintenance manual for one engine family (6 inHg clean, 12 inHg at change)",
} as const;
