/** Text of a file that is to stand as it is, without quotes. */
export class Raw {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}
