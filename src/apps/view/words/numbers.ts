import type { NumberWords } from './picture-words.js';

/** Numbers of a language that differs from another in its decimal sign and a few words. */
export function numberWords(
  mark: '.' | ',',
  words: { under: string; over: string; to: string },
): NumberWords {
  const decimal = (digits: string): string => digits.replace('.', mark);
  const figure = (value: number | null): string => {
    if (value === null || !Number.isFinite(value)) return '–';
    if (Math.abs(value) >= 1000) return value.toFixed(0);
    return decimal(String(Number(value.toPrecision(3))));
  };
  return {
    figure,
    decimal,
    percent: (share) => {
      if (share > 0 && share < 0.005) return `${words.under} 1 %`;
      if (share < 1 && share >= 0.995) return `${words.over} 99 %`;
      return `${Math.round(share * 100)} %`;
    },
    time: (seconds) => {
      if (seconds < 10) return `${decimal(String(Number(seconds.toFixed(2))))} s`;
      const tenths = Math.round(seconds * 10) / 10;
      if (tenths < 120) return `${decimal(String(tenths))} s`;
      const whole = Math.round(seconds);
      const minutes = Math.floor(whole / 60);
      if (minutes < 120) return `${minutes} min ${String(whole % 60).padStart(2, '0')} s`;
      const allMinutes = Math.round(seconds / 60);
      return `${Math.floor(allMinutes / 60)} h ${String(allMinutes % 60).padStart(2, '0')} min`;
    },
    rate: (hz) => (hz >= 1000 ? `${figure(hz / 1000)} kHz` : `${figure(hz)} Hz`),
    range: (low, high) => `${low} ${words.to} ${high}`,
  };
}
