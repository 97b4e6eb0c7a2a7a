/** What happened on a day. */
import type { Place } from "../../problem.ts";
import type { Amendment } from "./amendment.ts";
import type {
  Attachment,
  Audience,
  Clip,
  Day,
  Dimension,
  FilePath,
  Moment,
  Passage,
  Photo,
  Placed,
  Quantity,
  Range,
  Tolerance,
} from "../values.ts";

export interface HoursLine {
  readonly place: Place;
  readonly who: string;
  readonly task: string;
  readonly minutes: number;
  readonly typed: string;
  readonly assembly: string;
}

/** What was sawn from a lot of timber or plywood: m, m², m³ or kg, as the lot's own amount. */
export interface Cut {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly amount: Quantity;
}

/** What one component of a mix was: from which lot and how much, by mass or by volume. */
export interface Component {
  readonly lot?: string;
  readonly mass?: Quantity;
  readonly volume?: Quantity;
}

export interface Piece extends Placed {
  readonly batch: string;
  readonly procedure: string;
  /** The timber lot it was made from. */
  readonly lot?: string;
  readonly thickness?: Quantity;
  readonly width?: Quantity;
  readonly overlap?: Quantity;
  /** A piece made for a trial is judged by the trial and never counts for its batch. */
  readonly trial?: string;
  readonly preparation?: string;
}

export interface Batch extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly adhesive: string;
  readonly resin?: Component;
  readonly hardener?: Component;
  /** Reading step of the scale (mass) or the measure (volume). */
  readonly scale?: Quantity;
  readonly mixed?: Moment;
  readonly closed?: Moment;
  readonly temperature?: Quantity;
  readonly humidity?: Quantity;
  /** Temperature of the surfaces that were glued. */
  readonly surface?: Quantity;
  /** Wood moisture as read by a meter. */
  readonly moisture?: Quantity;
  readonly joints: readonly string[];
  /** Timber and plywood lots that the glued parts were made from. */
  readonly timber: readonly string[];
  readonly pieces: readonly Piece[];
}

export type FailureMode = "wood" | "glue line" | "mixed";

export interface PieceTest {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly piece: string;
  readonly at?: Moment;
  readonly failure: FailureMode;
  readonly woodFailure?: Quantity;
  readonly load?: Quantity;
  readonly photo?: string;
  readonly witness?: string;
  readonly note?: string;
}

export interface Measurement {
  readonly place: Place;
  readonly entry: string;
  readonly what: string;
  readonly assembly: string;
  readonly dimension: Dimension;
  readonly drawing?: Quantity;
  /** What the drawing asks where it gives limits in place of a measure. */
  readonly limits?: Range;
  readonly tolerance?: Tolerance;
  readonly found: Quantity;
  /** A word that two opposite sides share, and which of them this is. Both or neither. */
  readonly pair?: string;
  readonly side?: Side;
  /** How far the sides may differ, to either side; the same wherever it is given for a pair. */
  readonly pairTolerance?: Quantity;
  readonly departure?: string;
}

export type Side = "left" | "right" | "front" | "back" | "upper" | "lower";

/** A part weighed on the way. One of the same words weighed later takes its place. */
export interface Weighing {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly part: string;
  readonly mass: Quantity;
  /** From the aircraft's datum, behind it positive. */
  readonly arm?: Quantity;
  /** Parts weighed before that are in this one. */
  readonly insteadOf: readonly string[];
}

/** The aircraft, or what there is of it, on three scales; readings less tare. */
export interface OnScales {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly what?: string;
  readonly left: Quantity;
  readonly right: Quantity;
  readonly third: Quantity;
  readonly at: "nose" | "tail";
  /** Arm of the main wheels from the aircraft's datum, behind it positive. */
  readonly mains: Quantity;
  readonly wheelbase: Quantity;
}

export interface Departure extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  readonly why: string;
  readonly acceptedBy?: string;
  readonly acceptedIn?: string;
  readonly audience: Audience;
}

export interface OpenItem extends Placed {
  readonly entry: string;
  readonly day: Day;
  readonly assembly: string;
  readonly what: string;
  /** A hold point's id, or a kind of hold point: then every one of that kind on the way up from the assembly. */
  readonly before?: string;
  readonly closedIn?: string;
  readonly audience: Audience;
}

/** A notice that a lot must not be trusted any more. */
export interface Recall {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly lot: string;
  readonly why: string;
  readonly reference?: string;
}

/** Glue taken out of joints. Only batches of the same or a later entry count for them from then on. */
export interface Rework {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly joints: readonly string[];
  readonly why: string;
}

/** The builder's own decision that a batch is not to be trusted, whatever its pieces show. */
export interface Rejection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly batch: string;
  readonly why: string;
}

/** Someone looked at a hold point. */
export interface Inspection {
  readonly place: Place;
  readonly entry: string;
  readonly day: Day;
  readonly holdPoint: string;
  readonly by: string;
  readonly result: "signed" | "not signed";
  readonly reference?: string;
  readonly scan?: FilePath;
  readonly remarks?: string;
}

export interface Entry extends Placed {
  readonly file: FilePath;
  readonly day: Day;
  /** First and last second of the day in the aircraft's time zone. */
  readonly dayStart: number;
  readonly dayEnd: number;
  readonly title: string;
  readonly assembly: string;
  readonly audience: Audience;
  readonly hours: readonly HoursLine[];
  readonly cuts: readonly Cut[];
  readonly batches: readonly Batch[];
  readonly tests: readonly PieceTest[];
  readonly measurements: readonly Measurement[];
  readonly weighed: readonly Weighing[];
  readonly scales?: OnScales;
  readonly departures: readonly Departure[];
  readonly raised: readonly OpenItem[];
  readonly closed: readonly string[];
  readonly photos: readonly Photo[];
  readonly clips: readonly Clip[];
  readonly attachments: readonly Attachment[];
  readonly recalls: readonly Recall[];
  readonly reworks: readonly Rework[];
  readonly rejections: readonly Rejection[];
  readonly inspections: readonly Inspection[];
  /** What it amends in earlier entries. */
  readonly amendments: readonly Amendment[];
  readonly body: readonly Passage[];
}
