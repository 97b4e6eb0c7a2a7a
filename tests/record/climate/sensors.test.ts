import { describe, expect, it } from "vitest";
import { messages, readings } from "./reading.ts";

const ONE_A_LINE = [
  "Logged,Sensor,Value",
  "1741442400,bench T,20.0",
  "1741442400,bench RH,50",
  "1741442400,shed T,4",
  "1741446000,bench RH,55",
  "1741446000,bench T,21.5",
  "",
].join("\n");

const BENCH = {
  time: "epoch s",
  timeColumn: "Logged",
  sensorColumn: "sensor",
  temperature: { column: "Value", of: "bench T", unit: "°C" },
  humidity: { column: "Value", of: "bench RH", unit: "%" },
} as const;

const TWO = ["2025-03-08T14:00Z 20 0.5", "2025-03-08T15:00Z 21.5 0.55"];

describe("A file with one sensor a line", () => {
  it("is read by the sensors that are stated, and another's lines are passed over", () => {
    expect(readings(ONE_A_LINE, BENCH)).toEqual(TWO);
  });

  it("with both values in the lines of one of several sensors is read so too", () => {
    const text = "time (utc),where,t,rh\n2025-03-08 14:00,in,20 °C,50 %\n2025-03-08 14:00,out,4 °C,90 %\n";
    const stated = { sensorColumn: "where", temperature: { of: "in" }, humidity: { of: "in" } };
    expect(readings(text, stated)).toEqual(["2025-03-08T14:00Z 20 0.5"]);
  });

  it("of a sensor that stands in no line is told, and so is a column that is not there", () => {
    expect(messages(ONE_A_LINE, { ...BENCH, humidity: { column: "Value", of: "bench", unit: "%" } })).toEqual([
      'no line is of the sensor "bench"',
    ]);
    expect(readings(ONE_A_LINE, { ...BENCH, sensorColumn: "Probe" })).toEqual(["1:1 climate-header"]);
  });
});

describe("Moments counted from 1970", () => {
  const file = (stamps: readonly string[]) => `Time,Temp (°C)\n${stamps.map((one) => `${one},20\n`).join("")}`;

  it("leave no zone open, in seconds or in thousandths", () => {
    expect(readings(file(["1741442400", "1741446000"]), { time: "epoch s" })).toEqual([
      "2025-03-08T14:00Z 20 -",
      "2025-03-08T15:00Z 20 -",
    ]);
    expect(readings(file(["1741442400000"]), { time: "epoch ms" })).toEqual(["2025-03-08T14:00Z 20 -"]);
    expect(readings(file(["1741442400"]), { time: "epoch s", zone: "UTC" })).toEqual(["1:1 climate-zone"]);
  });

  it("are not guessed, and not read beyond the last year", () => {
    expect(readings(file(["1741442400"]))).toEqual(["2:1 climate-stamp"]);
    expect(readings(file(["1741442400000"]), { time: "epoch s" })).toEqual(["2:1 climate-time"]);
  });
});
