/** The demonstration systems the page opens with, made when the page is built. */
declare module "virtual:opening" {
  export const examples: readonly import("./model/Example.js").Example[];
}

/** All demonstration systems. */
declare module "virtual:examples" {
  export const examples: readonly import("./model/Example.js").Example[];
}
