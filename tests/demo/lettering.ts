import type { P2 } from "./space.ts";

/** Capitals of single strokes on a grid four wide and six high: pairs of digits are points, bars lift the pen. */
const STROKES: { readonly [letter: string]: string } = {
  A: "06 20 46|14 34",
  B: "00 06 36 45 44 33 03|33 42 41 30 00",
  C: "41 30 10 01 05 16 36 45",
  D: "00 06 26 44 42 20 00",
  E: "40 00 06 46|03 33",
  F: "40 00 06|03 33",
  G: "41 30 10 01 05 16 36 45 43 23",
  H: "00 06|40 46|03 43",
  I: "20 26",
  J: "40 45 36 16 05",
  K: "00 06|40 03 46",
  L: "00 06 46",
  M: "06 00 23 40 46",
  N: "06 00 46 40",
  O: "10 01 05 16 36 45 41 30 10",
  P: "06 00 30 41 42 33 03",
  Q: "10 01 05 16 36 45 41 30 10|34 46",
  R: "06 00 30 41 42 33 03|23 46",
  S: "41 30 10 01 02 13 33 44 45 36 16 05",
  T: "00 40|20 26",
  U: "00 05 16 36 45 40",
  V: "00 26 40",
  W: "00 16 23 36 40",
  X: "00 46|40 06",
  Y: "00 23 40|23 26",
  Z: "00 40 06 46",
  0: "10 01 05 16 36 45 41 30 10",
  1: "11 20 26",
  2: "01 10 30 41 42 06 46",
  3: "01 10 30 41 42 33 23|33 44 45 36 16 05",
  4: "36 30 04 44",
  5: "40 00 03 33 44 45 36 06",
  6: "40 20 02 05 16 36 45 44 33 03",
  7: "00 40 16",
  8: "13 02 01 10 30 41 42 33 13 04 05 16 36 45 44 33",
  9: "43 13 02 01 10 30 41 44 26 06",
  ".": "25 26",
  ",": "25 17",
  ":": "22 23|25 26",
  "-": "13 33",
  "/": "06 40",
  "°": "10 20 21 11 10",
  "%": "06 40|00 10 11 01 00|35 45 46 36 35",
  "+": "21 25|03 43",
  "=": "02 42|04 44",
  "(": "20 11 15 26",
  ")": "20 31 35 26",
  "'": "20 21",
  "?": "01 10 30 41 42 23 24|26 26",
  "±": "20 24|02 42|06 46",
  "×": "12 36|32 16",
  "→": "03 43|31 43 35",
};

/** The strokes of a line of lettering with its top left at the origin, `height` high, y downward. */
export function letters(text: string, height: number): P2[][] {
  const scale = height / 6;
  return [...text.toUpperCase()].flatMap((letter, i) =>
    (STROKES[letter] ?? "")
      .split("|")
      .filter((run) => run !== "")
      .map((run) =>
        run
          .split(" ")
          .map(
            (pair): P2 => [(i * 5.7 + Number(pair[0]) + (6 - Number(pair[1])) * 0.16) * scale, Number(pair[1]) * scale],
          ),
      ),
  );
}

/** Width of a line of lettering. */
export function lettersWide(text: string, height: number): number {
  return ((text.length * 5.7 - 1.7) * height) / 6;
}
