import { expect, test } from "vitest";
import { cardElement, cardFacts } from "../../../../tests/support/cardFacts.js";
import { fig, say } from "../say/words.js";
import type { CardAnswer, CardItem } from "./CardAnswer.js";
import { cardHtml } from "./cardHtml.js";
import { cardStyle } from "./cardStyle.js";
import { escaped } from "./escaped.js";

const answer = (items: readonly CardItem[]): CardAnswer => ({
  ...cardFacts({ system: 'Heron "2" & <tender>', elements: [cardElement("A'")] }),
  units: "metric",
  sections: [
    { name: "cautions", title: "Before anything else", items: [] },
    { name: "at hand", title: "Have <at> hand", items },
  ],
});
const item = (kind: CardItem["kind"], words: CardItem["words"]): CardItem => ({ kind, words });
/** The body's list of a card with these items. */
const listOf = (...items: CardItem[]) =>
  /<h2>Have &lt;at&gt; hand<\/h2>\n<ul>\n([\s\S]*?)\n<\/ul>/.exec(cardHtml(answer(items)))?.[1]?.split("\n");

test("cardHtml(answer) is one whole document, with every text of the file in it escaped", () => {
  const html = cardHtml(answer([item("step", ["wipe"]), item("note", ["read"])]));
  expect(html.replace(/<style>[\s\S]*<\/style>/, "<style></style>")).toBe(`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Heron &quot;2&quot; &amp; &lt;tender&gt;: Change A&#39;</title>
<style></style>
</head>
<body>
<header>
<h1>Heron &quot;2&quot; &amp; &lt;tender&gt;</h1>
<p>Change A&#39;</p>
</header>
<main>
<section class="cautions">
<h2>Before anything else</h2>
<ul>

</ul>
</section>
<section class="at-hand">
<h2>Have &lt;at&gt; hand</h2>
<ul>
<li class="step">Wipe</li>
<li class="note">Read</li>
</ul>
</section>
</main>
</body>
</html>
`);
});

test("cardHtml(answer) has its style inside, in the largest type that a short card is set in", () => {
  expect(cardHtml(answer([]))).toContain(`<style>\n${cardStyle(10)}\n</style>`);
});

test("cardHtml(answer) lets figures stand out, and begins each item with a large letter, a figure excepted", () => {
  const words = say`the vacuum is ${fig("vacuum", "9 < 10 kPa")} now`;
  expect(listOf(item("step", words), item("note", say`${fig("count", "a few")} readings`))).toEqual([
    '<li class="step">The vacuum is <b>9 &lt; 10 kPa</b> now</li>',
    '<li class="note"><b>a few</b> readings</li>',
  ]);
});

test("cardHtml(answer) makes a row of underscores a place to write in, with the word before it", () => {
  expect(
    listOf(item("step", ["at full load. Read: ______"]), item("step", ["______"]), item("step", ["a_b __ c"])),
  ).toEqual([
    '<li class="step">At full load. <span class="read">Read: <span class="blank"></span></span></li>',
    '<li class="step"><span class="read"><span class="blank"></span></span></li>',
    '<li class="step">A_b __ c</li>',
  ]);
});

test("cardStyle(size) sets the type to a tenth of a point, and has a rule for every class of the page", () => {
  expect(cardStyle(8.25)).toMatch(/\n {2}font: 8\.[23]pt\/1\.28 "/);
  for (const name of ["step", "field", "line", "note", "cautions", "log", "read", "blank"]) {
    expect(cardStyle(8)).toMatch(new RegExp(`\\.${name}\\b[^{}]*\\{`));
  }
});

test("escaped(text) is a text as HTML shows it", () => {
  expect(escaped(`a & b < c > d "e" 'f'`)).toBe("a &amp; b &lt; c &gt; d &quot;e&quot; &#39;f&#39;");
  expect(escaped("plain")).toBe("plain");
});

test("cardHtml(answer) makes a large letter of the first piece of an item only", () => {
  expect(listOf(item("note", ["change ", "it"]))).toEqual(['<li class="note">Change it</li>']);
});
