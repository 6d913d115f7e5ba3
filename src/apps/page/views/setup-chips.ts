import { type ComponentChild, h } from 'preact';
import { sentencesOf } from '../shell/sentences-of.js';
import { SHEETS, type SheetKey } from '../shell/sheet-keys.js';
import { said } from './localized.js';
import { shownValue } from './setup-lists.js';
import type { View } from './view.js';

/** What is set, as large fields to tap: who, where, what is wanted, wire, material, gas, volts, feed. */
export function setupChips(view: View): ComponentChild {
  return h(
    'div',
    { class: 'chips' },
    SHEETS.map((key) => chip(view, key)),
  );
}

function chip({ app, state }: View, key: SheetKey): ComponentChild {
  const { page } = state.words;
  const value = chipValue(state, key);
  const wrong = key in state.wrong;
  const mode = key === 'expect' && value !== '' ? ` field-${state.setup['expect']}` : '';
  return h(
    'button',
    {
      type: 'button',
      class: `chip chip-${key}${mode}${wrong ? ' chip-wrong' : ''}`,
      'aria-haspopup': 'dialog',
      onClick: () => app.setup.openSheet(key),
    },
    [
      h('span', { class: 'chip-name' }, [
        page.chips[key],
        wrong ? h('strong', { class: 'chip-mark' }, ' !') : null,
      ]),
      h(
        'span',
        { class: value === '' ? 'chip-value chip-empty' : 'chip-value' },
        value || page.notSet,
      ),
    ],
  );
}

/** What a chip shows; modes and materials by their names. */
export function chipValue({ setup, student, booth, words }: View['state'], key: SheetKey): string {
  if (key === 'student') return student;
  if (key === 'booth') return booth;
  const text = setup[key] ?? '';
  if (key === 'expect' || key === 'wireMaterial') return words.page.choices[text] ?? text;
  return shownValue(text, words);
}

/** Every field that can't be used, with the reason; nothing of it stops a recording. */
export function wrongFields(view: View): ComponentChild {
  const { wrong, words } = view.state;
  const entries = Object.entries(wrong);
  if (entries.length === 0) return null;
  const nameOf = (key: string): string =>
    words.page.chips[key as SheetKey] ?? words.page.fields[key]?.label ?? key;
  return h('div', { class: 'wrong-fields', role: 'alert' }, [
    h(
      'ul',
      null,
      entries.map(([key, error]) =>
        h('li', null, [
          h('strong', null, words.page.leftOut(nameOf(key))),
          ...sentencesOf(error, words).flatMap((one) => [' ', said(view, one)]),
        ]),
      ),
    ),
  ]);
}
