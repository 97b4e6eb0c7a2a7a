import type { JSX } from "preact";
import { placedMarks } from "../../src/charts/plate.ts";
import type { PlacedMark } from "../../src/charts/plate.ts";
import type { JointFile, JointState } from "../../src/evidence/types.ts";
import { relative } from "../../src/pages/address.ts";
import type { Site } from "../../src/editions/shown.ts";
import type { Assembly } from "../../src/facts/types.ts";
import { counted } from "../../src/words/lists.ts";
import { Mark, markClass, Shape } from "./mark.tsx";
import { Image } from "./picture.tsx";
import { spotClass } from "./placed.ts";

export interface PlateProps {
  readonly site: Site;
  readonly from: string;
  readonly assembly: Assembly;
  readonly joints: readonly JointFile[];
}

/** The narrowest that a drawing is laid out, for which its marks are placed: wider only gives them more room. */
const LEAST_WIDTH = 680;
const USUAL_SHAPE = 0.62;
/** Of a mark: its height, the least width, and what its shape and each letter take of it. */
const MARK = { height: 28, least: 64, shape: 42, letter: 8.5 };

export const STATES: readonly JointState[] = ["shown", "pending", "not shown", "quarantined", "opened", "not glued"];

/** What tells the joints of one assembly apart: `WS-J07` → `J07`. */
function shortId(id: string): string {
  return id.slice(id.lastIndexOf("-") + 1);
}

function placesOf(site: Site, file: string, joints: readonly JointFile[]): PlacedMark[] {
  const picture = site.pictures.get(file);
  const shape = picture === undefined || picture.width === 0 ? USUAL_SHAPE : picture.height / picture.width;
  const widthOf = (id: string): number => Math.max(MARK.least, MARK.shape + shortId(id).length * MARK.letter);
  const spots = joints.flatMap(({ joint: { id, at } }) =>
    at === undefined ? [] : [{ id, x: at.x, y: at.y, width: widthOf(id) }],
  );
  return placedMarks(spots, { width: LEAST_WIDTH, height: LEAST_WIDTH * shape }, MARK.height);
}

/** Marks of joints on a drawing, each with its short id and its state. */
export function plateMarks(
  site: Site,
  file: string,
  joints: readonly JointFile[],
): readonly (PlacedMark & { readonly words: string; readonly state: JointState })[] {
  const states = new Map(joints.map(({ joint, state }) => [joint.id, state]));
  return placesOf(site, file, joints).map((place) => ({
    ...place,
    words: shortId(place.id),
    state: states.get(place.id) ?? "not glued",
  }));
}

/** A line from each mark to its joint, which has a dot. */
function Leads({ places }: { readonly places: readonly PlacedMark[] }): JSX.Element {
  return (
    <svg class="plate__leads" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      <path d={places.map(({ left, top, of }) => `M${left} ${top}L${of.left} ${of.top}`).join("")} />
      <path class="plate__dots" d={places.map(({ of }) => `M${of.left} ${of.top}h0`).join("")} />
    </svg>
  );
}

/** The drawing of an assembly with a mark on every joint, each leading to the joint's page. */
export function Plate({ site, from, assembly, joints }: PlateProps): JSX.Element | null {
  const { drawing } = assembly;
  if (drawing === undefined) return null;
  const places = placesOf(site, drawing.file, joints);
  const byId = new Map(joints.map((file) => [file.joint.id, file]));
  return (
    <figure class="plate">
      <section class="plate__scroll" tabIndex={0} aria-label={`Drawing of ${assembly.title}`}>
        <div class="plate__sheet">
          <Image site={site} from={from} photo={drawing} sizes="(min-width: 80rem) 74rem, 100vw" lazy={false} />
          <Leads places={places} />
          <ul class="plate__marks">
            {places.map(({ id, left, top }) => {
              const file = byId.get(id);
              return file === undefined ? null : (
                <li class={spotClass(left, top)}>
                  <a
                    class={markClass(file.state)}
                    href={relative(from, `joint/${id}.html`)}
                    title={`${file.joint.title}: ${file.state}`}
                  >
                    <Shape of={file.state} />
                    <span>{shortId(id)}</span>
                    <span class="unseen">
                      : {file.joint.title}, {file.state}
                    </span>
                  </a>
                </li>
              );
            })}
          </ul>
        </div>
      </section>
      <figcaption>
        <JointKey joints={joints} />
      </figcaption>
    </figure>
  );
}

function JointKey({ joints }: { readonly joints: readonly JointFile[] }): JSX.Element {
  const shown = STATES.map((state) => ({ state, count: joints.filter((file) => file.state === state).length })).filter(
    ({ count }) => count > 0,
  );
  return (
    <ul class="key">
      {shown.map(({ state, count }) => (
        <li>
          <Mark of={state} /> <span class="quiet">{counted(count, "joint")}</span>
        </li>
      ))}
    </ul>
  );
}
