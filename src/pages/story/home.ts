import { defined } from "../../defined.ts";
import type { HoldPointFile, HoldState } from "../../evidence/types.ts";
import { total } from "../../reckoning/hours/hours.ts";
import type { Assembly, Entry } from "../../facts/types.ts";
import type { AssemblyFile } from "../../evidence/types.ts";
import { paceOf } from "../forecast/hours.ts";
import type { Pace } from "../forecast/hours.ts";
import { pictured, pictureOf } from "./pictured.ts";
import type { EntryPicture, Pictured } from "./pictured.ts";
import type { Shown } from "../../editions/shown.ts";
import { plannedWithin } from "./planned.ts";
import { storyOf } from "./story.ts";

export interface Glance {
  readonly assembly: Assembly;
  readonly depth: number;
  readonly file: AssemblyFile;
  readonly minutes: number;
  readonly next?: HoldPointFile;
}

export interface HomeView {
  readonly lead?: { readonly photo: EntryPicture; readonly entry?: Entry };
  readonly newest: readonly Entry[];
  /** Of entries before the newest, so that none is shown twice. */
  readonly pictures: readonly Pictured[];
  readonly total: number;
  readonly pace: Pace;
  /** Minutes planned of all that is planned, and worked on it. */
  readonly plan?: { readonly planned: number; readonly worked: number };
  /** The hold point that comes next. */
  readonly next?: HoldPointFile;
  /** How many hold points there are, and how many are passed. */
  readonly points: number;
  readonly passed: number;
  readonly glance: readonly Glance[];
}

const NEWEST = 6;
const PICTURES = 3;
const ORDER: { readonly [state in HoldState]: number } = {
  reopened: 0,
  "signed with things open": 1,
  ready: 2,
  blocked: 3,
  ahead: 4,
  passed: 5,
};

/** Hold points not passed: those that were signed or are ready, then those with the least left to do. */
function holdPointsAhead(shown: Shown): HoldPointFile[] {
  const ahead = [...shown.evidence.holdPoints.values()].filter(({ state }) => state !== "passed");
  return ahead.sort(
    (a, b) =>
      ORDER[a.state] - ORDER[b.state] || a.needs.length - b.needs.length || (a.holdPoint.id < b.holdPoint.id ? -1 : 1),
  );
}

export function homeView(shown: Shown): HomeView {
  const { record, evidence } = shown;
  const story = storyOf(shown);
  const newest = record.entries.slice(-NEWEST).reverse();
  const ahead = holdPointsAhead(shown);
  const points = evidence.holdPoints.size;
  const lead = leadOf(shown);
  return defined({
    newest,
    pictures: pictured([...record.entries].slice(0, -NEWEST).reverse()).slice(0, PICTURES),
    total: total(story.work),
    pace: paceOf(shown),
    plan: planOf(shown),
    points,
    passed: points - ahead.length,
    glance: story.tree.flatMap(({ assembly, depth }) => glanceOf(shown, assembly, depth)),
    lead,
    next: ahead[0],
  });
}

/** Of assemblies in none, with all within each: what is planned of some, and what was worked on those. */
function planOf(shown: Shown): HomeView["plan"] {
  const { workOf, tree } = storyOf(shown);
  const plans = tree.flatMap(({ assembly: { id }, depth }) => {
    const planned = depth === 0 ? plannedWithin(shown, id) : undefined;
    return planned === undefined ? [] : [{ planned, worked: total(workOf.get(id) ?? []) }];
  });
  const sum = (part: "planned" | "worked"): number => plans.reduce((all, plan) => all + plan[part], 0);
  return plans.length === 0 ? undefined : { planned: sum("planned"), worked: sum("worked") };
}

/** The aircraft's own photograph, else the newest one of an entry. */
function leadOf(shown: Shown): HomeView["lead"] {
  const own = shown.record.aircraft.photo;
  if (own !== undefined) return { photo: own };
  for (const entry of [...shown.record.entries].reverse()) {
    const photo = pictureOf(entry);
    if (photo !== undefined) return { photo, entry };
  }
  return undefined;
}

function glanceOf(shown: Shown, assembly: Assembly, depth: number): Glance[] {
  const file = shown.evidence.assemblies.get(assembly.id);
  if (file === undefined) return [];
  const next = file.nextHoldPoint === undefined ? undefined : shown.evidence.holdPoints.get(file.nextHoldPoint);
  return [defined({ assembly, depth, file, minutes: total(storyOf(shown).workOf.get(assembly.id) ?? []), next })];
}
