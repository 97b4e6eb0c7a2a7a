/** Rings by what the browser allows: a sound once a tap has let it, and the phone's own buzz. */
const BUZZ_MS = [400, 200, 400];
const TONES = [0, 0.6, 1.2];
const TONE_S = 0.35;
const HERTZ = 880;

let sound: AudioContext | undefined;

const canSound = (): boolean => "AudioContext" in globalThis;
const canBuzz = (): boolean => "vibrate" in navigator;

/** Asked for while a clock runs; a browser lets a page sound only after a tap on it, and stops it when it was away. */
export function letRing(): () => void {
  const wake = (): void => {
    if (canSound()) sound ??= new AudioContext();
    if (sound?.state !== "running") void sound?.resume().catch(() => undefined);
  };
  wake();
  addEventListener("click", wake);
  return () => removeEventListener("click", wake);
}

export function ring(): void {
  if (canBuzz()) navigator.vibrate(BUZZ_MS);
  for (const at of TONES) tone(at);
}

function tone(after: number): void {
  if (sound === undefined) return;
  const source = sound.createOscillator();
  source.frequency.value = HERTZ;
  source.connect(sound.destination);
  source.start(sound.currentTime + after);
  source.stop(sound.currentTime + after + TONE_S);
}

/** What may be expected of it, and what never. */
export const ringWords = (): string =>
  canSound() || canBuzz()
    ? "With the screen lit and sound on it rings 5 min before the end and at the end. Locked it cannot ring: watch for the time above."
    : "This browser cannot ring: watch for the time above.";
