import { describe, expect, it } from "vitest";
import type { Stated } from "../../../src/climate/sidecar.ts";
import { messages, readings } from "./reading.ts";

const TWO = ["2025-03-08T14:00Z 20 0.5", "2025-03-08T15:00Z 21.5 0.55"];

const CERTAIN: readonly (readonly [name: string, text: string, stated?: Stated])[] = [
  [
    "commas, points and a zone in the header",
    "Time (UTC),Temperature (°C),Humidity (%)\n2025-03-08 14:00:00,20.0,50\n2025-03-08 15:00:00,21.5,55\n",
  ],
  [
    "semicolons and decimal commas",
    "Zeit (UTC);Temperatur [°C];Luftfeuchtigkeit [%]\n08.03.2025 14:00;20,0;50,0\n08.03.2025 15:00;21,5;55,0\n",
  ],
  [
    "tabs, a day and a time of day apart",
    "Date\tTime, GMT+01:00\tTemp, °C\tRH, %\n2025/03/08\t15:00\t20\t50\n2025/03/08\t16:00\t21.5\t55\n",
  ],
  [
    "offsets in the stamps",
    "timestamp,temperature_c,humidity_%\n2025-03-08T15:00:00+01:00,20,50\n2025-03-08T10:00:00.000-0500,21.5,55\n",
  ],
  [
    "Z in the stamps, quoted cells, CRLF made LF, blank lines",
    '"Date/Time","Temp, °C (sensor 12)","rel. humidity (%RH)"\n\n"2025-03-08T14:00Z","20,0","50"\n\n"2025-03-08T15:00Z","21,5","55"\n\n',
  ],
  [
    "degrees Fahrenheit in the header",
    "time (utc),Temp (°F),RH (%)\n2025-03-08 14:00,68,50\n2025-03-08 15:00,70.7,55\n",
  ],
  ["kelvin and units in the cells", "time (utc),t,rh\n2025-03-08 14:00,293.15 K,50 %\n2025-03-08 15:00,294.65K,55%\n"],
  [
    "units in the cells, Fahrenheit",
    "time (utc),temperature,humidity\n2025-03-08 14:00,68 °F,50 %RH\n2025-03-08 15:00,70.7 °F,55 %RH\n",
  ],
  [
    "lines about the logger before the header",
    "Logger export\nModel: x; number: 12\nWhere,shop\n\n#,Date and time (UTC),Celsius (°C),Dew point (°C),%RH\n1,2025-03-08 14:00,20,9.3,50\n2,2025-03-08 15:00,21.5,12.1,55\n",
  ],
  [
    "half days, month first as one stamp shows",
    "Time (UTC),Temp (C),Hum (%)\n03/08/2025 02:00 PM,20,50\n03/08/2025 3:00:00 p.m.,21.5,55\n12/31/2024 12:30 AM,,\n",
  ],
  [
    "day first as one stamp shows",
    "Time (UTC),Temp (C),Hum (%)\n08/03/2025 14:00,20,50\n08/03/2025 15:00,21.5,55\n31/12/2024 00:30,,\n",
  ],
  [
    "the workshop's clock where the header says local",
    "Time (local),Temp (C),Hum (%)\n2025-03-08 14:00,20,50\n2025-03-08 15:00,21.5,55\n",
  ],
  [
    "a zone by its name in the header",
    "Time (Europe/Berlin),Temp (C),Hum (%)\n2025-03-08 15:00,20,50\n2025-03-08 16:00,21.5,55\n",
  ],
  ["newest first", "Time (UTC),Temp (C),Hum (%)\n2025-03-08 15:00,21.5,55\n2025-03-08 14:00,20,50\n"],
  [
    "out of order, with a line twice and a reading that is missing in one of two",
    "Time (UTC),Temp (C),Hum (%)\n2025-03-08 15:00,21.5,\n2025-03-08 14:00,20,50\n2025-03-08 15:00,21.5,55\n2025-03-08 14:00,20,50\n2025-03-08 16:00,--,n/a\n",
  ],
  [
    "a form, a zone and columns that the builder states",
    "Logged at|x,Ch 1,Ch 2\n8/3/25 14:00,20,50\n8/3/25 15:00,21.5,55\n",
    {
      time: "D/M/YY HH:mm",
      timeColumn: "logged at|x",
      zone: "UTC",
      temperature: { column: "Ch 1", unit: "°C" },
      humidity: { column: "ch 2", unit: "%" },
    },
  ],
  [
    "a stated form with half days, the workshop's clock",
    "Time,Temp,Hum\n03/08/2025 02:00 PM,68,50\n03/08/2025 03:00 PM,70.7,55\n",
    { time: "MM/DD/YYYY hh:mm A", zone: "local", temperature: { unit: "°F" }, humidity: { unit: "%" } },
  ],
  [
    "a column that is chosen among several, its unit in brackets",
    "Time (UTC),Temp in (°C),Temp out (°C),RH (%)\n2025-03-08 14:00,20,9,50\n2025-03-08 15:00,21.5,9,55\n",
    { temperature: { column: "Temp in (°C)" } },
  ],
  [
    "empty cells at the end of lines that the header lacks",
    "Time (UTC);Temp (C);Hum (%)\n2025-03-08 14:00;20;50;\n2025-03-08 15:00;21.5;55;\n;;;\n",
  ],
];

