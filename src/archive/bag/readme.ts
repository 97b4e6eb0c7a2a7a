/** The text that a bag begins with, for whoever finds it and has nothing else. */
import { eventsOf } from "../../pages/archive/events.ts";
import { glossaryOf } from "../../pages/archive/glossary.ts";
import { type Check, checksOf, judgedBy, MEANINGS, questionsFor } from "../../pages/archive/guide.ts";
import { placesOf } from "../../pages/archive/places.ts";
import { ENDINGS } from "../../pages/ledgers/column.ts";
import { filledLedgers, NO_LEDGER } from "../../pages/ledgers/ledgers.ts";
import type { Shown } from "../../editions/shown.ts";
import { listed } from "../../words/lists.ts";

/** Where it lies: beside `bagit.txt`. */
export const README = "README.txt";

const WIDTH = 110;

/** Plain text by lines of {@link WIDTH} letters, all but those of commands; paths are from the bag’s folder. */
export function readmeText(shown: Shown, version: string, hasPapers = false): string {
  const { aircraft, day } = shown.record;
  const sections = [
    `${aircraft.name}: THE RECORD OF ITS BUILDING, UP TO ${day}`,
    opening(shown, version),
    section("HOW TO BEGIN", begin(shown)),
    section("WHAT IS HERE", places(shown, hasPapers)),
    section("IF IT CAME IN PARTS", PARTS),
    ...checksOf(shown).map((check) => section(`HOW TO CHECK: ${check.title.toUpperCase()}`, checked(check))),
    section("HOW FAR A SEAL GOES", SEALS),
    section("WITH THE PROGRAM", WITH_THE_PROGRAM),
    section("WHAT HAPPENED, BY DATE", events(shown)),
    section("WHAT EACH VERDICT MEANS", verdicts(version)),
    section("WORDS OF THE TRADE", words(glossaryOf(shown).map(({ word, means }) => [word, means]))),
    section("THE LEDGERS", ledgers(shown)),
  ];
  return `${sections.join("\n\n")}\n`;
}

const section = (title: string, text: string): string => `${title}\n\n${text}`;

function opening({ record: { aircraft } }: Shown, version: string): string {
  return wrapped(
    `This is the whole record of the building of ${aircraft.name}, ${aircraft.type}, kept from ${aircraft.start} on. The folder is a bag as RFC 8493 (BagIt 1.0) describes it. It was made by Scarfline ${version}, and can be read without it. The record shows what was written down. It does not certify airworthiness: the drawings, the adhesive maker's data sheet, the authority's rules and the inspector's judgement stand above every limit in it.`,
  );
}

function begin(shown: Shown): string {
  const asked = questionsFor(shown).map(({ asks, page }) => `  ${asks}\n      data/site/${page}`);
  return `Open data/site/index.html in any browser: no network and no server is needed. It answers, by these pages:\n\n${asked.join("\n")}`;
}

function places(shown: Shown, hasPapers: boolean): string {
  return placesOf(shown, hasPapers)
    .map(({ what, folders }) => `${wrapped(listed(folders.map((one) => `data/${one}`)), 2)}\n${wrapped(what, 6)}`)
    .join("\n");
}

const PARTS = `Each part then holds some of these; its bag-info.txt says which part it is ("Bag-Count"). To have the whole, in the
folder that holds all parts:

  mkdir whole
  cp -R */data/. whole`;

function checked({ where, commands }: Check): string {
  const lines = commands.map(({ line, says }) => `  ${line}\n${wrapped(says, 6)}`);
  return `In ${where}:\n\n${lines.join("\n")}`;
}

const SEALS = `Each line of data/record/seals.txt is a seal: date, SHA-256 of a list of files, SHA-256 of all lines before it, number of
files, the name of that list, and the versions of this form and of the rules; lines without those are of the first version.
Each list is what sha256sum -c reads. A seal proves when something was written only as far as its digest is known from
elsewhere: from a letter, from a print of the pages, from a signature (seals/DATE.sig, made with an SSH key) or from a time
stamp (seals/DATE.tsr, by RFC 3161). On a Mac write shasum -a 256 and shasum -a 512 in place of sha256sum and sha512sum. Any
program that validates BagIt bags can check the bag as well.`;

const WITH_THE_PROGRAM = `Scarfline checks the bag, brings the record back as it was, and makes the pages from it once more:

  scarfline verify BAG
  scarfline restore BAG record
  scarfline build --content record --edition archive --out site`;

function events(shown: Shown): string {
  const all = eventsOf(shown).map(({ day, kind, says }) => wrapped(`${day}  ${kind}. ${says}`, 2, 14));
  return all.length === 0 ? "Nothing of the kind is noted." : all.join("\n");
}

function verdicts(version: string): string {
  return [
    wrapped(judgedBy(version)),
    ...MEANINGS.map(([of, means]) => `${of}:\n${words(Object.entries(means))}`),
    "Every rule with its source stands in data/rules.json and in data/site/about.html.",
  ].join("\n\n");
}

function words(all: readonly (readonly [word: string, means: string])[]): string {
  return all.map(([word, means]) => wrapped(`${word}: ${means}`, 2, 6)).join("\n");
}

function ledgers(shown: Shown): string {
  const filled = filledLedgers(shown);
  if (filled.length === 0) return NO_LEDGER;
  const endings = ENDINGS.map(([ending, , says]) => `${ending} (${says})`).join(", ");
  return [
    wrapped(
      `In data/ledgers/, each as CSV and as JSON. Every column is told in data/site/ledgers.html, and for programs in data/ledgers/datapackage.json, by Frictionless Data. The first line of a CSV file names its columns; JSON has the same under the same names. Text is UTF-8. What ends in _typed is as the builder wrote it, with its unit. Numbers are in the unit that ends their column's name: ${endings}; or in that of a column beside them. A text that a spreadsheet would take for a formula has ' before it. Ids in one field are parted by blanks. An empty field was not noted, or does not apply.`,
    ),
    words(filled.map(({ ledger: { name, says } }) => [name, says])),
  ].join("\n\n");
}

/** Broken at blanks; a word that is longer than a line stands alone in one. `after`: the indent of all lines but the first. */
function wrapped(text: string, indent = 0, after = indent): string {
  const lines: string[] = [];
  let line = " ".repeat(indent);
  let isEmpty = true;
  for (const word of text.split(/\s+/)) {
    if (!isEmpty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = " ".repeat(after);
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line].join("\n");
}
