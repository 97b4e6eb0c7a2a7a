/** Why no copy of a clip can be made; `reason` is what stood there, in few words. */
export class Refused extends Error {
  readonly kind: "damaged" | "codec" | "no picture";

  constructor(kind: Refused["kind"], reason: string) {
    super(reason);
    this.kind = kind;
  }
}
