// npm run bench: how cost grows with size, as the slope of log time over log size: 1 is in proportion. Least of many runs.

/**
 * @param {string} name
 * @param {readonly number[]} sizes
 * @param {(size: number) => () => unknown} make what is timed, made once a size
 */
export function slopeOf(name, sizes, make) {
  const points = sizes.map((size) => {
    const call = make(size);
    for (let round = 0; round < 30; round++) call();
    let least = Infinity;
    for (let round = 0; round < 60; round++) {
      const begin = performance.now();
      call();
      least = Math.min(least, performance.now() - begin);
    }
    return { x: Math.log(size), y: Math.log(least), least };
  });
  const mean = (/** @type {"x" | "y"} */ key) => points.reduce((sum, one) => sum + one[key], 0) / points.length;
  const [x, y] = [mean("x"), mean("y")];
  const across = points.reduce((sum, one) => sum + (one.x - x) * (one.y - y), 0);
  const slope = across / points.reduce((sum, one) => sum + (one.x - x) ** 2, 0);
  const times = points.map(({ least }) => least.toPrecision(2)).join(", ");
  const label = `${name}, ${sizes.join(", ")}`.padEnd(44);
  console.log(`${label}${slope.toFixed(2).padStart(6)}   ${times} ms`);
  return slope;
}
