/** Texts that are put into a record to see what becomes of them. */
import fc from "fast-check";

/** Texts of the kinds that YAML, JavaScript or a spreadsheet would make something else of. */
const TRICKS = [
  "1:30",
  "0123",
  "0x1F",
  "1e3",
  "true",
  "no",
  "null",
  "~",
  "NaN",
  "Infinity",
  "-0",
  "2025-03-08T00:00:00Z",
  "1_000",
  "12:30:45",
  "__proto__",
  "constructor",
  "toString",
  "1/4 in",
  "42.0 g",
  "52 %",
  "2:45",
  "S-1",
  "builder",
  "flight",
  "return to service",
  "+5 mm",
  "<b>",
  "[x](javascript:y)",
  "9999-12-31",
  "0000-01-01",
  "2024-02-29",
  "2025-02-29",
  "1899-12-31",
  "١٢ mm",
  "１２ mm",
  "1\u00a0000 g",
  "1\u202f000 g",
  "−5 °C",
  "5 ° C",
  "1½ in",
  "½in",
  "1e309 m",
  `${"9".repeat(400)} g`,
  `0.${"0".repeat(400)}1 g`,
  "a\u0000b",
  "\u202eabc",
  "e\u0301",
  "\ud800",
] as const;

const UNITS = [
  "g",
  "kg",
  "mm",
  "cm",
  "in",
  "ft",
  "lb",
  "oz",
  "%",
  "°C",
  "°F",
  "K",
  "min",
  "h",
  "d",
  "N",
  "lbf",
  "MPa",
  "psi",
  "ml",
  "cm²",
  "g/m²",
  "g/cm³",
  "",
  "x",
];
const number = fc.oneof(
  fc.nat(400).map(String),
  fc.tuple(fc.nat(999), fc.stringMatching(/^\d{1,5}$/)).map(([whole, part]) => `${whole}.${part}`),
  fc
    .tuple(fc.nat(12), fc.nat(15), fc.constantFrom(2, 3, 8, 16, 32))
    .map(([whole, over, under]) => `${whole} ${over}/${under}`),
  fc.stringMatching(/^\d{1,30}$/),
);
const quantity = fc
  .tuple(fc.constantFrom("", "", "", "-", "+", "±"), number, fc.constantFrom(" ", "", "  "), fc.constantFrom(...UNITS))
  .map((parts) => parts.join(""));
const day = fc
  .tuple(fc.constantFrom("2025", "2024", "1900", "2199", "2200", "25"), fc.nat(13), fc.nat(32))
  .map(([year, month, date]) => `${year}-${String(month).padStart(2, "0")}-${String(date).padStart(2, "0")}`);
const time = fc
  .tuple(fc.nat(40), fc.constantFrom(":", "h", "."), fc.nat(70))
  .map(([hours, mark, minutes]) => `${hours}${mark}${String(minutes).padStart(2, "0")}`);

/** Of the kinds that fields take, right and wrong. */
const plausible = fc.oneof(
  quantity,
  day,
  time,
  fc.tuple(quantity, fc.constantFrom(" to ", " : ", "-"), quantity).map((parts) => parts.join("")),
  fc.constantFrom(
    "S-1",
    "R-1",
    "B-001",
    "B-001/1",
    "wing",
    "builder",
    "helper",
    "gluing",
    "primary",
    "public",
    "archive",
    "crushed",
  ),
);

export const typed = fc.oneof(
  { weight: 3, arbitrary: plausible },
  { weight: 2, arbitrary: fc.constantFrom(...TRICKS) },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 30 }) },
  {
    weight: 1,
    arbitrary: fc.string({ unit: fc.constantFrom(..."0123456789.,:/- ghm%°C±'\"".split("")), maxLength: 10 }),
  },
);

/** Stretches to be taken out of a text of a length, and what comes in their place. */
export function cutsIn(length: number): fc.Arbitrary<(readonly [at: number, length: number, put: string])[]> {
  const put = fc.string({ unit: fc.constantFrom(..."-: \n{}[]&*!#|>\"'%@`,?\ta1".split("")), maxLength: 6 });
  return fc.array(fc.tuple(fc.nat(length), fc.nat(12), put), { minLength: 1, maxLength: 4 });
}

export const prose = fc.string({
  unit: fc.constantFrom(
    "[",
    "]",
    "(",
    ")",
    "!",
    "<",
    ">",
    ":",
    ":::",
    "\n",
    "`",
    "```",
    " ",
    "a",
    "S-1",
    "../photos/jig.jpg",
    "inspector",
    "%",
    "#",
    "&lt;",
    "\\",
    "- ",
    "> ",
    "1. ",
    "    ",
    "\t",
    "|",
    "<b>",
    "<!--",
    "~~~",
    "***",
  ),
  maxLength: 30,
});

/** Bytes that are changed in a file: each takes the place of one, is put before one, or takes one out. */
export function flipsIn(
  length: number,
): fc.Arbitrary<(readonly [at: number, how: "change" | "put" | "take", byte: number])[]> {
  const byte = fc.oneof(fc.nat(255), fc.constantFrom(0, 0x0a, 0x0d, 0x22, 0x3a, 0x80, 0xb0, 0xef, 0xfe, 0xff));
  return fc.array(fc.tuple(fc.nat(length), fc.constantFrom("change", "put", "take"), byte), {
    minLength: 1,
    maxLength: 5,
  });
}

export function flipped(
  bytes: Uint8Array,
  flips: readonly (readonly [number, "change" | "put" | "take", number])[],
): Uint8Array {
  const all = [...bytes];
  for (const [at, how, byte] of flips) all.splice(at, how === "put" ? 0 : 1, ...(how === "take" ? [] : [byte]));
  return Uint8Array.from(all);
}
