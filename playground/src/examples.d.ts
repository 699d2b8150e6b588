/** The demonstration systems the page opens with, made when the page is built. */
declare module "virtual:opening" {
  export const examples: readonly import("./model/Example.js").Example[];
}

/** All demonstration systems. */
declare module "virtual:examples" {
  export const examples: readonly import("./model/Example.js").Example[];
}

/** The demonstration catalogue. */
declare module "virtual:catalogue" {
  export const elements: readonly import("@thirstline/spec/system").CatalogueElement[];
}

/** Invented gauge readings, and an invented yard, as the texts of their files. */
declare module "virtual:field" {
  interface DemoFile {
    readonly path: string;
    readonly text: string;
  }
  export const readings: readonly DemoFile[];
  export const yard: readonly DemoFile[];
}
