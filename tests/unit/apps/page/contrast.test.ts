import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAGE_STYLE } from '../../../../src/apps/report/page-style.js';

/** Contrast that the strictest level of WCAG 2.2 asks of text (success criterion 1.4.6, from memory of it). */
const ENHANCED = 7;

/** Custom properties by day and by night, as the page's style sheets state them. */
const CSS = `${PAGE_STYLE}\n${readFileSync('src/apps/page/page.css', 'utf8')}`;
const [DAY, NIGHT] = palettes(CSS);

function palettes(css: string): [Map<string, string>, Map<string, string>] {
  const day = new Map<string, string>();
  const night = new Map<string, string>();
  for (const { 0: root, index } of css.matchAll(/:root\s*\{[^}]*\}/g)) {
    const dark = /prefers-color-scheme:\s*dark\)\s*\{\s*$/.test(css.slice(0, index));
    for (const [, name, value] of root.matchAll(/--([\w-]+):\s*([^;}]+)/g))
      (dark ? night : day).set(name ?? '', (value ?? '').trim());
  }
  return [day, new Map([...day, ...night])];
}

/** Relative luminance of `#rrggbb`, by the formula of WCAG 2.2 (from memory of it). */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((one) => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** A colour with the grain of a pattern over it: black or white with a share of cover. */
function grained(colour: string, grain: string): string {
  const [r = 0, g = 0, b = 0, cover = 0] = (grain.match(/[\d.]+/g) ?? []).map(Number);
  const mixed = [r, g, b].map((to, k) => {
    const from = Number.parseInt(colour.slice(1 + 2 * k, 3 + 2 * k), 16);
    return Math.round(from + cover * (to - from));
  });
  return `#${mixed.map((one) => one.toString(16).padStart(2, '0')).join('')}`;
}

const FIELDS = ['short-circuit', 'globular', 'spray', 'pulsed-spray', 'none'];

it('measures contrast as published: black on white is 21, a colour on itself 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#804300', '#804300')).toBe(1);
});

describe.each([
  ['day', DAY],
  ['night', NIGHT],
])('by %s', (_, colours) => {
  const of = (name: string): string => {
    const value = colours.get(name) ?? '';
    expect(value, name).toMatch(/^#[0-9a-f]{6}$/);
    return value;
  };

  it.each(FIELDS)('the letters stand out from the field of %s, on its pattern too', (mode) => {
    const field = of(`field-${mode}`);
    const letters = of('on-field');
    expect(contrast(field, letters)).toBeGreaterThanOrEqual(ENHANCED);
    const grain = colours.get('grain') ?? '';
    expect(contrast(grained(field, grain), letters)).toBeGreaterThanOrEqual(ENHANCED);
  });

  it.each([
    ['right', 'card'],
    ['wrong', 'card'],
    ['field-none', 'card'],
    ['ink', 'paper'],
    ['ink', 'card'],
    ['record', 'on-record'],
  ])('%s stands out from %s', (one, other) => {
    expect(contrast(of(one), of(other))).toBeGreaterThanOrEqual(ENHANCED);
  });
});
