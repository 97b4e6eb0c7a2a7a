/** What stands for the whole build of a planted record. */
import type {
  Adhesive,
  Aircraft,
  Assembly,
  ClimateLog,
  EarlierHours,
  Finish,
  Lot,
  Passage,
  Person,
  Procedure,
  Quantity,
  Record,
  Trial,
} from "../../../src/facts/types.ts";
import { WITHHELD_KINDS } from "../../../src/facts/values.ts";
import { adhesive, assembly, holdPoint, joint, lot, procedure } from "../../evidence/make.ts";
import { celsius, d, g, gcc, min, mm, mpa, pc, range } from "../../evidence/quantities.ts";
import { asksWith, methodWith } from "./asked.ts";
import { type Base, place, prose, worded } from "./ground.ts";

/** The assemblies, all for everyone: a wing, and what it is a part of. */
export function assembliesOf(base: Base): Assembly[] {
  const say = (): string => base.say("public");
  const body = (): Passage[] => prose(base, "public", []);
  const whole = assembly("aircraft", { title: say(), planned: 60_000, finished: "2026-01-02", body: body() });
  return [
    whole,
    assembly("tail", { title: say(), holdPoints: [holdPoint("H-2", { title: say(), assembly: "tail" })] }),
    assembly("wing", {
      title: say(),
      parent: whole.id,
      planned: 6_000,
      drawing: { file: `drawings/${say()}`, alt: say() },
      joints: ["W-1", "W-2", "W-3"].map((id, at) => ({
        ...joint(id),
        title: say(),
        at: { x: 0.2 * at, y: 0.5 },
        area: worded({ typed: "", value: 0.01, unit: "m²", step: 0 }, say()),
        drawing: say(),
        stages: 1,
        asks: asksWith(say),
      })),
      holdPoints: [holdPoint("H-1", { title: say(), joints: ["W-1", "W-2", "W-3"] })],
      coats: [{ where: say(), finish: "clear", coats: 2, before: "covering" }],
      tasks: [{ maker: 2, paid: 1, assembly: 3, fabrication: 4 }, undefined].map((credit) => ({
        id: say(),
        place,
        title: say(),
        assembly: "wing",
        ...(credit && { credit }),
      })),
      body: body(),
    }),
  ];
}

/** The adhesive, what is put on and the procedure, all for everyone. */
export function methodsOf(base: Base): { adhesives: Adhesive[]; finishes: Finish[]; procedures: Procedure[] } {
  const say = (): string => base.say("public");
  const some = (quantity: Quantity): Quantity => worded(quantity, say());
  return {
    adhesives: [
      adhesive({
        title: say(),
        sheet: say(),
        sheetFile: `papers/${base.say("public", "attachments")}`,
        byMass: { typed: say(), secondOverFirst: 0.5, tolerance: some(pc("5")) },
        byVolume: { typed: say(), secondOverFirst: 0.6, tolerance: some(pc("5")) },
        density: { resin: some(gcc("1.2")), hardener: some(gcc("1.0")), water: some(gcc("1.0")) },
        workingLife: [{ temperature: some(celsius("25")), mass: some(g("100")), time: some(min("30")) }],
        temperature: range(say(), 15, 30),
        humidity: range(say(), undefined, 0.7),
        cure: [{ temperature: some(celsius("20")), time: some(d("2")) }],
        service: some(celsius("55")),
        postCure: { temperature: range(say(), 55, 65), time: some(d("1")) },
        storage: range(say(), 5, 30),
        shelfLife: some(d("365")),
        woodMoisture: range(say(), 0.08, 0.12),
        spread: some({ typed: "", value: 0.2, unit: "kg/m²", step: 0 }),
        asks: asksWith(say),
        body: prose(base, "public", []),
      }),
    ],
    finishes: [
      {
        id: "clear",
        place,
        title: say(),
        kind: "varnish",
        sheet: say(),
        sheetFile: `papers/${base.say("public", "attachments")}`,
        temperature: range(say(), 15, 30),
        humidity: range(say(), undefined, 0.7),
        coats: 2,
        recoat: { after: some(min("60")), within: some(d("3")) },
        dry: some(d("1")),
        shelfLife: some(d("365")),
        body: prose(base, "public", []),
      },
    ],
    procedures: [
      procedure({ id: "std", title: say(), form: "glue-up", method: methodWith(say), asks: asksWith(say) }),
      procedure({
        title: say(),
        overlap: range(say(), 2, 3),
        leastCure: { time: some(d("3")), temperature: some(celsius("18")) },
        leastTemperature: some(celsius("10")),
        woodFailure: some(pc("75")),
        facePlyCounts: true,
        stress: some(mpa("6")),
        wood: { crushing: some(mpa("38")), shear: some(mpa("8")) },
        body: prose(base, "public", []),
      }),
    ],
  };
}

