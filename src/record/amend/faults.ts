/** What is said of an amendment that cannot be made. */
import { likest, nearest } from "../../facts/nearest.ts";
import { type Fault, meaning, type Mending, onlyYouKnow, shown } from "../../facts/reading.ts";
import type { ProblemCode } from "../../problems/codes.ts";
import type { Keyed } from "./lists.ts";

const said = (code: ProblemCode, message: string, expected: string, found: string, mend: string | Mending): Fault => ({
  code,
  message,
  expected,
  found: shown(found),
  ...(typeof mend === "string" ? onlyYouKnow(mend) : mend),
});

export function unknownEntry(id: string, known: readonly string[]): Fault {
  const meant = nearest(id.replace(/\.md$/, ""), known);
  return said(
    "amends-unknown",
    `no entry "${shown(id)}" is in the record`,
    `the id of an earlier entry${known.length === 0 ? "; there is none" : `: ${likest(id, known)}`}`,
    id,
    meant === undefined ? onlyYouKnow("give the name of the entry's file, without .md") : meaning(meant),
  );
}

export function ownEntry(id: string): Fault {
  return said(
    "amends-itself",
    "an entry cannot amend itself",
    "an earlier entry",
    id,
    "while this entry is not sealed, correct its text; once it is sealed, amend it in a later entry",
  );
}

export function laterEntry(id: string, own: string): Fault {
  return said(
    "amends-later",
    `${id} comes after this entry`,
    `an entry before ${own}`,
    id,
    "put this into an entry after the one that it amends",
  );
}

export function entryTwice(id: string, first: string): Fault {
  return said(
    "amends-twice",
    `${id} is amended in this entry already`,
    "each amended entry once, with all that is wrong in it",
    `${id}, amended at ${first}`,
    "put both into one",
  );
}

export function hiddenFromReaders(id: string, own: string, its: string): Fault {
  return said(
    "amends-hidden",
    `this entry is for ${own === "archive" ? "the archive alone" : "the inspector"}, and amends one that more people read`,
    `an entry for all who read ${id}`,
    `for: ${own}; ${id} is for ${its === "public" ? "everyone" : "the inspector"}`,
    `amend it in an entry ${its === "public" ? "without `for:`" : "with `for: inspector`"}; what is not for its readers goes into a passage ::: ${own}`,
  );
}

export function dayToCome(day: string, own: string): Fault {
  return said(
    "amends-day",
    "a day after this entry's own",
    `a day up to ${own}`,
    day,
    "write the day on which it happened",
  );
}

export function noSuchFact(entry: string, list: Keyed, key: string, known: readonly string[]): Fault {
  const word = list.path.at(-1) === "pieces" ? "piece" : list.word.toLowerCase().replace(/( of|:)$/, "");
  const meant = nearest(key, known);
  const leftOut =
    list.path.at(-1) === "pieces"
      ? "a piece that was left out needs its `procedure` too"
      : `what was left out goes into an entry of its own, dated ${entry.slice(0, 10)}`;
  const mend = meant === undefined ? leftOut : `name ${meant} if it is meant; if not, ${leftOut}`;
  return said(
    "amends-no-fact",
    `${entry} has no ${word} "${shown(key)}" that could be amended`,
    known.length === 0
      ? "something that stands in that entry; it has none of these"
      : `one that stands there: ${likest(key, known)}`,
    key,
    mend,
  );
}

export function nothingOnScales(entry: string): Fault {
  return said(
    "amends-no-fact",
    `${entry} weighed nothing on scales`,
    "`scales` in an entry that has them",
    "scales",
    `what was left out goes into an entry of its own, dated ${entry.slice(0, 10)}`,
  );
}

export function severalFacts(list: Keyed, key: string): Fault {
  const [, ...others] = list.keys;
  return said(
    "amends-several",
    `several there are called "${shown(key)}"`,
    `${others.map((other) => `\`${other}\``).join(" or ")} beside it, as it was written down`,
    key,
    "say which is meant",
  );
}

export function factTwice(key: string, first: string): Fault {
  return said(
    "amends-twice",
    "this is amended here already",
    "each thing once",
    `${key}, amended at ${first}`,
    "put both into one",
  );
}

export function nothingChanged(entry: string): Fault {
  return said(
    "amends-nothing",
    "this amendment changes nothing: all that it states stands so already",
    "a value that differs from what was written",
    entry,
    "state what is right, or take the amendment away",
  );
}

export function notThere(value: string): Fault {
  return said(
    "struck-unknown",
    "there is no such value to strike out",
    "the key of a value that was written down, such as closed or shop.humidity; or all",
    value,
    "write the value's key as it stands in the amended entry",
  );
}

export function mustStay(value: string): Fault {
  return said(
    "struck-needed",
    "this value cannot be without anything in its place",
    "what is right",
    value,
    "state the right value here in place of `struck`",
  );
}

const INSTEAD: { readonly [word: string]: string } = {
  Batch: "if it is not to be trusted, say so under `rejects`; values of it can be amended one by one",
  Piece: "values of it can be amended one by one",
};

export function staysNamed(list: Keyed, key: string): Fault {
  return said(
    "struck-named",
    `${key} has an id that other texts may lead to, so it stays in the record`,
    "keys of single values",
    "all",
    INSTEAD[list.word] ?? "state what is right; if there is nothing left to do, close or accept it",
  );
}

export function strikesAndStates(key: string): Fault {
  return said(
    "struck-and-stated",
    `${key} is struck out as a whole, and yet values are stated for it`,
    "`struck: [all]` alone",
    key,
    "take the values away, or `struck`",
  );
}
