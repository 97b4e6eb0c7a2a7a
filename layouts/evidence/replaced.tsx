import type { JSX } from "preact";
import type { Rework } from "../../src/facts/types.ts";
import { WITHHELD } from "../../src/facts/visibility.ts";
import { Id, type Where } from "./parts.tsx";

/** After the reason of a rework: each lot of timber that it took out, and the lot of the new part. */
export function Replaced({
  replaced,
  site,
  from,
}: Where & { readonly replaced: NonNullable<Rework["replaced"]> }): JSX.Element {
  return (
    <>
      {replaced.map(({ lot, with: by }) => (
        <>
          {" "}
          Timber of <LotWords id={lot} site={site} from={from} /> replaced by{" "}
          <LotWords id={by} site={site} from={from} />.
        </>
      ))}
    </>
  );
}

function LotWords({ id, site, from }: Where & { readonly id: string }): JSX.Element {
  if (id === WITHHELD) return <>a lot that this edition does not show</>;
  return (
    <>
      lot <Id site={site} from={from} kind="lot" id={id} />
    </>
  );
}
