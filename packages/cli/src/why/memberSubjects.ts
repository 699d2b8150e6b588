import {
  type Asked,
  figuresOf,
  isFigure,
  type Leaf,
  listed,
  type Members,
  type Working,
} from "@thirstline/study/working";
import type { Subject } from "./Subject.js";

/** How a figure of one of them was reached. */
type WorkingOf = (leaf: Leaf) => Working | null;

/** How they are told of, by their place in the answer, such as "machine 0", and their own name. */
export interface MemberLook {
  readonly labelOf: (of: string, name: string) => string;
  /** what one of them is, in words; null where its label says it */
  readonly aboutOf?: (of: string, name: string) => string | null;
}

/** What the figures of a question are of whose answer is about several things. */
export function memberSubjects(
  members: Members,
  workingOf: WorkingOf,
  { labelOf, aboutOf = () => null }: MemberLook,
): Subject[] {
  const asked: Asked = {};
  return members.names.flatMap((of): Subject[] => {
    const member = members.get(of);
    if (member === null) return [];
    const { name, system, own } = member;
    const names = own.map((one) => one.name);
    const brief = () => listed(own);
    return [
      {
        label: labelOf(of, name),
        about: aboutOf(of, name),
        name,
        own: names,
        general: system !== null,
        brief,
        list: () => [
          ...brief(),
          ...(system === null ? [] : figuresOf(system).filter((one) => !names.includes(one.name))),
        ],
        has: (figure) => names.includes(figure) || (system !== null && isFigure(system, figure, asked)),
        workings: (figure) => [workingOf({ of, figure, asked })],
      },
    ];
  });
}
