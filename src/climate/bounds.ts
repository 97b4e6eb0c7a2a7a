/** What of a logger's file is more than is read, told before its rows are. */
import { beyond, inThousands, LIMITS } from "../facts/limits.ts";
import type { Fault } from "../facts/reading.ts";
import type { Unread } from "./csv.ts";

/** A fault, and the line it begins on, from 1. */
export interface Bound {
  readonly line: number;
  readonly fault: Fault;
}

export function boundOf(text: string): Bound | undefined {
  let lines = 1;
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) lines += 1;
  if (lines <= LIMITS.tableLines) return undefined;
  const most = `${inThousands(LIMITS.tableLines)} lines, a reading every minute for four years`;
  return {
    line: LIMITS.tableLines + 1,
    fault: beyond("this file has more lines than are read", most, "part it over several files", inThousands(lines)),
  };
}

export function columnsFault(count: number): Fault | undefined {
  if (count <= LIMITS.tableColumns) return undefined;
  return beyond(
    "this header has more columns than are read",
    `${LIMITS.tableColumns} columns`,
    "export the time, the temperature and the humidity alone",
    String(count),
  );
}

export function unreadFault({ isLong }: Unread): Fault {
  return isLong
    ? beyond(
        "this row is longer than is read",
        `${inThousands(LIMITS.rowLength)} characters`,
        "look for a quotation mark that is never closed, or line ends that were lost, and export the file again",
      )
    : {
        code: "climate-quote",
        message: "a quotation mark is opened on this line or after it and never closed",
        mend: "export the file again, or close it",
      };
}
