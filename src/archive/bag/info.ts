import type { Record } from "../../facts/types.ts";
import type { Piece } from "./payload.ts";
import type { BagInfo } from "./tags.ts";
import { bytesIn } from "./work.ts";

interface Bagging {
  /** `YYYY-MM-DD`; without it the day of the record. */
  readonly baggingDate?: string;
  /** Of the program. */
  readonly version: string;
  /** What made its PDFs, if any. */
  readonly maker?: { readonly name: string };
}

/** What bag-info.txt says of one bag of a group. */
export function infoOf(
  { baggingDate, version, maker }: Bagging,
  { aircraft, day }: Record,
  group: string,
  pieces: readonly Piece[],
  place: { readonly part: number; readonly of: number },
): BagInfo {
  return {
    aircraft: aircraft.name,
    day,
    baggingDate: baggingDate ?? day,
    version,
    maker: maker?.name,
    group,
    ...place,
    bytes: bytesIn(pieces),
    files: pieces.length,
  };
}
