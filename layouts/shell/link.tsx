import type { ComponentChildren, JSX } from "preact";
import { addressOf, relative } from "../../src/pages/address.ts";
import { called } from "../../src/pages/called.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Ref } from "../../src/facts/types.ts";

interface ToProps {
  readonly site: Site;
  /** Path of the page the link stands on. */
  readonly from: string;
  readonly to: Ref;
  readonly class?: string;
  readonly children?: ComponentChildren;
}

/** Longer than this an id may break over lines. */
const LONG = 16;

/** A link to a thing of the record, or its plain words where the edition does not show it. Without children what it is called. */
export function To({ site, from, to, class: given, children }: ToProps): JSX.Element {
  const words = children ?? called(site.shown, to);
  const name = given === "id" && typeof words === "string" && words.length > LONG ? "id id--long" : given;
  const address = addressOf(to);
  if (address === undefined || !site.shown.shows(to)) return <span class={name}>{words}</span>;
  return (
    <a class={name} href={relative(from, address)}>
      {words}
    </a>
  );
}

/** Links with commas between them. */
export function ToEach({
  site,
  from,
  to,
}: {
  readonly site: Site;
  readonly from: string;
  readonly to: readonly Ref[];
}): JSX.Element {
  return (
    <>
      {to.map((ref, at) => (
        <>
          {at > 0 ? ", " : ""}
          <To site={site} from={from} to={ref} />
        </>
      ))}
    </>
  );
}
