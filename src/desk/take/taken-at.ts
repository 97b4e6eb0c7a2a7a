/** When a photograph was taken, by the text that its camera wrote into it. */
import exifr from "exifr";
import { Temporal } from "temporal-polyfill";

export interface TakenAt {
  /** `YYYY-MM-DD` and `HH:MM` in the record's time zone. */
  readonly day: string;
  readonly time: string;
  /** Whether the camera said how far its clock was from UTC; without, its clock is taken for the workshop's. */
  readonly hasOffset: boolean;
}

/** Undefined where the camera said nothing that is a moment. The text is read as it stands, by no clock of this machine. */
export async function takenAt(bytes: Buffer, timeZone: string): Promise<TakenAt | undefined> {
  const noted = await notedIn(bytes);
  const [, year, month, day, hour, minute] =
    /^(\d{4})[:-](\d{2})[:-](\d{2})[ T](\d{2}):(\d{2})/u.exec(noted?.DateTimeOriginal ?? "") ?? [];
  if (year === undefined) return undefined;
  try {
    const wall = Temporal.PlainDateTime.from(`${year}-${month}-${day}T${hour}:${minute}`);
    const offset = /^[+-]\d{2}:\d{2}$/u.exec(noted?.OffsetTimeOriginal ?? "")?.[0];
    const local = offset === undefined ? wall : wall.toZonedDateTime(offset).withTimeZone(timeZone).toPlainDateTime();
    return {
      day: local.toPlainDate().toString(),
      time: local.toPlainTime().toString({ smallestUnit: "minute" }),
      hasOffset: offset !== undefined,
    };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

interface Noted {
  readonly DateTimeOriginal?: string;
  readonly OffsetTimeOriginal?: string;
}

/** Nothing where the file has no such notes, or broken ones. */
async function notedIn(bytes: Buffer): Promise<Noted | undefined> {
  try {
    return await exifr.parse(bytes, { reviveValues: false, pick: ["DateTimeOriginal", "OffsetTimeOriginal"] });
  } catch {
    return undefined;
  }
}
