/** Hours of a day against each other, and against what was glued and broken in them. */
import { describe, expect, it } from "vitest";
import { meant } from "./meant.ts";
import { batches, demo, entries, figure, prose } from "./told.ts";

const HOUR = 3600;
const WEEK = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

/** Hour of the day in London, as typed. */
const clock = (epoch: number): number => {
  const [hours = 0, minutes = 0] = new Intl.DateTimeFormat("en-GB", {
    timeZone: "Europe/London",
    hour: "2-digit",
    minute: "2-digit",
  })
    .format(epoch * 1000)
    .split(":")
    .map(Number);
  return hours + minutes / 60;
};

interface Span {
  readonly what: string;
  readonly from: number;
  readonly to: number;
}

const glueUps: readonly (Span & { readonly day: string })[] = batches.flatMap(({ id, day, mixed, closed }) =>
  mixed === undefined || closed === undefined ? [] : [{ what: id, day, from: mixed.epoch, to: closed.epoch }],
);

describe("Times", () => {
  it("a cup is closed after it is mixed, and within two hours", () => {
    expect(glueUps.filter(({ from, to }) => to <= from || to > from + 2 * HOUR)).toEqual([]);
    expect(batches.filter(({ mixed, closed, discarded }) => !mixed || (!closed && !discarded))).toEqual([]);
  });

  it("nothing is glued or broken at night", () => {
    const moments = [
      ...glueUps.flatMap(
        ({ what, from, to }) =>
          [
            [what, from],
            [what, to],
          ] as const,
      ),
      ...entries.flatMap(({ tests }) => tests.flatMap(({ piece, at }) => (at ? [[piece, at.epoch] as const] : []))),
    ];
    expect(moments.filter(([, epoch]) => clock(epoch) < 8 || clock(epoch) > 21)).toEqual([]);
  });

  it("nobody has more of a day than there is, and an evening is no day", () => {
    const off = entries.flatMap((entry) => {
      const each = new Map<string, number>();
      for (const { who, minutes } of [...entry.hours, ...entry.visits]) each.set(who, (each.get(who) ?? 0) + minutes);
      const evening = /^(?:\w+ )?[Ee]vening\b/u.test(prose(entry.id));
      return [...each].filter(([, minutes]) => minutes > (evening ? 4 : 8) * 60).map(([who]) => [entry.id, who]);
    });
    expect(off).toEqual([]);
  });

  it("whoever glues has hours of gluing for it", () => {
    const off = entries.flatMap((entry) => {
      const spans = glueUps.filter(({ what }) => entry.batches.some(({ id }) => id === what));
      if (spans.length === 0) return [];
      const minutes = (task: string): number =>
        entry.hours
          .filter((line) => line.who === "builder" && line.task === task)
          .reduce((sum, one) => sum + one.minutes, 0);
      const [from, to] = [Math.min(...spans.map((one) => one.from)), Math.max(...spans.map((one) => one.to))];
      return minutes("gluing") * 60 >= to - from ? [] : [entry.id];
    });
    expect(off).toEqual([]);
  });

  it("no glue-up lies outside the hours that were noted from when to when", () => {
    const off = entries.flatMap((entry) =>
      entry.hours
        .filter(({ task, from, to }) => task === "gluing" && from !== undefined && to !== undefined)
        .filter(({ from = "", to = "" }) =>
          glueUps
            .filter(({ what }) => entry.batches.some(({ id }) => id === what))
            .some((span) => clock(span.from) < hours(from) || clock(span.to) > hours(to)),
        )
        .map(({ who }) => [entry.id, who]),
    );
    expect(off).toEqual([]);
  });

  it("nothing is broken while something is glued, and breaking has hours of its own", () => {
    const broken = entries.flatMap(({ tests }) =>
      tests.flatMap(({ piece, at }) => (at ? [{ piece, at: at.epoch }] : [])),
    );
    const at = broken.filter((test) => glueUps.some(({ from, to }) => test.at > from && test.at < to));
    expect(at).toEqual([]);
    const without = entries.filter(
      ({ tests, hours: worked }) => tests.length > 0 && !worked.some(({ task }) => task === "testing"),
    );
    expect(without.map(({ id }) => id)).toEqual([]);
  });

  it("surfaces are as old as the sheet lets them be, but where they are meant not to be", () => {
    const off = batches.flatMap(({ id, adhesive, joints, glueUp, closed }) => {
      const most = demo.adhesives.get(adhesive)?.asks?.preparedWithin?.value;
      if (most === undefined || joints.length === 0) return [];
      const waited = (closed?.epoch ?? Number.NaN) - (glueUp?.prepared?.epoch ?? Number.NaN);
      return waited > 0 && waited <= most ? [] : [`surfaces ${id}: ${(waited / HOUR).toFixed(1)} h old`];
    });
    expect(off).toEqual(meant("surfaces"));
  });

  it("shop and surfaces are as warm as the sheet asks, but where they are meant not to be", () => {
    const off = batches.flatMap((batch) => {
      const least = demo.adhesives.get(batch.adhesive)?.temperature?.least;
      const coldest = Math.min(...[batch.temperature, batch.surface].flatMap((noted) => figure(noted) ?? []));
      if (least === undefined || batch.joints.length === 0 || coldest >= least) return [];
      return [`cold ${batch.id}: ${celsius(coldest)} °C where the sheet wants ${celsius(least)}`];
    });
    expect(off.sort()).toEqual(meant("cold"));
  });

  it("the sun is where the story has it", () => {
    expect(prose("2025-01-11-out-of-order")).toContain("it is dark at four");
    expect(prose("2025-06-21-signed")).toContain("Longest day of the year");
    expect(sunset("2025-01-11")).toBeLessThan(16.25);
    const days = Array.from({ length: 365 }, (_, i) => new Date(Date.UTC(2025, 0, 1 + i)).toISOString().slice(0, 10));
    const longest = days.reduce((a, b) =>
      Math.abs(declination(b) - 23.44) < Math.abs(declination(a) - 23.44) ? b : a,
    );
    expect(longest).toBe("2025-06-21");
    expect(prose("2025-03-30-pulled-not-pushed")).toContain("The clocks went forward");
    expect([new Date("2025-03-30").getUTCDay(), new Date("2025-04-06").getUTCMonth()]).toEqual([0, 3]);
  });

  it("a day that is named is that day of the week", () => {
    const off = entries.flatMap(({ id, day }) => {
      const named = WEEK.find((name) => new RegExp(`^(?:A wet |Good )?${name}\\b`, "u").test(prose(id)));
      return named === undefined || named === WEEK[new Date(day).getUTCDay()] ? [] : [[id, named]];
    });
    expect(off).toEqual([]);
  });
});

function hours(typed: string): number {
  const [h = 0, m = 0] = typed.split(":").map(Number);
  return h + m / 60;
}

const celsius = (value: number): number => Number((value > 200 ? value - 273.15 : value).toFixed(1));

/** Degrees north, by the common approximation from the day of the year. */
function declination(day: string): number {
  const number = (Date.parse(day) - Date.parse(`${day.slice(0, 4)}-01-01`)) / 86_400_000 + 1;
  return 23.44 * Math.sin((2 * Math.PI * (number - 81)) / 365);
}

/** Hour of the sun's setting at 52° north, by the sun's own noon. */
function sunset(day: string): number {
  const [north, sun] = [52, declination(day)].map((degrees) => (degrees * Math.PI) / 180);
  return 12 + (Math.acos(-Math.tan(north ?? 0) * Math.tan(sun ?? 0)) * 12) / Math.PI;
}
