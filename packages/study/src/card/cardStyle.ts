import { LINE } from "./typeSize.js";

/** The style of a card set in type of a size, pt: ink on paper, cautions across, the rest in two columns. */
export function cardStyle(size: number): string {
  return `@page { margin: 8mm 10mm; }
* { box-sizing: border-box; }
html { background: #fff; }
body {
  margin: 0 auto; max-width: 196mm; color: #1d2a30; background: #fff;
  font: ${size.toFixed(1)}pt/${LINE} "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", "Segoe UI", "Open Sans", "Noto Sans", Helvetica, Arial, "Liberation Sans", sans-serif;
  font-variant-numeric: tabular-nums; -webkit-print-color-adjust: exact; print-color-adjust: exact;
}
header { border-bottom: 1.5pt solid #1d2a30; margin-bottom: 2mm; padding-bottom: 0.8mm; }
h1 { font-size: 1.5em; line-height: 1.15; margin: 0; overflow-wrap: anywhere; }
header p { margin: 0; overflow-wrap: anywhere; }
main { columns: 2; column-gap: 18pt; column-rule: 0.4pt solid #b9b2a3; }
h2 {
  font-size: 1.06em; line-height: 1.2; margin: 0 0 0.7mm; padding-bottom: 0.3mm; border-bottom: 0.6pt solid #55646b;
  break-after: avoid;
}
section { margin-bottom: 1.7mm; }
ul { list-style: none; margin: 0; padding: 0; }
li { break-inside: avoid; margin: 0 0 0.5mm; overflow-wrap: anywhere; }
li.step { position: relative; padding-left: 1.75em; }
li.step::before {
  content: ""; position: absolute; left: 0; top: 0.17em; width: 0.95em; height: 0.95em; border: 0.8pt solid #1d2a30;
  border-radius: 0.5mm;
}
b { font-weight: 700; }
.blank { display: inline-block; width: 5em; border-bottom: 0.6pt solid #1d2a30; }
.cautions { column-span: all; border: 1.2pt solid #a92f1d; border-radius: 1mm; padding: 1.3mm 2.2mm 0.8mm; margin-bottom: 2mm; }
.cautions h2 { color: #a92f1d; border-bottom-color: #a92f1d; }
.cautions ul { columns: 2; column-gap: 14pt; }
.log ul { display: grid; grid-template-columns: 1fr 1fr; column-gap: 3mm; }
.log { break-inside: avoid; }
.read { white-space: nowrap; }
.log .note, .log .line { grid-column: 1 / -1; }
.log .field + .note, .log .line + .note { margin-top: 1.2mm; }
.log .field, .log .line { display: flex; align-items: flex-end; gap: 1.5mm; min-height: 1.95em; margin: 0; }
.log .field::after, .log .line::after { content: ""; flex: 1; min-width: 12mm; border-bottom: 0.6pt solid #1d2a30; }
@media screen { body { padding: 6mm; } }
@media screen and (max-width: 700px) { body { font-size: 12pt; } main, .cautions ul { columns: 1; } }`;
}
