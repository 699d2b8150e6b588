/** A small faultless system file, for tests to change a line of. */
export const smallSystem = `format: thirstline/1
name: test machine
fuel: { kind: diesel, grade: winter, temperature: 15 degC }
place: { altitude: 0 m }
demand: { burn: 20 L/h, return: 30 L/h }
tank: { full depth: 0.5 m, low depth: 0.1 m, vent: open }
suction:
  - line: { length: 3 m, bore: 10 mm, surface: rubber hose }
  - filter: { name: prefilter, flow test: [{ drop: 2 kPa, flow: 100 L/h, viscosity: 2.5 mPa s }] }
pump: { kind: fixed, flow: 120 L/h, relief: 60 kPa, relief to: inlet }
limits: { vacuum clean: 20 kPa, vacuum at change: 40 kPa }
`;
