import { fork } from "node:child_process";
import { join } from "node:path";
import type { OwnFailure, OwnReply, OwnTask } from "./task.ts";

/** Longer than any page takes; whoever waits for one that never ends is told so. */
const MOST_MS = 120_000;

/**
 * Makes own pages in a process of its own, which is given the task alone and runs in the folder of the record. What it prints goes where
 * errors go. `program` is where the program is installed.
 */
export function runOwn(task: OwnTask, content: string, program: string): Promise<OwnReply | OwnFailure> {
  return new Promise((resolve) => {
    const child = fork(join(program, ".build", "own-pages.js"), [], {
      cwd: content,
      execArgv: [],
      stdio: ["ignore", 2, 2, "ipc"],
    });
    const end = (reply: OwnReply | OwnFailure): void => {
      clearTimeout(timer);
      resolve(reply);
    };
    const timer = setTimeout(() => {
      end({ failed: `own pages were not made within ${MOST_MS / 1000} s` });
      child.kill("SIGKILL");
    }, MOST_MS);
    child.once("message", (reply) => end(reply as OwnReply | OwnFailure));
    child.once("error", ({ message }) => end({ failed: message }));
    child.once("exit", (code, signal) =>
      end({ failed: `own pages ended the process that makes them (${signal ?? code})` }),
    );
    child.send(task, (error) => error && end({ failed: error.message }));
  });
}
