/** Something that cannot be done, said for people in whole sentences. */
export class PlainFault extends Error {}
