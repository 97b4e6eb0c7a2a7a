/** Texts that tell a stranger what a bag is. */
import { RULES_VERSION } from "../../evidence/version.ts";
import { sayIn } from "../../words/findings/catalogue.ts";
import { ENGLISH } from "../../words/findings/english.ts";
import { toldRules } from "../../words/findings/told.ts";
import type { Record } from "../../facts/types.ts";

/** The rules that verdicts were reached by, with the source of each. */
export function rulesText(version: string): string {
  const rules = toldRules(sayIn(ENGLISH, "metric"));
  return `${JSON.stringify({ program: "Scarfline", version, rulesVersion: RULES_VERSION, rules }, undefined, 2)}\n`;
}

/** For whoever finds the bag and has nothing else. */
export function readmeText({ aircraft, day }: Record, version: string): string {
  return `${aircraft.name}: THE RECORD OF ITS BUILDING, UP TO ${day}

This folder is a bag as RFC 8493 (BagIt 1.0) describes it. It was made by Scarfline ${version}, and can be read without it.

WHAT IS HERE

  site/index.html   the whole record as pages; open it in any browser, no network and no server needed
  record/           what the builder wrote: Markdown files with their facts on top, photographs, clips and papers as they came
  ledgers/          the numbers and verdicts, each as CSV and as JSON (see THE LEDGERS)
  rules.json        the rules by which verdicts were reached, and where each comes from
  record.sha256     a digest of every file in record/
  README.txt        this text

If the bag was split, each part holds some of these; bag-info.txt one folder up says which part this is ("Bag-Count").
To have the whole, in the folder that holds all parts:

  mkdir whole
  cp -R */data/. whole

The record shows what was written down. It does not certify airworthiness: the drawings, the adhesive maker's data sheet,
the authority's rules and the inspector's judgement stand above every limit in it.

HOW TO CHECK THAT NOTHING IS MISSING OR CHANGED

In the folder above this one, where bagit.txt is:

  sha256sum -c --quiet tagmanifest-sha256.txt
  sha256sum -c --quiet manifest-sha256.txt
  sha512sum -c --quiet manifest-sha512.txt
  (cut -c67- manifest-sha256.txt; find data ! -type d) | LC_ALL=C sort | uniq -u

Each says nothing if all is well. The last one names files that were added, or are missing. On a Mac write shasum -a 256 -c
and shasum -a 512 -c in place of sha256sum -c and sha512sum -c. For a bag in parts, one more check shows that the parts
together hold the whole record; in the folder that holds record.sha256 and the whole record/:

  sha256sum -c --quiet record.sha256

Any program that validates BagIt bags can do the same.

${WITH_THE_PROGRAM}
${WRITTEN_WHEN}
${LEDGERS}`;
}

const WITH_THE_PROGRAM = `WITH THE PROGRAM

Scarfline checks the bag, brings the record back as it was, and makes the pages from it once more:

  scarfline verify BAG
  scarfline restore BAG record
  scarfline build --content record --edition archive --out site
`;

const WRITTEN_WHEN = `HOW TO CHECK WHAT WAS WRITTEN WHEN

If there is a record/seals.txt, each of its lines is a seal: date, SHA-256 of a list of files, SHA-256 of all lines before
it, number of files, the name of that list, and the versions of this form and of the rules; lines without those are of the
first version. In the folder record/:

  sha256sum seals/DATE.sha256               must print the second word of that date's line
  sha256sum -c --quiet seals/DATE.sha256    names every file that changed or went after it
  head -n 2 seals.txt | sha256sum           must print the third word of line 3; likewise for every other line

The pages name the last seal by the digest of seals.txt up to its line, such as the third:

  head -n 3 seals.txt | sha256sum           must print that digest

A seal proves when something was written only as far as its digest is known from elsewhere: from a letter, from a print of
the pages, or from a signature. A file seals/DATE.sig is such a signature, made with an SSH key. For line 3:

  head -n 3 seals.txt | ssh-keygen -Y check-novalidate -n scarfline-seal -s seals/DATE.sig
`;

const LEDGERS = `THE LEDGERS

The first line of each CSV file names its columns; JSON has the same under the same names. Text is UTF-8. What ends in
_typed is as the builder wrote it, with its unit. Numbers are in the unit that ends their column's name: _kg, _m, _m2, _m3,
_s (seconds), _n (newton), _pa (pascal), _degc (degrees Celsius), _share (1 is 100 %), _kg_m, _epoch_s (seconds since the
beginning of 1970, UTC). Measurements, cuts, remains and stock have their unit in a column of its own. A text that a spreadsheet
would take for a formula has ' before it. Ids in one field are parted by blanks. An empty field was not noted, or does not
apply. The page site/about.html says how verdicts are reached.

cuts says what was sawn from lots of timber and plywood, a line for each lot and day; its amount is in the unit of the lot.
remains says what was weighed as left in lots of adhesive, a line for each lot and day.
stock says what came of each lot, what batches took of it or was cut from it, and what is left at most. The batches in
used_unknown_batches took of the lot what nobody noted; then what is left is not known, and its field is empty.
`;
