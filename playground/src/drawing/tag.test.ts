import { expect, test } from "vitest";
import { drawingText, plainText, tag } from "./tag.js";

test("tag(name, attributes, inside) writes one element, figures to the tenth, without what is undefined", () => {
  expect(tag("path", { d: "M0 0", "stroke-width": 1.26, fill: undefined })).toBe('<path d="M0 0" stroke-width="1.3"/>');
});

test("tag(name, attributes, inside) lets no name from a file become markup", () => {
  expect(tag("text", { "aria-label": 'a "b"' }, plainText("<script>&"))).toBe(
    '<text aria-label="a &quot;b&quot;">&lt;script&gt;&amp;</text>',
  );
});

test("drawingText(size, paper, inside) stands alone as a file", () => {
  expect(drawingText({ width: 20, height: 10 }, "#fff", "<g/>")).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" width="20" height="10" viewBox="0 0 20 10"><rect width="20" height="10" fill="#fff"/><g/></svg>',
  );
});
