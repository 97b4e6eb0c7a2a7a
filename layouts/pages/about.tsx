import type { JSX } from "preact";
import { KNOWN_WORDS, limitsOfAdhesive, limitsOfFinish, limitsOfProcedure } from "../../src/pages/story/about.ts";
import type { Limit } from "../../src/pages/story/about.ts";
import { anchor, relative } from "../../src/pages/address.ts";
import { filledLedgers } from "../../src/pages/ledgers/ledgers.ts";
import { toldRules } from "../../src/words/findings/told.ts";
import { MADE } from "../../src/facts/build/adhesive-kind.ts";
import type { Finish } from "../../src/facts/types.ts";
import type { Site } from "../../src/editions/shown.ts";
import { AboutLedgers, LeftOut } from "./about-edition.tsx";
import { AboutVerdicts } from "./about-verdicts.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { SealText } from "../shell/seal.tsx";

type Sheet = Pick<Finish, "sheet" | "sheetFile">;

const PATH = "about.html";

export function AboutPage({ site }: { readonly site: Site }): JSX.Element {
  return (
    <Page
      site={site}
      path={PATH}
      kind="about"
      title="About this record"
      description="How verdicts are reached, every rule with its source, the limits of adhesives, finishes and procedures, cautions, and what this edition leaves out."
    >
      <div class="title">
        <h1>About this record</h1>
        <p class="title__lead">
          What the verdicts on these pages mean, how they are reached, and what they cannot tell.
        </p>
      </div>
      <Contents has={(id) => id !== "ledgers" || filledLedgers(site.shown).length > 0} />
      <Cautions />
      <AboutVerdicts />
      <Rules site={site} />
      <Adhesives site={site} />
      <Finishes site={site} />
      <Procedures site={site} />
      <LeftOut site={site} />
      <AboutLedgers site={site} from={PATH} />
      <section class="section" id="seal">
        <h2>Seal</h2>
        <SealText seal={site.shown.seal} />
      </section>
    </Page>
  );
}

const PARTS: readonly (readonly [id: string, words: string])[] = [
  ["cautions", "Cautions"],
  ["verdicts", "How verdicts are reached"],
  ["rules", "Every rule and its source"],
  ["adhesives", "Adhesives"],
  ["finishes", "What is put on"],
  ["procedures", "Test procedures"],
  ["left-out", "What this edition leaves out"],
  ["ledgers", "Ledgers"],
  ["seal", "Seal"],
];

