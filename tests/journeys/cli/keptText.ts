/** A command line and everything it did, as it is kept. */
export function keptText(
  args: readonly string[],
  { stdout, stderr, code }: { readonly stdout: string; readonly stderr: string; readonly code: number | null },
): string {
  const words = args.map((arg) => (/^[\w./=-]+$/.test(arg) ? arg : `"${arg}"`));
  const parts = [`$ thirstline ${words.join(" ")}`.trimEnd(), `exit code ${code}`];
  return `${[...parts, `--- standard output\n${stdout}--- standard error\n${stderr}`].join("\n")}---\n`;
}
