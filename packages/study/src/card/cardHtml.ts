import { capital } from "../say/capital.js";
import { cardTitle } from "../say/cardTitle.js";
import type { Words } from "../say/words.js";
import type { CardAnswer, CardItem, CardSection } from "./CardAnswer.js";
import { cardStyle } from "./cardStyle.js";
import { escaped } from "./escaped.js";
import { typeSize } from "./typeSize.js";

/**
 * A card as a page to print: one whole HTML document, ink on paper, boxes to tick and lines to write on. It has its style
 * inside and no script, and fetches nothing.
 *
 * Its type is as large as lets the demonstration systems' cards stand on one sheet, A4 or US Letter; of a system with very
 * many elements it is as small as can be read at arm's length, and the card may go on to a second sheet.
 *
 * @param answer from `card`
 * @returns the document; every text of the system file in it is escaped
 */
export function cardHtml(answer: CardAnswer): string {
  const title = `${answer.system}: ${cardTitle(answer)}`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>
${cardStyle(typeSize(answer.sections))}
</style>
</head>
<body>
<header>
<h1>${escaped(answer.system)}</h1>
<p>${escaped(cardTitle(answer))}</p>
</header>
<main>
${answer.sections.map(sectionHtml).join("\n")}
</main>
</body>
</html>
`;
}

function sectionHtml({ name, title, items }: CardSection): string {
  return `<section class="${name.replaceAll(" ", "-")}">
<h2>${escaped(title)}</h2>
<ul>
${items.map(itemHtml).join("\n")}
</ul>
</section>`;
}

function itemHtml({ kind, words }: CardItem): string {
  return `<li class="${kind}">${wordsHtml(words)}</li>`;
}

/** Figures stand out; a row of underscores is a place to write in. */
function wordsHtml(words: Words): string {
  return words
    .map((piece, at) => {
      if (typeof piece !== "string") return `<b>${escaped(piece.text)}</b>`;
      const text = escaped(at === 0 ? capital(piece) : piece);
      return text.replace(/(\S+ )?_{3,}/g, '<span class="read">$1<span class="blank"></span></span>');
    })
    .join("");
}
