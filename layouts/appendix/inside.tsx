import type { JSX } from "preact";
import { anchor, relative } from "../../src/pages/address.ts";
import { FIRST, placeOf } from "../../src/pages/appendix/sheets.ts";
import type { Kind } from "../../src/facts/types.ts";
import type { Where } from "../evidence/parts.tsx";

interface InsideProps extends Where {
  readonly kind: Kind;
  readonly ids: readonly string[];
}

/** Links within the appendix, which stay good in a PDF. */
export function Inside({ kind, ids, site, from }: InsideProps): JSX.Element {
  const hrefOf = (id: string): string => {
    const place = kind === "hold point" ? `${FIRST}#${anchor(kind, id)}` : placeOf(site.shown, kind, id);
    return place.startsWith(`${from}#`) ? place.slice(from.length) : relative(from, place);
  };
  return (
    <>
      {ids.map((id, at) => (
        <>
          {at > 0 ? ", " : ""}
          <a class="id" href={hrefOf(id)}>
            {id}
          </a>
        </>
      ))}
    </>
  );
}
