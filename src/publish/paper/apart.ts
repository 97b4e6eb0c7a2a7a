import { fork } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { dataOf, type Paper, type PaperData } from "./blocks.ts";

/** A paper with its pictures and drawings, by the names that it calls them, and the file that it becomes. */
interface PaperTask {
  readonly paper: Paper;
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly to: string;
}

/** The same as it goes to that process: text takes a fraction of the time that its parts do. */
export type PaperMessage = Omit<PaperTask, "paper"> & { readonly paper: PaperData };

/** `failed` is what went wrong, with its stack. */
export interface PaperReply {
  readonly failed?: string;
}

export interface Setter {
  /**
   * One after another.
   * @throws Error where it cannot be set, which is a mistake of the program
   */
  readonly set: (task: PaperTask) => Promise<void>;
  /** Waits until that process is gone, and its memory with it. */
  readonly end: () => Promise<void>;
}

/** Sets papers in a process of its own, with which the memory ends that Typst takes for them. `program` is where the program is installed. */
export function setterApart(program: string): Setter {
  const child = fork(join(program, ".build", "set-papers.js"), [], {
    execArgv: [],
    serialization: "advanced",
    stdio: ["ignore", 2, 2, "ipc"],
  });
  let settle: (failed?: string) => void = () => undefined;
  child.on("message", (reply: PaperReply) => settle(reply.failed));
  child.on("error", ({ message }) => settle(message));
  child.on("exit", (code, signal) => settle(`the process that sets them ended (${signal ?? code})`));
  const set = (task: PaperTask): Promise<void> =>
    new Promise((resolve, reject) => {
      settle = (failed) => (failed === undefined ? resolve() : reject(new Error(`A PDF could not be set: ${failed}`)));
      const message: PaperMessage = { ...task, paper: dataOf(task.paper) };
      child.send(message, (error) => error && settle(error.message));
    });
  const gone = once(child, "exit").catch(() => undefined);
  const end = async (): Promise<void> => {
    if (child.connected) child.disconnect();
    if (child.pid !== undefined) await gone;
  };
  return { set, end };
}
