/** Something wrong with the command line; `at` is the option or command it concerns. */
export interface ArgumentFault {
  readonly at: string;
  readonly code: string;
  readonly message: string;
}
