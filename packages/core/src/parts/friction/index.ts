export { LAMINAR_END, MOST_ROUGH, type Regime, regimeOf, TURBULENT_START } from "./borders.js";
export { colebrook } from "./colebrook.js";
export { FrictionLaw, type Passage } from "./FrictionLaw.js";
export { frictionFactor } from "./frictionFactor.js";
