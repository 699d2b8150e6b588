import "@fontsource-variable/atkinson-hyperlegible-next/index.css";
import "@fontsource/atkinson-hyperlegible-mono/latin-400.css";
import { examples } from "virtual:opening";
import "./elements/thirstline-page.js";
import type { Example } from "./model/Example.js";
import { trustedScript } from "./model/trustedScript.js";
import { whenPainted } from "./model/whenPainted.js";

// The ferry opens first; its file is named here and where the page is built.
const ferryFirst = (all: readonly Example[]): Example[] =>
  [...all].sort((a, b) => Number(b.file === "heron.yaml") - Number(a.file === "heron.yaml"));

const page = document.createElement("thirstline-page");
page.examples = ferryFirst(examples);
document.body.append(page);

whenPainted()
  .then(() => import("virtual:examples"))
  .then((rest) => {
    page.examples = ferryFirst(rest.examples);
  });

if (import.meta.env.PROD && "serviceWorker" in navigator) {
  // Late, so that it does not compete with the page; where it is refused the page works, with a network.
  addEventListener("load", () => {
    navigator.serviceWorker.register(trustedScript(new URL("sw.js", document.baseURI).href)).catch(() => undefined);
  });
}
