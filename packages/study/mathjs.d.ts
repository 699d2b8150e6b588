/** What both builds behind "#mathjs" have in common, as far as it is used here. */
declare const mathjs: { readonly create: () => Record<string, unknown> };
export default mathjs;
