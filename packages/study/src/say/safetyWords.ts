/** What goes under every answer, on paper, screen and page alike. */
export const safetyWords = [
  "Fuel burns, and an injection jet pierces skin: relieve pressure, keep flame and hot parts away, air the place, wear " +
    "gloves and eye protection, catch what drips and dispose of it properly.",
  "The operator's manual and local codes decide. Marine, aviation, road-tank and LPG work is for licensed people.",
] as const;
