/** Where limits come from, by code. */
import type { NoValues } from "./no-values.ts";

export interface SourceValues {
  "source/record": NoValues;
  "source/any-sheet": NoValues;
  "source/any-procedure": NoValues;
  /** The data sheet of one adhesive, by its title as entered. */
  "source/sheet": { readonly sheet: string };
  "source/procedure": { readonly title: string };
  "source/ac-43-13-sample": NoValues;
  "source/ac-43-13-timber": NoValues;
  "source/ac-43-13-gluing": NoValues;
  /** The drawing of a joint, by its title as entered. */
  "source/joint-drawing": { readonly title: string };
  "source/ac-43-13-sanding": NoValues;
  "source/handbook-moisture": NoValues;
  "source/guarded-acceptance": NoValues;
  "source/paint-rule": NoValues;
  "source/usual-cure": NoValues;
  "source/usual-room": NoValues;
  "source/equivalent-age": NoValues;
  "source/doubling": NoValues;
  "source/usual-overlap": NoValues;
  "source/usual-scarf": NoValues;
  "source/sitka-spruce": NoValues;
  "source/statics": NoValues;
  "source/trace": NoValues;
  "source/loss": NoValues;
  "source/ac-20-27-tasks": NoValues;
  "source/ac-20-27-total": NoValues;
  "source/by-country": NoValues;
  "source/faa-scales": NoValues;
  "source/moments": NoValues;
  "source/bare-faces": NoValues;
  "source/any-finish-sheet": NoValues;
}
