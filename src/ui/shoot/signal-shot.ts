/** Says that the photo is taken to whoever looks at the fitting, not at the screen: felt on a device in
 *  the hand, heard on any other, and where nothing vibrates. */
export function signalShot(): void {
  const inHand = matchMedia('(pointer: coarse)').matches;
  if (inHand && navigator.vibrate?.(70)) return;
  try {
    click();
  } catch {
    // The frame on the screen has flashed, at least.
  }
}

function click(): void {
  const audio = new AudioContext();
  const tone = audio.createOscillator();
  const volume = audio.createGain();
  tone.frequency.value = 1200;
  const end = audio.currentTime + 0.09;
  volume.gain.setValueAtTime(0.15, audio.currentTime);
  volume.gain.exponentialRampToValueAtTime(0.001, end);
  tone.connect(volume).connect(audio.destination);
  tone.onended = () => void audio.close();
  tone.start();
  tone.stop(end);
}
