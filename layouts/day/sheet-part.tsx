/** A part of the sheet of a day's facts, under its title. */
import type { ComponentChildren, JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import type { Entry } from "../../src/facts/types.ts";

export interface SheetProps {
  readonly site: Site;
  readonly from: string;
  readonly entry: Entry;
}

export function SheetPart({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <section class="sheet__part">
      <h3>{title}</h3>
      {children}
    </section>
  );
}
