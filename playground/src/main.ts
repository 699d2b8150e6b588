import { html, render } from "lit";

render(
  html`<main>
    <h1>Thirstline</h1>
    <p>Will the pump get the fuel it asks for, through these filters and lines?</p>
  </main>`,
  document.body,
);
