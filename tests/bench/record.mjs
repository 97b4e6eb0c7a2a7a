/** Writes a record of any size, of the demonstration record's kind: the same sorts of facts, about as often, and as much prose. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const DAY_MS = 86_400_000;
const FIRST_DAY = Date.UTC(2000, 0, 3);
/** Every third entry glues, and a later one breaks the pieces. */
export const BATCHES_EVERY = 3;
const BREAKS_AFTER = 9;
const JOINTS_PER_ASSEMBLY = 34;
const BATCHES_PER_TIN = 14;

const SENTENCES = [
  "Ripped two boards and planed the good faces before the light went.",
  "The stove had been lit since six to get the shop to where the sheet wants it.",
  "Everything was clamped dry first, and taken apart again, because one block stood proud by the width of a saw cut.",
  "I begin to look at the thermometer the way I look at a fuel gauge, early and with suspicion.",
  "It is *almost* certainly nothing, but it is written down, which is the reason for writing things down.",
  "The squeeze-out was even along both sides and still soft when we swept up.",
  "Marked each strip with a **small arrow** so that the rings stand alternately.",
  "Nobody bends over the lever while it is loaded; the guard was down and so were the glasses.",
  "What remains is sanding, and there is always sanding.",
  "The drawing gives the height to the half millimetre and the bench is not quite so sure.",
];

/** A small generator, so that the same size gives the same record. */
function dice(seed) {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state % below;
  };
}

/** Gives the ids of its entries. Without thermometers only a logger's file can prove a cure. */
export function writeRecord(folder, entryCount, { thermometers = true } = {}) {
  const batchCount = Math.ceil(entryCount / BATCHES_EVERY);
  const assemblyCount = Math.max(1, Math.ceil(batchCount / JOINTS_PER_ASSEMBLY));
  const lotCount = Math.max(1, Math.ceil(entryCount / 40));
  const plan = { entryCount, batchCount, assemblyCount, lotCount, thermometers, roll: dice(entryCount) };
  write(folder, "aircraft.md", aircraft());
  write(folder, "adhesives/everyday.md", adhesive());
  write(folder, "procedures/three-leg.md", procedure());
  for (let at = 0; at < assemblyCount; at += 1) write(folder, `assemblies/part-${at}.md`, assembly(at, plan));
  for (let at = 0; at < lotCount; at += 1)
    for (const [name, text] of lots(at, plan)) write(folder, `lots/${name}.md`, text);
  const names = Array.from({ length: entryCount }, (_, at) => `${day(at)}-session-${at}`);
  names.forEach((name, at) => write(folder, `entries/${name}.md`, entry(at, plan)));
  return names;
}

function write(folder, path, text) {
  const file = join(folder, path);
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(file, text);
}

const day = (at) => new Date(FIRST_DAY + at * DAY_MS).toISOString().slice(0, 10);
const batchId = (number) => `B-${String(number).padStart(4, "0")}`;
const jointId = (number) =>
  `P${Math.floor(number / JOINTS_PER_ASSEMBLY)}-J${String(number % JOINTS_PER_ASSEMBLY).padStart(2, "0")}`;

/** Gives a record of so many days a logger's file of so many rows, evenly spread: warm days, cold nights, cold winters. */
export function writeClimate(folder, days, rows) {
  const step = Math.round((days * DAY_MS) / rows / 60_000) * 60_000;
  const row = (at) => {
    const time = FIRST_DAY + at * step;
    const warmth =
      19 + 2 * Math.sin((2 * Math.PI * time) / DAY_MS) + 2 * Math.sin((2 * Math.PI * time) / (365.25 * DAY_MS));
    return `${new Date(time).toISOString().slice(0, 16).replace("T", " ")},${warmth.toFixed(1)},${(52 + 6 * Math.sin(at)).toFixed(0)}`;
  };
  write(
    folder,
    "climate/shop.csv",
    ["Time (UTC),Temperature (°C),Humidity (%)", ...Array.from({ length: rows }, (_, at) => row(at))].join("\n"),
  );
  write(
    folder,
    "climate/shop.md",
    `---\nfile: shop.csv\ntitle: Above the bench\ngap: ${Math.ceil((2 * step) / 3_600_000)} h\n---\nA logger made by a script.\n`,
  );
}

