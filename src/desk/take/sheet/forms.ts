/** In which forms a column writes its days, as far as its cells show it. */
import { dayReader } from "../../../facts/time/day-form.ts";
import { readSpan } from "../../../facts/time/span.ts";

/** By what parts the figures, the orders that people write. */
const ORDERS = ["D?M?YYYY", "M?D?YYYY", "D?M?YY", "M?D?YY", "YYYY?M?D", "M?YYYY"];
const MARKS = [".", "/", "-", " "];
const FORMS = MARKS.flatMap((mark) => ORDERS.map((order) => order.replaceAll("?", mark)));

/** Forms that read the most cells first, none that reads a cell which another reads too: those only the builder can tell apart. */
export function formsIn(cells: readonly string[]): string[] {
  const others = cells.filter((cell) => cell !== "" && "fault" in readSpan(cell));
  const counted = FORMS.map((form) => {
    const read = dayReader(form);
    return { form, reads: new Set(others.filter((cell) => isRead(read?.(cell)))) };
  }).sort((a, b) => b.reads.size - a.reads.size);
  const taken = new Set<string>();
  return counted.flatMap(({ form, reads }) => {
    if (reads.size === 0 || [...reads].some((cell) => taken.has(cell))) return [];
    for (const cell of reads) taken.add(cell);
    return [form];
  });
}

const isRead = (reading: { readonly value: unknown } | { readonly fault: unknown } | undefined): boolean =>
  reading !== undefined && "value" in reading;
