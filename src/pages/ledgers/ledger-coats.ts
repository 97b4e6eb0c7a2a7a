/** The ledger of coats. */
import type { CoatFile } from "../../evidence/types.ts";
import { WITHHELD } from "../../facts/visibility.ts";
import { figure, type Ledger, ledger, moment, quantity, told, typed } from "./column.ts";

export const COATS: Ledger = ledger<CoatFile>(
  "coats",
  "One coat of what is put on, assembly by assembly.",
  ({ evidence }) => evidence.coats,
  [
    told("entry", "Id of the entry that notes it.", ({ coat }) => coat.entry),
    told("day", "The day it was put on.", ({ coat }) => coat.day, "day"),
    typed("assembly", "entry: coats[].assembly", ({ coat }) => coat.assembly),
    typed("where", "entry: coats[].where", ({ coat }) => coat.where),
    typed("finish", "entry: coats[].finish", ({ coat }) => coat.finish),
    typed("coat", "entry: coats[].coat", ({ coat }) => coat.coat, "integer"),
    typed(
      "lots",
      "entry: coats[].lot",
      ({ coat }) => coat.lots.map((id) => (id === WITHHELD ? "withheld" : id)),
      "ids",
    ),
    told("verdict", "What the record shows of it.", ({ verdict }) => verdict),
    ...moment<CoatFile>("at", "entry: coats[].at", ({ coat }) => coat.at),
    ...moment<CoatFile>("dry", "entry: coats[].dry", ({ coat }) => coat.dry),
    ...quantity<CoatFile>(
      "shop_temperature",
      "degc",
      "entry: coats[].shop.temperature",
      ({ coat }) => coat.temperature,
    ),
    ...quantity<CoatFile>("shop_humidity", "share", "entry: coats[].shop.humidity", ({ coat }) => coat.humidity),
    figure("sheet_dry_epoch_s", "When the sheet’s time of drying is over.", ({ dryFrom }) => dryFrom),
    typed("bare", "entry: coats[].bare", ({ coat }) => coat.bare),
    typed("stripped", "entry: coats[].stripped", ({ coat }) => coat.stripped),
    typed("departure", "entry: coats[].departure", ({ coat: { departure } }) =>
      departure === WITHHELD ? "withheld" : departure,
    ),
    told("taken_off_day", "The day it was taken off; empty while it is there.", ({ off }) => off?.day, "day"),
    told("taken_off_entry", "Id of the entry that notes that.", ({ off }) => off?.entry),
  ],
);
