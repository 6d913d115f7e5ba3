import { type ComponentChild, h } from 'preact';
import type { View } from './view.js';

/** Fields that most people know, and those behind "more". */
const FIRST = ['wireDiameter', 'gas', 'setVoltage', 'wireFeed', 'expect'];
const MORE = ['wireMaterial', 'voltsAt', 'stickOut', 'source', 'polarity'];

const CHOICES: Record<string, readonly string[]> = {
  expect: ['short-circuit', 'globular', 'spray', 'pulsed-spray'],
  wireMaterial: ['carbon-steel', 'stainless-steel', 'aluminium'],
  voltsAt: ['source', 'feeder', 'arc'],
  source: ['steady', 'pulsed'],
  polarity: ['dcep', 'dcen', 'ac'],
};

/** The same by keyboard, with what is seldom needed. Wrong fields are marked and stop nothing. */
export function setupForm(view: View): ComponentChild {
  const { app, state } = view;
  const { page } = state.words;
  return h('details', { class: 'typed-setup' }, [
    h('summary', null, page.setupMore),
    h('form', { class: 'setup', onSubmit: (event: Event) => event.preventDefault() }, [
      h('p', { class: 'small' }, page.setupHelp),
      h('div', { class: 'fields' }, [
        text(page.booth, state.booth, '', {
          type: (value) => app.setup.typeBooth(value),
          done: (value) => void app.setup.booth(value),
          list: 'booths',
        }),
        text(page.student, state.student, '', { type: (value) => app.setup.student(value) }),
        ...[...FIRST, ...MORE].map((key) => field(view, key)),
      ]),
      h(
        'datalist',
        { id: 'booths' },
        state.booths.map((one) => h('option', { value: one })),
      ),
      h('p', { class: 'small' }, page.whoHelp),
    ]),
  ]);
}

function field({ app, state }: View, key: string): ComponentChild {
  const { page } = state.words;
  const { label, hint } = page.fields[key] ?? { label: key, hint: '' };
  const value = state.setup[key] ?? '';
  const type = (next: string): void => app.setup.type(key, next);
  const done = (): void => void app.setup.done();
  const choices = CHOICES[key];
  const wrong = key in state.wrong;
  if (!choices) return text(label, value, hint, { type, done, wrong });
  return h('label', { class: 'field' }, [
    h('span', null, label),
    h(
      'select',
      {
        value,
        'aria-invalid': wrong ? 'true' : undefined,
        onChange: (event: Event) => {
          type((event.target as HTMLSelectElement).value);
          done();
        },
      },
      [
        h('option', { value: '' }, page.unknownOption),
        ...choices.map((one) => h('option', { value: one }, page.choices[one] ?? one)),
      ],
    ),
  ]);
}

interface Field {
  /** At every stroke. */
  type?: (value: string) => void;
  /** When the field is left. */
  done?: (value: string) => void;
  list?: string;
  wrong?: boolean;
}

function text(label: string, value: string, hint: string, field: Field): ComponentChild {
  const { type, done, list, wrong } = field;
  return h('label', { class: 'field' }, [
    h('span', null, label),
    h('input', {
      type: 'text',
      value,
      placeholder: hint,
      list,
      'aria-invalid': wrong ? 'true' : undefined,
      autocomplete: 'off',
      maxLength: 80,
      onInput: (event: Event) => type?.((event.target as HTMLInputElement).value),
      onChange: (event: Event) => done?.((event.target as HTMLInputElement).value),
    }),
  ]);
}