export function aircraftOf(base: Base, { aircraft }: Record, people: readonly Person[]): Aircraft {
  const { say, pick } = base;
  return {
    ...aircraft,
    name: say("public"),
    type: say("public"),
    targetPerWeek: 300,
    firstFlight: "2026-12-31",
    people: new Map(people.map((one) => [one.id, one])),
    tasks: [say("public")],
    datum: say("public"),
    designWeight: worded(g("900000"), say("public")),
    visit: say("public"),
    language: say("public"),
    address: `${say("public")}/`,
    photo: { place, file: `photos/${say("public")}`, alt: say("public"), caption: say("public"), audience: "public" },
    publicShows: WITHHELD_KINDS.filter(() => pick(true, false, false)),
    body: prose(base, "public", []),
  };
}

export function lotsOf(base: Base): Lot[] {
  const { anyone, say } = base;
  return (["resin", "hardener", "glue", "powder", "timber", "part", "finish"] as const).flatMap((material) =>
    [0, 1].map(() => {
      const audience = anyone();
      return lot(say(audience), {
        material,
        audience,
        title: say(audience),
        number: say(audience),
        amount: worded(material === "timber" ? mm("9000") : g("900"), say(audience)),
        cost: { typed: say(audience, "costs"), hundredths: 100, currency: "EUR" },
        supplier: say(audience, "suppliers"),
        certificate: say(audience, "certificates"),
        species: say(audience),
        thickness: worded(mm("25"), say(audience)),
        moisture: worded(pc("10"), say(audience)),
        grainSlope: say(audience),
        rings: worded({ typed: "", value: 300, unit: "1/m", step: 0 }, say(audience)),
        density: worded(gcc("0.4"), say(audience)),
        asked: {
          moisture: { typed: say(audience), most: 0.14 },
          grainSlope: say(audience),
          rings: { typed: say(audience), least: 200 },
          density: { typed: say(audience), least: 300 },
        },
        ...(material === "timber" ? { adhesive: undefined } : {}),
        ...(material === "finish" ? { finish: "clear" } : {}),
        body: prose(base, audience, []),
      });
    }),
  );
}

/** The shop was as warm as the batches ask all along, by a logger of each audience that comes up, one after the other. */
export function climateOf(base: Base): ClimateLog[] {
  const { anyone, say } = base;
  return [0, 1, 2].map((at) => {
    const audience = anyone();
    const id = say(audience);
    const times = Float64Array.from({ length: 40 }, (_, i) => Date.UTC(2025, 1, 10 + 20 * at) / 1000 + 43_200 * i);
    return {
      id,
      place,
      file: `climate/${id}.csv`,
      audience,
      title: say(audience),
      times,
      temperatures: times.map(() => 21 + at),
      humidities: times.map(() => 0.5),
      gap: 43_200,
      gapIsDefault: false,
      body: prose(base, audience, [id]),
    };
  });
}

export function earlierOf(base: Base, people: readonly Person[]): EarlierHours[] {
  const { anyone, say, pick } = base;
  return [0, 1, 2].map(() => {
    const audience = anyone();
    const id = say(audience);
    const line = (month: string, assembly?: string) => ({
      place,
      span: { typed: `2025-${month}`, from: `2025-${month}-01`, to: `2025-${month}-28` },
      who: pick(...people).id,
      task: say(audience),
      minutes: 45,
      typed: say(audience),
      source: say(audience),
      ...(assembly === undefined ? {} : { assembly }),
    });
    return {
      id,
      place,
      file: `hours/${id}.csv`,
      audience,
      title: say(audience),
      setAside: 0,
      lines: [line("01", "wing"), line("02")],
      body: prose(base, audience, [id]),
    };
  });
}

export function peopleOf(base: Base): Person[] {
  const { anyone, say } = base;
  return (["inspector", "helper", "helper"] as const).map((role) => {
    const audience = anyone();
    return {
      id: say(audience, "names"),
      place,
      audience,
      name: say(audience, "names"),
      publicName: say(audience),
      role,
      authority: say(audience, "names"),
      mayReturn: say(audience, "names"),
    };
  });
}

export function trialsOf(base: Base): Trial[] {
  const { anyone, say } = base;
  return [0, 1].map(() => {
    const audience = anyone();
    const id = say(audience);
    return {
      id,
      place,
      audience,
      title: say(audience),
      question: say(audience),
      stated: "2025-01-01",
      expectation: say(audience),
      preparations: [{ id: say(audience), what: say(audience) }],
      body: prose(base, audience, [id]),
    };
  });
}
