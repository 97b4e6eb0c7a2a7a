/** The files of the record held against each other. */
import type { Problem } from "../../problem.ts";
import type { Draft } from "../filed.ts";
import type { Folder } from "../folder.ts";
import { collectIds } from "../ids.ts";
import type { Shelf } from "../shelf.ts";
import type { Day } from "../types.ts";

export function checkRecord(draft: Draft, folder: Folder, shelf: Shelf, today: Day | undefined): Problem[] {
  const ids = collectIds(draft.files);
  return [...ids.problems];
}
