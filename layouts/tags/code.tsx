import type { JSX } from "preact";
import { encode } from "uqr";

/** What a reader needs around a code, in modules: ISO/IEC 18004 asks for four. */
const QUIET_ZONE = 4;

/** A QR code (ISO/IEC 18004) of a text, as one path; level M mends a code of which some 15 % is dirty or scratched. */
export function Code({ text, says }: { readonly text: string; readonly says: string }): JSX.Element {
  const { size, data } = encode(text, { ecc: "M", border: QUIET_ZONE });
  const rows = data.map((row, y) =>
    runsIn(row)
      .map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`)
      .join(""),
  );
  return (
    <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={says} shape-rendering="crispEdges">
      <path d={rows.join("")} />
    </svg>
  );
}

/** Where dark modules of a row begin, and how many follow each other. */
function runsIn(row: readonly boolean[]): [from: number, length: number][] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last !== undefined && last[0] + last[1] === x) last[1] += 1;
    else runs.push([x, 1]);
  });
  return runs;
}
