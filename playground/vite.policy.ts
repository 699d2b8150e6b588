import type { Plugin } from "vite";

const rules = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types lit-html thirstline",
];

/**
 * Puts a content security policy into the built page: nothing from anywhere else, nothing inline, nothing evaluated.
 * Builds only, because the development server puts scripts of its own into the page.
 */
export function policy(): Plugin {
  return {
    name: "policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: rules.join("; ") },
        injectTo: "head-prepend",
      },
    ],
  };
}
