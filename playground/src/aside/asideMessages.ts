/** A message with the number of what it answers. */
export interface Numbered<Message> {
  readonly id: number;
  readonly message: Message;
}

/** How far something is. */
export interface Progress {
  readonly kind: "progress";
  readonly words: string;
  readonly done: number;
  readonly of: number;
}

/** That there is no answer, in words. */
export interface Refused {
  readonly kind: "refused";
  readonly why: string;
}

/** An answer; one that says it is not done comes again, with more of it. */
export interface Answer {
  readonly kind: string;
  readonly done?: boolean;
}
