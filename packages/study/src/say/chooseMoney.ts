/** An amount of money, in whatever currency the catalogue is: "84", "7.50". */
export function moneyText(amount: number): string {
  return Math.abs(amount) < 100 ? amount.toFixed(2).replace(/\.00$/, "") : amount.toFixed(0);
}
