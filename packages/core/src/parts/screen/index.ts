export { armourCannon } from "./armourCannon.js";
export { brundrett } from "./brundrett.js";
export { type Cloth, type ClothGeometry, clothGeometry } from "./clothGeometry.js";
export { ehrhardt } from "./ehrhardt.js";
export type { ScreenFluid } from "./ScreenFluid.js";
export { type ScreenLaw, type ScreenLawName, screenLaws } from "./screenLaws.js";
