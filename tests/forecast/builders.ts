/**
 * Builders that never were, as minutes worked in each week: with seasons, pauses of weeks, days off, a pace that drifts and weeks that differ.
 * Their figures are this project's own invention; forecasts are held against them so that no real builder has to wait for the answer.
 */

/** 1.5 to 6 years of weeks; the same number gives the same builder. */
export function builder(number: number): number[] {
  const chance = generator(number * 7919 + 13);
  const habits = {
    weeks: Math.round((1.5 + 4.5 * chance()) * 52),
    pace: 480 * Math.exp(0.4 * normal(chance)),
    season: 0.6 * chance(),
    phase: 52 * chance(),
    drift: 0.3 * normal(chance),
    idle: 0.05 + 0.35 * chance(),
    pauses: 0.5 + 1.5 * chance(),
    pause: 2 + 8 * chance(),
  };
  let wander = 0;
  let away = 0;
  return Array.from({ length: habits.weeks }, (_, week) => {
    wander += 0.04 * normal(chance);
    if (away <= 0 && chance() < habits.pauses / 52) away = Math.ceil(-Math.log(1 - chance()) * habits.pause);
    away -= 1;
    if (away >= 0 || chance() < habits.idle) return 0;
    const zeal = -(Math.log(1 - chance()) + Math.log(1 - chance())) / 2;
    const season = 1 + habits.season * Math.sin((2 * Math.PI * (week - habits.phase)) / 52);
    return Math.round(habits.pace * season * Math.exp((habits.drift * week) / 52 + wander) * zeal);
  });
}

/** Uniform between 0 and 1, the same for the same seed: the public-domain generator mulberry32 (memory). */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Standard normal by Box and Muller. */
function normal(chance: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}
