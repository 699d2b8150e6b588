export { choice } from "./choice.js";
export { date } from "./date.js";
export { flag } from "./flag.js";
export { measured } from "./measured.js";
export { plain } from "./plain.js";
export { share } from "./share.js";
export { text } from "./text.js";
export { viscous } from "./viscous.js";
