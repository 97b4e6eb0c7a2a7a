/**
 * How high the boxes of a trace stand: in each column in an order in which few lines cross, and near what lines join
 * them to.
 */

/** Lines by the numbers of their boxes. */
type Line = readonly [from: number, to: number];

interface Columns {
  /** Numbers of the boxes of each column, from the left, and in a column from the top. */
  readonly columns: readonly (readonly number[])[];
  /** By the number of a box, the boxes that lines lead to it from, and those that lines lead to. */
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
  readonly lines: readonly Line[];
}

/** Passes over all columns, there and back; more bettered nothing in records that were tried. */
const ORDERINGS = 12;

/**
 * Heights of middles from the highest box down, at least a step apart in a column. `columnOf` has the column of each
 * box.
 */
export function heightsOf(columnOf: readonly number[], lines: readonly Line[], step: number): readonly number[] {
  const joined = joinedBy(columnOf, lines);
  const columns = ordered(joined);
  const heights = placed({ ...joined, columns }, step);
  const top = Math.min(...heights);
  return heights.map((height) => height - top);
}

function joinedBy(columnOf: readonly number[], lines: readonly Line[]): Columns {
  const across = lines.filter(([from, to]) => columnOf[from] !== columnOf[to]);
  const numbers = [...new Set(columnOf)].sort((a, b) => a - b);
  const columns = numbers.map((number) => [...columnOf.keys()].filter((at) => columnOf[at] === number));
  const before: number[][] = columnOf.map(() => []);
  const after: number[][] = columnOf.map(() => []);
  for (const [from, to] of across) {
    before[to]?.push(from);
    after[from]?.push(to);
  }
  return { columns, before, after, lines: across };
}

/**
 * The best of the orders that come of putting each box at the mean of its neighbours, column after column, there and
 * back.
 */
function ordered({ columns, before, after, lines }: Columns): Columns["columns"] {
  let best = columns;
  let fewest = crossings(columns, lines);
  let now = columns;
  for (let pass = 0; pass < ORDERINGS && fewest > 0; pass += 1) {
    const isBack = pass % 2 === 1;
    // Of boxes that are drawn to one place now the first stands first, now the last.
    const bias = pass % 4 < 2 ? 1 : -1;
    const place = placesIn(now);
    const next = [...now];
    for (const at of walk(now.length, isBack)) {
      const sorted = sortedBy(next[at] ?? [], isBack ? after : before, place, bias);
      sorted.forEach((box, down) => (place[box] = down));
      next[at] = sorted;
    }
    now = next;
    const crossed = crossings(now, lines);
    if (crossed < fewest) [best, fewest] = [now, crossed];
  }
  return best;
}

const walk = (count: number, isBack: boolean): number[] =>
  Array.from({ length: count }, (_, at) => (isBack ? count - 1 - at : at));

function placesIn(columns: Columns["columns"]): number[] {
  const place: number[] = [];
  for (const column of columns) column.forEach((box, down) => (place[box] = down));
  return place;
}

/** A box without neighbours there stays where it is, the others in order around it. */
function sortedBy(
  column: readonly number[],
  neighbours: Columns["before"],
  place: readonly number[],
  bias: number,
): number[] {
  const drawn = column.filter((box) => (neighbours[box] ?? []).length > 0);
  const to = new Map(drawn.map((box) => [box, meanOf(neighbours[box] ?? [], place)]));
  const sorted = [...drawn].sort(
    (a, b) => (to.get(a) ?? 0) - (to.get(b) ?? 0) || bias * (column.indexOf(a) - column.indexOf(b)),
  );
  return column.map((box) => (to.has(box) ? (sorted.shift() ?? box) : box));
}

const meanOf = (boxes: readonly number[], of: readonly number[]): number =>
  boxes.reduce((sum, box) => sum + (of[box] ?? 0), 0) / boxes.length;

/** How often two lines between the same columns cross. */
function crossings(columns: Columns["columns"], lines: readonly Line[]): number {
  const place = placesIn(columns);
  const columnOf: number[] = [];
  columns.forEach((column, at) => column.forEach((box) => (columnOf[box] = at)));
  let count = 0;
  lines.forEach(([from, to], at) => {
    for (const [otherFrom, otherTo] of lines.slice(at + 1))
      if (
        columnOf[from] === columnOf[otherFrom] &&
        columnOf[to] === columnOf[otherTo] &&
        ((place[from] ?? 0) - (place[otherFrom] ?? 0)) * ((place[to] ?? 0) - (place[otherTo] ?? 0)) < 0
      )
        count += 1;
  });
  return count;
}

/**
 * The longest column stands close; from there to both sides each box stands as near the mean of its neighbours as the
 * others of its column let it.
 */
function placed({ columns, before, after }: Columns, step: number): number[] {
  const heights: number[] = [];
  const longest = columns.reduce((best, column, at) => (column.length > (columns[best]?.length ?? 0) ? at : best), 0);
  const put = (column: readonly number[], neighbours: Columns["before"]): void => {
    const wanted = column.map((box) => (neighbours[box] ?? []).filter((other) => heights[other] !== undefined));
    const known = wanted.map((others) => (others.length === 0 ? undefined : meanOf(others, heights)));
    apart(filled(known, step), step).forEach((height, down) => (heights[column[down] ?? 0] = height));
  };
  put(columns[longest] ?? [], []);
  for (const column of columns.slice(longest + 1)) put(column, before);
  for (const column of columns.slice(0, longest).reverse()) put(column, after);
  return heights;
}

/** Whatever no line asks for stands below what is above it, or above what is below. */
function filled(wanted: readonly (number | undefined)[], step: number): number[] {
  const first = wanted.findIndex((height) => height !== undefined);
  let last = first < 0 ? -step : (wanted[first] ?? 0) - (first + 1) * step;
  return wanted.map((height) => (last = height ?? last + step));
}

/** The heights nearest to those wanted (by least squares) that stand in their order, at least a step apart. */
function apart(wanted: readonly number[], step: number): number[] {
  const runs: { sum: number; count: number }[] = [];
  wanted.forEach((height, down) => {
    let run = { sum: height - down * step, count: 1 };
    for (let last = runs.at(-1); last && last.sum / last.count > run.sum / run.count; last = runs.at(-1)) {
      run = { sum: last.sum + run.sum, count: last.count + run.count };
      runs.pop();
    }
    runs.push(run);
  });
  return runs
    .flatMap(({ sum, count }) => Array<number>(count).fill(sum / count))
    .map((base, down) => base + down * step);
}
