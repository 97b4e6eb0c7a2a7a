/** What every part of a planted record is made with. */
import type { Audience } from "../../src/facts/types.ts";
import { CONSTRUCTS, OPENINGS } from "./constructs.ts";
import { file } from "./files.ts";
import { narrowest, type Words } from "./words.ts";

export const WHO: readonly Audience[] = ["public", "inspector", "archive"];

export type Files = { [path: string]: string | Buffer };

export interface Ground {
  readonly words: Words;
  readonly files: Files;
  /** One of several, as chance or the test has it. */
  readonly pick: <T>(...from: readonly T[]) => T;
  /** Where texts begin in the list of constructs; chance is asked once, so that more texts leave all others as they are. */
  readonly turn: number;
  /** More hidden things than in the record it is compared with. */
  readonly extra: boolean;
}

export const LOT_KINDS = ["resin", "hardener", "timber", "glue", "powder", "part", "finish"] as const;

export interface Made {
  readonly id: string;
  readonly audience: Audience;
  /** Whether it is one of those that the record compared with does not have: no choice is made for it, so that all others stay. */
  readonly more?: boolean;
}

/** Those that both records have. */
export const inBoth = <T extends Made>(all: readonly T[] = []): T[] => all.filter(({ more }) => more !== true);

/**
 * A passage for each narrower audience, each with several constructs of Markdown, its marks right behind and before what everyone sees;
 * `links` are targets that passages of everyone name.
 */
export function prose(ground: Ground, where: string, owner: Audience, links: readonly string[] = []): string {
  const { words, turn } = ground;
  let at = [...where].reduce((sum, letter) => sum + (letter.codePointAt(0) ?? 0), turn);
  const next = <T>(from: readonly T[]): T => from[(at += 1) % from.length] as T;
  const sayFor =
    (audience: Audience) =>
    (what: string, optional = false): string =>
      words.say(`${where}: ${what}, for ${audience}`, narrowest(owner, audience), { optional });
  const all = sayFor("public");
  const passage = (audience: Audience): string =>
    [
      next(OPENINGS)(all),
      `::: ${audience}`,
      ...[1, 2, 3].map(() => `${next(CONSTRUCTS)(sayFor(audience))}\n`),
      `[kept]: https://example.org/${sayFor(audience)("address of a label that others name", true)}`,
      ":::",
      all("prose right behind a mark"),
    ].join("\n");
  return [
    all("prose"),
    ...links.map((link) => `[${all("words of a link")}](${link})`),
    passage("inspector"),
    `\n${all("prose between")} &amp; more.\n`,
    passage("archive"),
  ].join("\n");
}

const ADHESIVE_OF = {
  resin: "glue",
  hardener: "glue",
  timber: undefined,
  glue: "glue-one",
  powder: "glue-powder",
  part: undefined,
  finish: undefined,
};

export function lots(ground: Ground): ReadonlyMap<(typeof LOT_KINDS)[number], readonly Made[]> {
  const { words, files, pick, extra } = ground;
  const made = LOT_KINDS.map(
    (material) =>
      [
        material,
        (["public", pick("inspector", "archive"), ...(extra ? ["archive" as const] : [])] as const).map(
          (audience, at): Made => {
            const where = `lot of ${material} for ${audience}`;
            const id = at === 0 ? `L-${material}` : words.say(`${where}: id`, audience);
            const certificate = words.say(`${where}: name of the certificate's file`, audience, {
              kind: "certificates",
              told: false,
            });
            files[`papers/${certificate}.txt`] =
              `${words.say(`${where}: within the certificate`, audience, { kind: "certificates" })}\n`;
            files[`lots/${id}.md`] = file(
              {
                title: words.say(`${where}: title`, audience),
                material,
                adhesive: ADHESIVE_OF[material],
                finish: material === "finish" ? "clear" : undefined,
                number: words.say(`${where}: number`, audience),
                cost: words.money(`${where}: cost`, audience),
                supplier: words.say(`${where}: supplier`, audience, { kind: "suppliers" }),
                received: "2025-01-02",
                expiry: material === "timber" ? undefined : "2027-01-02",
                certificate: `../papers/${certificate}.txt`,
                amount: `${words.number(`${where}: amount`, audience, 20)} kg`,
                ...wood(words, where, audience, material),
                species: words.say(`${where}: species`, audience),
                for: audience,
              },
              prose(ground, where, audience),
            );
            return { id, audience, more: at > 1 };
          },
        ),
      ] as const,
  );
  return new Map(made);
}

/** What a plank is by its numbers. */
function wood(
  words: Words,
  where: string,
  audience: Audience,
  material: (typeof LOT_KINDS)[number],
): { readonly [key: string]: unknown } {
  if (material !== "timber") return {};
  const number = (what: string, whole: number): string => words.number(`${where}: ${what}`, audience, whole);
  return {
    moisture: `${number("moisture", 11)} %`,
    grain_slope: `1 : ${number("grain slope", 18)}`,
    rings: `${number("rings", 9)} /in`,
    density: `${number("density", 430)} kg/m³`,
    asked: {
      moisture: `at most ${number("moisture asked", 14)} %`,
      grain_slope: `1 : ${number("grain slope asked", 12)}`,
      rings: `at least ${number("rings asked", 6)} /in`,
      density: `at least ${number("density asked", 360)} kg/m³`,
    },
  };
}

