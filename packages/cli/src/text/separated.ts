/** Blocks with an empty line between them; an empty block leaves none. */
export function separated(blocks: readonly (readonly string[])[]): string[] {
  return blocks.filter((block) => block.length > 0).flatMap((block, at) => (at === 0 ? block : ["", ...block]));
}
