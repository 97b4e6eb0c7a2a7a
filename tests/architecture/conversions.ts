import { parseSync } from "oxc-parser";
import { walk, type SourceFile } from "./source.ts";

const [POUND, INCH, GRAVITY] = [0.45359237, 0.0254, 9.80665];
const POWERS = [-3, -2, -1, 0, 1, 2, 3];
/** Ounces in a pound, inches and their squares and cubes in a foot, fluid ounces in a cubic inch. */
const TIMES = [1, 16, 12, 144, 1728, 128 / 231];

/** Factors from units of pound, inch and foot to those of the SI and back, whatever power of ten stands with them. */
const FACTORS: readonly number[] = [-1, 0, 1].flatMap((pound) =>
  [-1, 0, 1].flatMap((gravity) =>
    POWERS.flatMap((inch) =>
      pound === 0 && gravity === 0 && inch === 0
        ? []
        : TIMES.flatMap((times) => {
            const one = POUND ** pound * GRAVITY ** gravity * INCH ** inch;
            return [one * times, one / times];
          }),
    ),
  ),
);
/** Factors that people know by four digits or fewer: inch, foot, ounce, pound, the forces and pressures by them. */
const KNOWN = [INCH, INCH * 12, POUND, POUND / 16, GRAVITY, POUND * GRAVITY, (POUND * GRAVITY) / INCH ** 2];
const SHORT: readonly number[] = KNOWN.flatMap((one) => [one, 1 / one]);
/** Of temperature and of time. */
const EXACT = [1.8, 273.15, 1440, 2880, 3600, 86_400, 604_800, 3_600_000, 86_400_000, 604_800_000];

/** Numbers typed in a file that convert one unit into another, as they stand there. */
export function conversionsIn(file: SourceFile): string[] {
  const found: string[] = [];
  walk(parseSync(file.path, file.text).program, (node) => {
    const raw = file.text.slice(node.start, node.end);
    const product = /^(\d+) \* (\d+)$/.exec(raw);
    if (product !== null && EXACT.includes(Number(product[1]) * Number(product[2]))) found.push(raw);
    if (node.type !== "Literal" || typeof node.value !== "number") return;
    if (converts(node.value, digitsOf(raw))) found.push(raw);
  });
  return found;
}

function converts(value: number, digits: number): boolean {
  if (EXACT.includes(value)) return true;
  const among = digits >= 6 ? FACTORS : digits >= 3 ? SHORT : [];
  return among.some((factor) => mantissa(factor, digits) === mantissa(value, digits));
}

const digitsOf = (raw: string): number =>
  raw.replace(/e.*$/i, "").replace(/[._]/g, "").replace(/^0+/, "").replace(/0+$/, "").length;

/** So many digits, without the power of ten. */
const mantissa = (value: number, digits: number): string => value.toExponential(digits - 1).replace(/e.*$/, "");
