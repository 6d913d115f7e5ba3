/** Three significant digits with a decimal comma. */
export function germanFigure(value: number): string {
  return comma(Math.abs(value) >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(3))));
}

/** Whole per cent; neither none nor all is shown as 0 or 100. */
export function germanPercent(share: number): string {
  if (share > 0 && share < 0.005) return 'unter 1 %';
  if (share < 1 && share >= 0.995) return 'über 99 %';
  return `${Math.round(share * 100)} %`;
}

/** `0,42 s`, `12,4 s`, `3 min 05 s`. */
export function germanTime(seconds: number): string {
  if (seconds < 10) return `${comma(String(Number(seconds.toFixed(2))))} s`;
  if (seconds < 119.95) return `${comma(String(Math.round(seconds * 10) / 10))} s`;
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)} min ${String(whole % 60).padStart(2, '0')} s`;
}

/** A number within a sentence, as German writes it. */
export function comma(text: string): string {
  return text.replace(/(\d)\.(\d)/g, '$1,$2');
}

/** From one written number to another. */
export const bis = (from: string, to: string): string => `${from} bis ${to}`;
