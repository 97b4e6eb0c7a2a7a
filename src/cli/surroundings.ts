import type { Asker } from "../desk/question.ts";

/** All that a command knows of the world it runs in. */
export interface Surroundings {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether `out` is a terminal that someone looks at. */
  readonly isTerminal: boolean;
  readonly columns: number;
  readonly hasColours: boolean;
  readonly now: () => Date;
  /** By its place, as the machine has it. */
  readonly timeZone: string;
  /** Where someone sits at a terminal who can be asked. */
  readonly asker?: () => Promise<Asker>;
  /** The folder the program is installed in. */
  readonly program: URL;
  /** Settles when the builder stops a command that runs on. */
  readonly untilStopped: () => Promise<void>;
}

/** The command was used in a way it cannot be; the message says what to do. */
export class WrongUse extends Error {}

export const EXIT = { fine: 0, problems: 1, wrongUse: 2, bug: 70, disk: 74 } as const;
