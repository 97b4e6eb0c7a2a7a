import { quantity } from "../field.ts";

/** An arm from the aircraft's datum. */
export const arm = (what: string, example: string) =>
  quantity(
    { dimension: "length", sign: "any", example },
    `${what} the datum that aircraft.md names: behind it positive, ahead of it negative.`,
  );
