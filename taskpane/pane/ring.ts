/** Three short tones, where the browser lets a page sound; silence otherwise. */
const TONES = [0, 0.35, 0.7];
const HERTZ = 880;
const LENGTH = 0.25;

export function ring(): void {
  try {
    const context = new AudioContext();
    for (const at of TONES) {
      const tone = context.createOscillator();
      const volume = context.createGain();
      tone.frequency.value = HERTZ;
      volume.gain.value = 0.2;
      tone.connect(volume).connect(context.destination);
      tone.start(context.currentTime + at);
      tone.stop(context.currentTime + at + LENGTH);
    }
    navigator.vibrate?.([200, 100, 200]);
  } catch {
    // The message on the screen says the same.
  }
}