describe("A logger's file is read without being told its form where it shows its form", () => {
  for (const [name, text, stated] of CERTAIN) it(name, () => expect(readings(text, stated)).toEqual(TWO));

  it("temperature alone", () =>
    expect(readings("Time (UTC),Temp (°C)\n2025-03-08 14:00,-3.5\n")).toEqual(["2025-03-08T14:00Z -3.5 -"]));
  it("humidity alone", () =>
    expect(readings("Time (UTC),RH (%)\n2025-03-08 14:00:30,50\n")).toEqual(["2025-03-08T14:00:30Z - 0.5"]));
  it("a true minus, a plus and a fraction of a second", () =>
    expect(readings("Time (UTC),Temp (°C)\n2025-03-08 14:00:30.5,−3.5\n2025-03-08 14:01,+2\n")).toEqual([
      "2025-03-08T14:00:30.500Z -3.5 -",
      "2025-03-08T14:01Z 2 -",
    ]));
});

const HEAD = "Time (UTC),Temp (°C),RH (%)\n";

const REFUSED: readonly (readonly [name: string, text: string, problems: readonly string[], stated?: Stated])[] = [
  ["no header", "2025-03-08 14:00,20,50\n", ["1:1 climate-header"]],
  ["nothing at all", "", ["1:1 climate-header"]],
  ["no line after the header", HEAD, ["1:1 climate-stamp"]],
  ["only lines without readings", `${HEAD}2025-03-08 14:00,,\n`, ["1:1 climate-empty"]],
  ["a header that parts in two ways", "Time (UTC),T (C),;Time (UTC);RH;\nx\n", ["1:1 climate-header"]],
  [
    "two columns of temperature",
    "\nTime (UTC),Temp (°C),Temperature (°C)\n2025-03-08 14:00,20,21\n",
    ["2:22 climate-header"],
  ],
  [
    "two columns of time",
    "Timestamp (UTC),Date/Time (UTC),Temp (°C)\n2025-03-08 14:00,2025-03-08 14:00,21\n",
    ["1:17 climate-header"],
  ],
  [
    "a stated column that is not there",
    `${HEAD}2025-03-08 14:00,20,50\n`,
    ["1:1 climate-header"],
    { humidity: { column: "Hum" } },
  ],
  ["day or month first", `${HEAD}03/04/2025 14:00,20,50\n`, ["2:1 climate-stamp"]],
  ["day and month first", `${HEAD}13/04/2025 14:00,20,50\n04/13/2025 14:00,20,50\n`, ["2:1 climate-stamp"]],
  ["years of two digits", `${HEAD}13/04/25 14:00,20,50\n`, ["2:1 climate-stamp"]],
  ["stamps of no known form", `${HEAD}8 March 14:00,20,50\n`, ["2:1 climate-stamp"]],
  [
    "a stated form that leaves the year open",
    `${HEAD}08/03 14:00,20,50\n`,
    ["2:1 climate-stamp"],
    { time: "DD/MM HH:mm" },
  ],
  [
    "a stamp of another form among others",
    `${HEAD}2025-03-08 14:00,20,50\n08.03.2025 15:00,20,50\n2025/03/08 16:00,20,50\n`,
    ["3:1 climate-time", "4:1 climate-time"],
  ],
  [
    "days and times that no calendar and no clock has",
    `${HEAD}2025-02-28 23:59:59,20,50\n2025-02-29 14:00,20,50\n2025-03-08 24:00,20,50\n2025-03-08 14:60,1,50\n2025-13-08 14:00,1,50\n`,
    ["3:1 climate-time", "4:1 climate-time", "5:1 climate-time", "6:1 climate-time"],
  ],
  [
    "half days past twelve",
    `${HEAD}03/13/2025 13:00 PM,20,50\n03/13/2025 0:30 AM,20,50\n`,
    ["2:1 climate-time", "3:1 climate-time"],
  ],
  ["no zone", "Time,Temp (°C)\n2025-03-08 14:00,20\n", ["2:1 climate-zone"]],
  ["no zone in some stamps", "Time,Temp (°C)\n2025-03-08T14:00Z,20\n2025-03-08T15:00,20\n", ["3:1 climate-zone"]],
  ["a zone that is none", "Time (Europe/Nowhere),Temp (°C)\n2025-03-08 14:00,20\n", ["1:1 climate-zone"]],
  ["a zone stated against the header", `${HEAD}2025-03-08 14:00,20,50\n`, ["1:1 climate-zone"], { zone: "+01:00" }],
  [
    "a zone stated where the stamps name theirs",
    "Time,Temp (°C)\n2025-03-08T14:00Z,20\n",
    ["1:1 climate-zone"],
    { zone: "UTC" },
  ],
  ["no unit", "Time (UTC),Temp,RH (%)\n2025-03-08 14:00,20,50\n", ["2:18 climate-unit"]],
  ["no unit of humidity", "Time (UTC),Temp (°C),RH\n2025-03-08 14:00,20,50\n", ["2:21 climate-unit"]],
  [
    "a unit stated against the header",
    `${HEAD}2025-03-08 14:00,20,50\n`,
    ["1:12 climate-unit"],
    { temperature: { unit: "°F" } },
  ],
  [
    "a unit in a cell against the header",
    `${HEAD}2025-03-08 14:00,68 °F,50\n2025-03-08 15:00,20,50 °C\n`,
    ["2:18 climate-unit", "3:21 climate-unit"],
  ],
  [
    "two decimal marks",
    "Time (UTC);Temp (°C)\n2025-03-08 14:00;20.5\n2025-03-08 15:00;20,5\n",
    ["3:18 climate-decimal"],
  ],
  [
    "another decimal mark than stated",
    "Time (UTC);Temp (°C)\n2025-03-08 14:00;20.5\n",
    ["2:18 climate-decimal"],
    { decimal: "," },
  ],
  ["decimal commas between commas", `${HEAD}2025-03-08 14:00,20,5,50,1\n`, ["2:23 climate-cells"]],
  ["a line that ends early", `${HEAD}2025-03-08 14:00,20,50\n2025-03-08 15:00,20\n`, ["3:1 climate-cells"]],
  [
    "a word in the place of a figure",
    `${HEAD}2025-03-08 14:00,error,50\n2025-03-08 15:00,"1,234.5",50\n`,
    ["2:18 climate-value", "3:18 climate-value"],
  ],
  [
    "what no workshop has",
    `${HEAD}2025-03-08 14:00,60.1,100.1\n2025-03-08 15:00,-40.1,-1\n2025-03-08 16:00,60,100\n2025-03-08 17:00,-40,0\n`,
    ["2:18 climate-value", "2:23 climate-value", "3:18 climate-value", "3:24 climate-value"],
  ],
  [
    "two readings of one moment that differ",
    `${HEAD}2025-03-08 14:00,20,50\n2025-03-08 14:00,20,51\n2025-03-08 15:00,20,\n2025-03-08 15:00,21,\n`,
    ["3:1 climate-twice", "5:1 climate-twice"],
  ],
  ["a reading after today", `${HEAD}2026-01-01 00:00,20,50\n2026-01-01 00:01,20,50\n`, ["3:1 climate-time"]],
  [
    "a quotation mark that is never closed",
    `about\n${HEAD}2025-03-08 14:00,20,50\n2025-03-08 15:00,"20,50\n2025-03-08 16:00,20,50\n`,
    ["4:1 climate-quote"],
  ],
  [
    "readings mostly further apart than the usual gap",
    `${HEAD}2025-03-08 00:00,20,50\n2025-03-08 03:00,20,50\n2025-03-08 06:00,20,50\n`,
    ["1:1 climate-gap"],
  ],
];

describe("A logger's file is refused where something in it is left open", () => {
  for (const [name, text, problems, stated] of REFUSED)
    it(name, () => expect(readings(text, stated)).toEqual(problems));

  it("but not for readings far apart where the builder says so, or where they are just as far as usual", () => {
    expect(readings(`${HEAD}2025-03-08 00:00,20,50\n2025-03-08 03:00,20,50\n`, { gap: 4 * 3600 })).toHaveLength(2);
    expect(readings(`${HEAD}2025-03-08 00:00,20,50\n2025-03-08 02:00,20,50\n`)).toHaveLength(2);
  });

  it("telling the first eight problems of a kind, and how many more there are", () => {
    const lines = Array.from({ length: 20 }, (_, i) => `2025-03-08 14:${10 + i},x,50\n`).join("");
    expect(messages(HEAD + lines)).toHaveLength(8);
    expect(messages(HEAD + lines).at(-1)).toBe("this is no temperature; and 12 more of the kind in this file");
    expect(messages(HEAD + lines)[0]).toBe("this is no temperature");
  });
});