function Contents({ has }: { readonly has: (id: string) => boolean }): JSX.Element {
  return (
    <nav class="contents" aria-label="On this page">
      <ul class="bare">
        {PARTS.filter(([id]) => has(id)).map(([id, words]) => (
          <li>
            <a href={`#${id}`}>{words}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Cautions(): JSX.Element {
  return (
    <section class="section" id="cautions">
      <h2>Cautions</h2>
      <ul class="cautions">
        <li>
          The record shows what was written down; it does not certify airworthiness. The drawings, the adhesive maker’s
          data sheet, the authority’s rules and the inspector’s judgement stand above every limit here.
        </li>
        <li>
          Resins, hardeners and other adhesives can sensitise the skin, for good: gloves, sleeves and ventilation. Stop
          at the first rash, and ask a doctor before you go on.
        </li>
        <li>On skin soap and water, never solvent, which carries it in. An eyewash within reach of the bench.</li>
        <li>No children near adhesive that has not cured, nor near the dust of it.</li>
        <li>
          What is mixed heats itself: a cup with some left in it goes outdoors, on stone and not on wood, until it is
          hard and cold.
        </li>
        <li>Do not sand it before it is hard, and then with extraction and a mask.</li>
        <li>Do not burn it, nor wood with it on.</li>
        <li>Rags with oil or varnish in them can take fire by themselves: spread them outdoors to dry.</li>
        <li>Wood dust and solvent vapour: extraction, and nothing that can ignite them.</li>
        <li>Test pieces break with force: eye protection and a guard.</li>
      </ul>
    </section>
  );
}

function Rules({ site }: { readonly site: Site }): JSX.Element {
  return (
    <section class="section" id="rules">
      <h2>Every rule and its source</h2>
      <p class="quiet">
        A limit is taken from the adhesive’s data sheet, the test procedure or the drawing in the record, in that order.
        Where they are silent the program’s own default stands, and is named as such beside each finding.
      </p>
      <dl class="rules">
        {toldRules(site.shown.say).map(({ id, title, says, source }) => (
          <div id={`rule-${id}`}>
            <dt>{title}</dt>
            <dd>
              <p>{says}</p>
              <p class="rules__source">
                Source: {source.text} <span class="known">{KNOWN_WORDS[source.known]}</span>
              </p>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function Limits({ limits }: { readonly limits: readonly Limit[] }): JSX.Element {
  return (
    <dl class="facts">
      {limits.map(({ word, value }) => (
        <>
          <dt>{word}</dt>
          <dd>{value}</dd>
        </>
      ))}
    </dl>
  );
}

function SheetOf({ site, of: { sheet, sheetFile } }: { readonly site: Site; readonly of: Sheet }): JSX.Element {
  const file = sheetFile === undefined ? undefined : site.files.get(sheetFile);
  return <p class="small">Limits from: {file === undefined ? sheet : <a href={relative(PATH, file)}>{sheet}</a>}</p>;
}

function Adhesives({ site }: { readonly site: Site }): JSX.Element {
  const { adhesives, aircraft } = site.shown.record;
  return (
    <section class="section" id="adhesives">
      <h2>Adhesives</h2>
      {[...adhesives.values()].map((adhesive) => {
        return (
          <article class="limits" id={anchor("adhesive", adhesive.id)}>
            <h3>{adhesive.title}</h3>
            <SheetOf site={site} of={adhesive} />
            {adhesive.body.map((passage) => (
              <Prose site={site} html={site.prose(passage, PATH)} />
            ))}
            <Limits limits={limitsOfAdhesive(adhesive, aircraft.units)} />
            {adhesive.workingLife.length === 0 ? null : (
              <table class="narrow">
                <caption>Working life</caption>
                <thead>
                  <tr>
                    <th scope="col">At</th>
                    <th scope="col">{MADE[adhesive.kind].mixed ? "Mixed" : "Amount"}</th>
                    <th scope="col">Time</th>
                  </tr>
                </thead>
                <tbody>
                  {adhesive.workingLife.map(({ temperature, mass, time }) => (
                    <tr>
                      <td>{temperature.typed}</td>
                      <td>{mass?.typed ?? "any amount"}</td>
                      <td>{time.typed}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            )}
          </article>
        );
      })}
    </section>
  );
}

function Finishes({ site }: { readonly site: Site }): JSX.Element {
  const { finishes } = site.shown.record;
  return (
    <section class="section" id="finishes">
      <h2>What is put on</h2>
      {finishes.size === 0 ? <p>The record names no primer, varnish, dope, paint, fabric or tape.</p> : null}
      {[...finishes.values()].map((finish) => (
        <article class="limits" id={anchor("finish", finish.id)}>
          <h3>{finish.title}</h3>
          <SheetOf site={site} of={finish} />
          {finish.body.map((passage) => (
            <Prose site={site} html={site.prose(passage, PATH)} />
          ))}
          <Limits limits={limitsOfFinish(finish)} />
        </article>
      ))}
    </section>
  );
}

function Procedures({ site }: { readonly site: Site }): JSX.Element {
  const { procedures, aircraft } = site.shown.record;
  return (
    <section class="section" id="procedures">
      <h2>Test procedures</h2>
      {[...procedures.values()].map((procedure) => (
        <article class="limits" id={anchor("procedure", procedure.id)}>
          <h3>{procedure.title}</h3>
          {procedure.body.map((passage) => (
            <Prose site={site} html={site.prose(passage, PATH)} />
          ))}
          <Limits limits={limitsOfProcedure(procedure, aircraft.units)} />
        </article>
      ))}
    </section>
  );
}
