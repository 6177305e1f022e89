// The rhythm of a step: a bar that fills while it cuts and empties while it is lifted, the time
// against its band, and two tones for those who want to hear it.
const STEPS = 5;

/** Where the rhythm stands after so many seconds: cutting or lifted, and how far, 0 to 1. */
export function phase(elapsedS, cutS, pauseS) {
  const round = cutS + pauseS;
  if (!(round > 0)) return { cutting: true, share: 0, left: 0 };
  const at = elapsedS % round;
  return at < cutS || pauseS <= 0
    ? { cutting: true, share: at / cutS, left: cutS - at }
    : { cutting: false, share: (at - cutS) / pauseS, left: round - at };
}

/** Whole fifths where motion is not wanted. */
export function calm(share) {
  return matchMedia("(prefers-reduced-motion: reduce)").matches
    ? Math.floor(share * STEPS) / STEPS
    : share;
}

/** Before the band, in it, past the typical time, or over its end. */
export function place(elapsedS, band) {
  if (band.high == null) return elapsedS >= band.typical ? "typical" : "early";
  if (elapsedS >= band.high) return "over";
  if (elapsedS >= band.typical) return "typical";
  return elapsedS >= band.low ? "band" : "early";
}

export function clock(seconds) {
  const whole = Math.floor(seconds);
  return Math.floor(whole / 60) + ":" + String(whole % 60).padStart(2, "0");
}

let audio = null;

/** Sound needs a tap first: browsers ask for it, and nobody wants a surprise in a mouth. */
export function soundOn() {
  const Kind = window.AudioContext || window.webkitAudioContext;
  if (!Kind) return false;
  audio = audio || new Kind();
  audio.resume();
  return true;
}

export function soundOff() {
  if (audio) audio.suspend();
}

export function beep(hertz, times) {
  if (!audio || audio.state !== "running") return;
  for (let i = 0; i < times; i++) {
    const tone = audio.createOscillator();
    const volume = audio.createGain();
    const from = audio.currentTime + i * 0.18;
    tone.frequency.value = hertz;
    volume.gain.setValueAtTime(0.0001, from);
    volume.gain.exponentialRampToValueAtTime(0.18, from + 0.01);
    volume.gain.exponentialRampToValueAtTime(0.0001, from + 0.12);
    tone.connect(volume).connect(audio.destination);
    tone.start(from);
    tone.stop(from + 0.13);
  }
}