/** Has the first entries show `count` photographs, so many each: `photos/0.jpg` and so on. */
export function declarePhotos(folder, entries, count, perEntry, ending) {
  for (let from = 0; from < count; from += perEntry) {
    const file = join(folder, `entries/${entries[from / perEntry]}.md`);
    const lines = Array.from(
      { length: Math.min(perEntry, count - from) },
      (_, of) => `  - { file: ../photos/${from + of}.${ending}, alt: Work on part ${from + of} }`,
    );
    writeFileSync(file, readFileSync(file, "utf8").replace(/\n---\n/, `\nphotos:\n${lines.join("\n")}\n---\n`));
  }
}

function aircraft() {
  return `---
name: Bench record
type: two seats, wood
units: metric
time_zone: Europe/London
start: ${day(0)}
target: 9 h
people:
  - { id: builder, name: Ansa Thole, public: Ansa, role: builder }
  - { id: friend, name: Wim Orrin, public: Wim, role: helper }
  - { id: inspector, name: Ode Marl, public: the inspector, role: inspector }
tasks: [gluing, jigging, shaping, testing, housekeeping]
---
A record made by a script, to measure how long it takes to publish one.
`;
}

function adhesive() {
  return `---
title: Everyday structural epoxy
sheet: "data sheet, revision 3 (invented)"
by_mass: { ratio: "100 : 44", tolerance: ±4 % }
working_life:
  - { temperature: 20 °C, mass: 250 g, time: 40 min }
  - { temperature: 25 °C, mass: 250 g, time: 26 min }
temperature: 15 °C to 28 °C
humidity: at most 70 %
cure:
  - { temperature: 15 °C, time: 7 d }
  - { temperature: 20 °C, time: 4 d }
shelf_life: 730 d
wood_moisture: 8 % to 12 %
spread: 300 g/m²
---
The everyday adhesive.
`;
}

function procedure() {
  return `---
title: Three-leg piece in compression
form: three-leg
overlap: 2 to 3 thicknesses
pieces: 3
least_cure: { time: 4 d, temperature: 20 °C }
least_temperature: 15 °C
wood_failure: 75 %
wood: { crushing: 5610 psi, shear: 1150 psi }
---
Three sticks, the middle one glued between the outer two.
`;
}

function assembly(at, { batchCount, assemblyCount }) {
  const first = at * JOINTS_PER_ASSEMBLY;
  const joints = Array.from(
    { length: Math.min(JOINTS_PER_ASSEMBLY, batchCount - first) },
    (_, offset) => first + offset,
  );
  const parent = at === 0 ? "" : `parent: part-${Math.floor((at - 1) / 3)}\n`;
  return `---
title: Part ${at} of ${assemblyCount}
${parent}planned: 120 h
joints:
${joints.map((number) => `  - { id: ${jointId(number)}, title: "Joint ${number}", area: 320 cm², drawing: sheet ${number % 40} }`).join("\n")}
hold_points:
  - { id: P${at}-H1, title: Part ${at} before close-up, kind: close-up }
---
One part of many.
`;
}

/** Received when they are first wanted. */
function lots(at, { entryCount }) {
  const received = day(Math.min(at * BATCHES_PER_TIN * BATCHES_EVERY, entryCount - 1));
  const lot = (title, material, rest) =>
    `---\ntitle: ${title}\nmaterial: ${material}\n${rest}received: ${received}\namount: 2.5 kg\n---\n`;
  return [
    [`R-${at}`, lot(`Resin, tin ${at}`, "resin", "adhesive: everyday\nsupplier: Wend & Daughter\n")],
    [`H-${at}`, lot(`Hardener, tin ${at}`, "hardener", "adhesive: everyday\n")],
    [`S-${at}`, lot(`Spruce, bundle ${at}`, "timber", "species: Sitka spruce\nmoisture: 10.4 %\n")],
  ];
}

