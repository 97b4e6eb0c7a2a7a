/** What a stranger is told first of an archive: what it is, where things are, what words mean, and how to check it. */
import type { NamedSeal, Shown } from "../../editions/shown.ts";
import { RULES_VERSION } from "../../evidence/version.ts";
import { BATCH_MEANS, HOLD_MEANS, JOINT_MEANS, PIECE_MEANS } from "../evidence/verdict-words.ts";
import { filledLedgers } from "../ledgers/ledgers.ts";
import { eventsOf } from "./events.ts";

/** Pages of the archive edition alone, from the site's root. */
export const PAGES = {
  start: "index.html",
  events: "events.html",
  ledgers: "ledgers.html",
  papers: "papers.html",
  histories: "histories.html",
} as const;

/** What a buyer, an heir or an inspector asks first, and the page that answers it. */
export interface Question {
  readonly asks: string;
  readonly page: string;
  readonly answer: string;
}

export function questionsFor(shown: Shown): Question[] {
  const recalls = eventsOf(shown).some(({ kind }) => kind === "Recall");
  return [
    { asks: "How was a part made, from timber to signature?", page: PAGES.histories, answer: "History of each part" },
    ...(recalls
      ? [
          {
            asks: "What was recalled, and what became of each joint?",
            page: `${PAGES.events}#recalls`,
            answer: "Recalls",
          },
        ]
      : []),
    { asks: "How many hours, and when?", page: "hours.html", answer: "Hours" },
    { asks: "Whose hours?", page: "credit.html", answer: "Hours by person" },
    { asks: "Which departures from the drawing are still open?", page: "departures.html", answer: "Departures" },
    { asks: "Is it unaltered?", page: `${PAGES.start}#check`, answer: "How to check it" },
    { asks: "What happened, by date?", page: PAGES.events, answer: "Index of events" },
    ...(filledLedgers(shown).length === 0
      ? []
      : [{ asks: "What does each column of the ledgers mean?", page: PAGES.ledgers, answer: "Data dictionary" }]),
  ];
}

/** By whom verdicts were reached. */
export const judgedBy = (version: string | undefined): string =>
  `Verdicts were reached by the rules of version ${RULES_VERSION} of Scarfline${version === undefined ? "" : `, program version ${version}`}. They stay as they were; a later program may judge otherwise, and says so where it is asked (scarfline verify --judged-anew).`;

export const MEANINGS: readonly (readonly [of: string, means: { readonly [verdict: string]: string }])[] = [
  ["A batch of adhesive", BATCH_MEANS],
  ["A test piece", PIECE_MEANS],
  ["A joint", JOINT_MEANS],
  ["A hold point", HOLD_MEANS],
];

export interface Check {
  readonly title: string;
  /** The folder that its commands are typed in. */
  readonly where: string;
  readonly commands: readonly { readonly line: string; readonly says: string }[];
}

/** Checks with common tools, with the names and numbers of this record in them. */
export function checksOf({ seal }: Shown): Check[] {
  return [WHOLE, RECORD, ...(seal === undefined ? [] : sealChecks(seal))];
}

const WHOLE: Check = {
  title: "That nothing is missing or changed",
  where: "the folder with bagit.txt; each command says nothing if all is well",
  commands: [
    { line: "sha256sum -c --quiet tagmanifest-sha256.txt", says: "the lists themselves" },
    { line: "sha256sum -c --quiet manifest-sha256.txt", says: "every file" },
    { line: "sha512sum -c --quiet manifest-sha512.txt", says: "every file, by another digest" },
    {
      line: "(cut -c67- manifest-sha256.txt; find data ! -type d) | LC_ALL=C sort | uniq -u",
      says: "names files that were added, or are missing",
    },
  ],
};

const RECORD: Check = {
  title: "That the record is whole, where it came in several parts",
  where: "the folder with record.sha256 and the whole record",
  commands: [{ line: "sha256sum -c --quiet record.sha256", says: "says nothing if all is well" }],
};

function sealChecks({ all = [] }: NamedSeal): Check[] {
  const last = all.at(-1);
  if (last === undefined) return [];
  const { number, manifest, record, digest } = last;
  const stamped = all.findLast(({ stamp }) => stamp !== undefined);
  const signed = all.findLast(({ isSigned }) => isSigned);
  const name = (of: string, ending: string): string => of.replace(/\.sha256$/, `.${ending}`);
  const commands = [
    { line: `sha256sum ${manifest}`, says: `must print ${record}` },
    { line: `sha256sum -c --quiet ${manifest}`, says: "names every file that changed or went after the last seal" },
    { line: `head -n ${number} seals.txt | sha256sum`, says: `must print ${digest}` },
    ...(signed === undefined
      ? []
      : [
          {
            line: `head -n ${signed.number} seals.txt | ssh-keygen -Y check-novalidate -n scarfline-seal -s ${name(signed.manifest, "sig")}`,
            says: `must say: Good "scarfline-seal" signature`,
          },
        ]),
    ...(stamped === undefined
      ? []
      : stampChecks(stamped.number, name(stamped.manifest, "tsr"), name(stamped.manifest, "pem"), stamped.stamp ?? "")),
  ];
  return [{ title: "What was written when", where: "the folder record", commands }];
}

/** By OpenSSL, at the time of the stamp, since certificates run out. */
function stampChecks(line: number, reply: string, authority: string, hasAuthority: string): Check["commands"] {
  return [
    { line: `openssl ts -reply -in ${reply} -text`, says: "prints the time of the stamp" },
    ...(hasAuthority === "with certificates"
      ? [
          {
            line: `head -n ${line} seals.txt | openssl ts -verify -data /dev/stdin -in ${reply} -CAfile ${authority} -attime "$(date -u -d "$(openssl ts -reply -in ${reply} -text | sed -n 's/^Time stamp: //p')" +%s)"`,
            says: "must say: Verification: OK",
          },
        ]
      : []),
  ];
}
