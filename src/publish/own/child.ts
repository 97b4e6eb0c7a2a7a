/** The process in which own pages are made, in the folder of the record: it is given what an edition shows, and no more. */
import { failureOf } from "./failure.ts";
import { makeOwn } from "./make.ts";
import type { OwnTask } from "./task.ts";

process.once("message", (task: OwnTask) => {
  void makeOwn(task)
    .catch((error: unknown) => failureOf(error))
    .then((reply) => process.send?.(reply, () => process.disconnect()));
});
