import type { BesideThread } from './beside/beside-thread.ts';

/** What a command touches outside itself; tests give their own. */
export interface Surroundings {
  /** takes one line of output at a time */
  readonly out: (line: string) => void;
  /** @throws the system's error where it cannot */
  readonly readFile: (path: string) => Uint8Array;
  /** writes a new file; @throws the system's error where it cannot, also when there is one of that name already */
  readonly writeNewFile: (path: string, bytes: Uint8Array) => void;
  /** epoch ms */
  readonly now: () => number;
  /** a clock that only goes forward, for measuring. [ms] */
  readonly elapsed: () => number;
  /** a thread to search beside; where it is not given, or null, a search goes alone */
  readonly besideThread?: () => BesideThread | null;
  /** IANA zone of this device */
  readonly timeZone: string;
}

/** Exit codes of every command. */
export const exit = {
  /** done */
  done: 0,
  /** the input was refused, or something is wrong in it */
  refused: 1,
  /** the command was called wrongly */
  usage: 2,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];