export interface MadeTrial extends Made {
  readonly preparation: string;
}

export function trials(ground: Ground): MadeTrial[] {
  const { words, files, pick, extra } = ground;
  return (["public", pick("inspector", "archive"), ...(extra ? ["archive" as const] : [])] as const).map(
    (audience, at) => {
      const where = `trial for ${audience}`;
      const id = at === 0 ? "t-open" : words.say(`${where}: id`, audience);
      const preparation = words.say(`${where}: id of a preparation`, audience);
      files[`trials/${id}.md`] = file(
        {
          title: words.say(`${where}: title`, audience),
          question: words.say(`${where}: question`, audience),
          stated: "2025-01-02",
          expectation: words.say(`${where}: expectation`, audience),
          preparations: [{ id: preparation, what: words.say(`${where}: preparation`, audience) }],
          for: audience,
        },
        prose(ground, where, audience),
      );
      return { id, audience, preparation, more: at > 1 };
    },
  );
}

/** A log of the shop for everyone, and one that is hidden, of other days. */
export function climate({ words, files, pick, extra }: Ground): void {
  const log = (
    name: string,
    month: string,
    temperature: string,
    [time, warmth, damp] = ["Time", "Temperature (°C)", "Humidity (%)"],
  ): string => {
    files[`climate/${name}.csv`] =
      `${time},${warmth},${damp}\n${Array.from({ length: 20 }, (_, day) => `2025-${month}-${String(day + 1).padStart(2, "0")} 12:00,${temperature},50.0\n`).join("")}`;
    return name;
  };
  log("open", "02", "20.0");
  files["climate/open.md"] = file({ file: "open.csv", zone: "local", gap: "30 h" });
  for (const [audience, month] of [
    [pick("inspector", "archive"), "04"],
    ...(extra ? [["archive", "05"] as const] : []),
  ] as const) {
    const column = (what: string): string => words.say(`hidden log: column of ${what}`, audience, { optional: true });
    const [time, warmth, damp] = [column("times"), column("temperatures"), column("humidities")];
    const name = log(
      words.say(`hidden log: name of its file`, audience),
      month,
      words.number("hidden log: temperature", audience, 21, false),
      [time, warmth, damp],
    );
    files[`climate/${name}.md`] = file(
      {
        file: `${name}.csv`,
        title: words.say("hidden log: title", audience),
        time_column: time,
        temperature: { column: warmth, unit: "°C" },
        humidity: { column: damp, unit: "%" },
        time: "YYYY-MM-DD HH:mm",
        zone: "local",
        gap: "30 h",
        for: audience,
      },
      words.say("hidden log: prose", audience),
    );
  }
}

/** A table of earlier hours for everyone, and one that is hidden. */
export function earlierHours({ words, files, pick, extra }: Ground, people: readonly Made[]): void {
  const hidden = pick<Audience>("inspector", "archive");
  const tables = [["public", "tables"], [hidden, "hidden table"], ...(extra ? [["archive", "table more"]] : [])] as [
    Audience,
    string,
  ][];
  for (const [audience, where] of tables) {
    const name = audience === "public" ? "open" : words.say(`${where}: name of its file`, audience);
    const column =
      audience === "public"
        ? "from where"
        : words.say(`${where}: column of sources`, audience, { optional: true, told: false });
    const minutes = words.isShown(audience) || !extra ? 71 : 97;
    const who = people.find((one) => one.audience === audience && !one.more)?.id ?? "builder";
    files[`hours/${name}.csv`] = [
      `span,who,task,time,assembly,${column}`,
      `2025-01,${who},gluing,${minutes} min,wing,${words.say(`${where}: source of a line`, audience)}`,
      "2025-01-02,builder,gluing,1:00,,",
    ].join("\n");
    files[`hours/${name}.md`] = file(
      {
        title: words.say(`${where}: title`, audience),
        source: words.say(`${where}: source`, audience),
        columns: { source: column },
        for: audience,
      },
      words.say(`${where}: prose`, audience),
    );
  }
}

/** A paper for each audience. */
export function attachments(
  { words, files }: Ground,
  where: string,
  owner: Audience,
): { file: string; title: string; for: Audience }[] {
  return WHO.map((own) => {
    const audience = narrowest(own, owner);
    const name = words.say(`${where}: name of an attached file`, audience, { kind: "attachments", told: false });
    files[`papers/${name}.txt`] =
      `${words.say(`${where}: within an attached file`, audience, { kind: "attachments" })}\n`;
    return {
      file: `../papers/${name}.txt`,
      title: words.say(`${where}: title of an attached file`, audience, { kind: "attachments" }),
      for: own,
    };
  });
}

/** Its serial number goes with its lot. */
export function partFitted(
  { words, pick, lots }: Ground & { readonly lots: ReadonlyMap<string, readonly Made[]> },
  where: string,
  audience: Audience,
) {
  const { id: lot, audience: seen } = pick(...inBoth(lots.get("part")));
  const say = (what: string, of = audience): string => words.say(`${where}: ${what}`, of);
  return {
    where: say("where a part was fitted"),
    lot,
    serial: say("serial number of a part", narrowest(audience, seen)),
    count: "2",
    note: say("note on a part"),
  };
}
