import { describe, expect, it } from 'vitest';
import { figure, percent, plain, sayConfidence } from '../../../../src/apps/view/index.js';
import { sayRate, sayTime } from '../../../../src/apps/view/words.js';

describe('percent', () => {
  it.each([
    [0, '0 %'],
    [1, '100 %'],
    [0.004, 'under 1 %'], // never shown as none
    [0.997, 'over 99 %'], // never shown as all
    [0.994, '99 %'],
    [0.125, '13 %'],
  ])('%f is %s', (share, words) => expect(percent(share)).toBe(words));
});

describe('sayConfidence', () => {
  it.each([
    [0.995, 'almost certain, over 99 %'],
    [0.99, 'almost certain, 99 %'],
    [0.9, 'very likely, 90 %'],
    [0.75, 'likely, 75 %'],
    [0.6, 'more likely than not, 60 %'],
    [0.3, 'doubtful, 30 %'],
  ])('%f is %s', (confidence, words) => expect(sayConfidence(confidence)).toBe(words));
});

describe('figures and times', () => {
  it.each([
    [124.26, '124'],
    [0.012345, '0.0123'],
    [12345.6, '12346'],
    [0, '0'],
    [null, '–'],
    [Number.NaN, '–'],
  ])('%s is %s', (value, words) => expect(figure(value)).toBe(words));

  it.each([
    [0.123, '0.12 s'],
    [9.999, '10 s'],
    [59.96, '60 s'],
    [185, '3 min 05 s'],
    [7199.6, '2 h 00 min'],
    [7800, '2 h 10 min'],
  ])('%f s is %s', (seconds, words) => expect(sayTime(seconds)).toBe(words));

  it('gives kilohertz from 1000 on', () => {
    expect(sayRate(44100)).toBe('44.1 kHz');
    expect(sayRate(999)).toBe('999 Hz');
  });
});

describe('plain', () => {
  it('shows what would steer a terminal or turn text around', () => {
    expect(plain('a\u001b\u009b\u202eb')).toBe('a\\x1b\\x9b\\u202eb');
    expect(plain('Schweißnaht 溶接.wav')).toBe('Schweißnaht 溶接.wav');
  });
});
