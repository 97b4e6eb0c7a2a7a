import type { JSX } from "preact";
import { AC_20_27_TASKS, AC_20_27_TOTAL, BY_COUNTRY } from "../../src/evidence/sources.ts";
import { creditPage, PARTS, type CreditPage } from "../../src/pages/ledgers/credit.ts";
import { counted } from "../../src/words/lists.ts";
import { MAJOR } from "../../src/reckoning/hours/credit.ts";
import type { Say } from "../../src/evidence/saying.ts";
import { toldSource } from "../../src/words/findings/told.ts";
import { SourceWords } from "../parts/findings.tsx";
import { Page } from "../shell/page.tsx";
import { ListPlace } from "./lists/lists.tsx";
import { ListTable, None, Title, type Where } from "./parts.tsx";

export function Credit({ site }: Pick<Where, "site">): JSX.Element {
  const from = "credit.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Major portion"
      description="Who did which tasks of building, in tenths; and, apart from that, hours by person."
    >
      <Title place={<ListPlace from={from} />} title="Major portion">
        <p class="title__lead">
          Who did which tasks of building; and, in a ledger of its own, how many hours each person worked.
        </p>
      </Title>
      <CreditLedgers site={site} from={from} level="h2" />
    </Page>
  );
}

interface LedgerProps extends Where {
  readonly level: "h2" | "h3";
}

export function CreditLedgers({ site, level: Heading }: LedgerProps): JSX.Element {
  const page = creditPage(site.shown);
  return (
    <>
      <div class="prose">
        <p>
          <strong>Ask the authority that will decide.</strong> Rules differ by country. The tasks below and their tenths
          are the builder’s own reckoning, of the whole aircraft as it is meant to be, done or not yet done.
        </p>
      </div>
      <section class="section">
        <Heading>Tasks</Heading>
        {page.rows.length === 0 ? (
          <None>The record credits no tasks.</None>
        ) : (
          <>
            <Share page={page} />
            <TaskTable page={page} />
          </>
        )}
        <NotApplicable page={page} />
        <Rules say={site.shown.say} />
      </section>
      <section class="section">
        <Heading>Hours by person</Heading>
        <p class="measure">
          Another ledger, which is no part of the share above: hours tell of the work and of the skill that grew with
          it.{site.shown.edition === "archive" ? "" : " They are those of the entries that this edition shows."}
        </p>
        <HoursByPerson page={page} />
      </section>
    </>
  );
}

function HoursByPerson({ page }: { readonly page: CreditPage }): JSX.Element {
  return page.hours.length === 0 ? (
    <None>No hours are noted.</None>
  ) : (
    <ListTable
      caption="Hours by person"
      heads={["Person", { word: "Hours", number: true }, { word: "Of all hours", number: true }]}
    >
      {page.hours.map(({ name, time, share }) => (
        <tr>
          <th scope="row" class="plainly">
            {name}
          </th>
          <td class="number">{time}</td>
          <td class="number">{share}</td>
        </tr>
      ))}
    </ListTable>
  );
}

function Share({ page: { file, share } }: { readonly page: CreditPage }): JSX.Element | null {
  if (file.portion === undefined || share === undefined) return null;
  const { major, tasks } = file.portion;
  return (
    <div class="verdict">
      <p class="verdict__mark">
        <strong>{share}</strong>
      </p>
      <div class="verdict__body">
        <p>
          of the points of {counted(tasks, "task")} are credited to amateurs, assembly and fabrication together. That is{" "}
          {major ? "more" : "not more"} than {MAJOR} %.
        </p>
        <p>A figure for talking with the authority; it decides.</p>
      </div>
    </div>
  );
}

function TaskTable({ page: { rows, sums } }: { readonly page: CreditPage }): JSX.Element {
  const heads = ["Task", "What", "Assembly", ...PARTS.map(([, word]) => ({ word, number: true }))];
  return (
    <ListTable caption="Tasks that apply, each one point" heads={heads}>
      {rows.map(({ id, title, assembly, parts }) => (
        <tr>
          <th scope="row" class="id">
            {id}
          </th>
          <td>{title}</td>
          <td>{assembly}</td>
          {parts.map((part) => (
            <td class="number">{part}</td>
          ))}
        </tr>
      ))}
      <tr class="sum">
        <th scope="row">All</th>
        <td />
        <td />
        {sums.map((sum) => (
          <td class="number">{sum}</td>
        ))}
      </tr>
    </ListTable>
  );
}

function NotApplicable({ page: { notApplicable } }: { readonly page: CreditPage }): JSX.Element | null {
  if (notApplicable.length === 0) return null;
  return (
    <p class="measure small">
      Not part of this aircraft, and not counted: {notApplicable.map(({ id, title }) => `${id}, ${title}`).join("; ")}.
    </p>
  );
}

function Rules({ say }: { readonly say: Say }): JSX.Element {
  return (
    <ul class="small measure">
      <li>
        Each task that applies is one point, shared out in tenths between the maker of the kit, paid help, amateurs who
        assembled and amateurs who fabricated. Source: <SourceWords source={toldSource(say, AC_20_27_TASKS)} />
      </li>
      <li>
        Share: 100 · (assembly + fabrication) / all, reckoned in whole tenths. Source:{" "}
        <SourceWords source={toldSource(say, AC_20_27_TOTAL)} />
      </li>
      <li>
        Countries count differently. Source: <SourceWords source={toldSource(say, BY_COUNTRY)} />
      </li>
    </ul>
  );
}
