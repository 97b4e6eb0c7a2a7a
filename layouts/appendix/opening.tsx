import type { ComponentChildren, JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import { dateWords } from "../../src/words/dates.ts";
import { EDITION_WORDS } from "../shell/frame.tsx";
import { SealText } from "../shell/seal.tsx";

interface OpeningProps {
  readonly site: Site;
  readonly title: string;
  /** Below its title. */
  readonly of?: string;
  readonly children?: ComponentChildren;
}

/** What stands at the head of everything for paper: of what record and day it is, what it does not say, what it leaves out, the seal. */
export function Opening({ site, title, of, children }: OpeningProps): JSX.Element {
  const { record, edition, leavesOut, seal } = site.shown;
  const { name, type } = record.aircraft;
  return (
    <header class="appendix__front">
      <p class="appendix__name">
        {name}, {type}
      </p>
      <h1>{title}</h1>
      {of === undefined ? null : <p class="title__lead">{of}</p>}
      <p class="title__lead">
        {EDITION_WORDS[edition]} of the record of {dateWords(record.day)}.
      </p>
      <p class="appendix__caution">
        This document says what was written down and what follows from it by the rules in the appendix. It does not
        certify airworthiness. The drawings, the adhesive maker’s data sheet, the authority’s rules and the inspector’s
        judgement stand above every limit in it.
      </p>
      {leavesOut.length === 0 ? null : (
        <>
          <p class="label">This edition leaves out</p>
          <ul>
            {leavesOut.map((kind) => (
              <li>{kind}</li>
            ))}
          </ul>
        </>
      )}
      <p class="label">Seal</p>
      <SealText seal={seal} />
      {children}
    </header>
  );
}
