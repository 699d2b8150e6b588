/** Letters that have a name in formulas: as typesetters write them, and as a text shows them. */
export const greek: Readonly<Record<string, { readonly tex: string; readonly text: string }>> = {
  alpha: { tex: "\\alpha", text: "α" },
  beta: { tex: "\\beta", text: "β" },
  epsilon: { tex: "\\varepsilon", text: "ε" },
  eta: { tex: "\\eta", text: "η" },
  mu: { tex: "\\mu", text: "µ" },
  nu: { tex: "\\nu", text: "ν" },
  phi: { tex: "\\varphi", text: "φ" },
  pi: { tex: "\\pi", text: "π" },
  rho: { tex: "\\rho", text: "ρ" },
};
