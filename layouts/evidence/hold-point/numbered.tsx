import type { ComponentChildren, JSX } from "preact";
import type { HoldPointPage } from "../../../src/pages/evidence/hold-point/hold-point-page.ts";
import { Section, type Where } from "../parts.tsx";

export interface PartProps extends Where {
  readonly page: HoldPointPage;
  readonly number: number;
}

interface NumberedProps {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly children?: ComponentChildren;
}

/** A part of the page with its number, by which it is called in the workshop. */
export const Numbered = ({ number, title, ...rest }: NumberedProps): JSX.Element => (
  <Section {...rest} title={`${number}. ${title}`} />
);