function entry(at, plan) {
  const { roll } = plan;
  const part = Math.min(plan.assemblyCount - 1, Math.floor(at / (BATCHES_EVERY * JOINTS_PER_ASSEMBLY)));
  const facts = [
    hours(roll),
    ...(at % BATCHES_EVERY === 0 ? [batch(at / BATCHES_EVERY, plan)] : []),
    ...tests(at, plan),
    ...occasional(at),
  ];
  return `---
date: ${day(at)}
title: "Session ${at}: ${["caps", "blocks", "ribs", "scarfs"][roll(4)]}"
assembly: part-${part}
${facts.join("\n")}
---

${prose(at, roll)}
`;
}

function hours(roll) {
  const time = () => `${1 + roll(4)}:${["00", "15", "30", "45"][roll(4)]}`;
  return `hours:\n  - { who: builder, task: shaping, time: ${time()} }\n  - { who: friend, task: jigging, time: ${time()} }`;
}

function batch(number, { roll, lotCount }) {
  const lot = Math.floor(number / BATCHES_PER_TIN) % lotCount;
  const resin = 60 + roll(400) / 10;
  const piece = (n) =>
    `      - { id: ${batchId(number)}/${n}, procedure: three-leg, lot: S-${lot}, thickness: 1/4 in, width: 1/4 in, overlap: 5/8 in }`;
  return `batches:
  - id: ${batchId(number)}
    adhesive: everyday
    mixed: "10:15"
    closed: "10:${37 + roll(10)}"
    scale: 0.1 g
    resin: { lot: R-${lot}, mass: ${resin.toFixed(1)} g }
    hardener: { lot: H-${lot}, mass: ${(resin * (0.435 + roll(10) / 1000)).toFixed(1)} g }
    shop: { temperature: ${15 + roll(5)}.5 °C, humidity: ${45 + roll(20)} % }
    moisture: ${9 + roll(2)}.${roll(10)} %
    timber: [S-${lot}]
    joints: [${jointId(number)}]
    pieces:
${[1, 2, 3].map(piece).join("\n")}`;
}

function tests(at, { roll, thermometers }) {
  const glued = at - BREAKS_AFTER;
  if (glued < 0 || glued % BATCHES_EVERY !== 0) return [];
  const line = (n) =>
    `  - { piece: ${batchId(glued / BATCHES_EVERY)}/${n}, at: "14:30", failure: wood, wood_failure: ${80 + 5 * roll(5)} %, load: ${1380 + roll(80)} N }`;
  const warmest = roll(8) === 0 ? 22 : 20;
  const shown = `thermometer:\n  - { from: "${day(glued)} 10:00", to: "${day(at)} 14:15", least: 15.5 °C, greatest: ${warmest} °C }\n`;
  return [`${thermometers ? shown : ""}tests:\n${[1, 2, 3].map(line).join("\n")}`];
}

function occasional(at) {
  const facts = [];
  if (at % 8 === 1)
    facts.push(
      `measurements:\n  - { what: height of rib ${at}, drawing: 62.0 mm, tolerance: ±0.5 mm, found: 62.${at % 5} mm }`,
    );
  if (at % 20 === 2)
    facts.push(
      `departures:\n  - { id: D-${at}, what: packer added behind the post, why: wider glue face, accepted_by: inspector }`,
    );
  if (at % 10 === 4)
    facts.push(`open_items:\n  raise: [{ id: O-${at}, what: corner block left for later, before: close-up }]`);
  if (at % 10 === 8) facts.push(`open_items:\n  close: [O-${at - 4}]`);
  return facts;
}

function prose(at, roll) {
  const sentence = () => SENTENCES[roll(SENTENCES.length)];
  const paragraph = () => Array.from({ length: 2 + roll(3) }, sentence).join(" ");
  const link =
    at % BATCHES_EVERY === 0 ? ` The cup is [${batchId(at / BATCHES_EVERY)}](${batchId(at / BATCHES_EVERY)}).` : "";
  return [`${paragraph()}${link}`, paragraph(), paragraph(), `- ${sentence()}\n- ${sentence()}`].join("\n\n");
}
