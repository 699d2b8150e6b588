/** What is used of jstat, which brings no types. */
declare module "jstat" {
  const jStat: {
    readonly studentt: { inv(share: number, freedom: number): number };
    readonly normal: { inv(share: number, mean: number, deviation: number): number };
    readonly chisquare: { inv(share: number, freedom: number): number };
  };
  export default jStat;
}
