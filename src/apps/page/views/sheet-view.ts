import { Component, type ComponentChild, createRef, h } from 'preact';
import { MODES, UNIT_SYSTEMS } from '../../../core/index.js';
import { WIRE_MATERIALS } from '../../../setup/index.js';
import type { Sheet } from '../shell/state.js';
import { chipValue } from './setup-chips.js';
import { type Choice, GAS_CHOICES, padUnit, shownValue, wireChoices } from './setup-lists.js';
import type { View } from './view.js';

/** The list, names or number pad that is open, over the rest of the screen. */
export function sheetView(view: View): ComponentChild {
  const { app, state } = view;
  const { sheet } = state;
  if (!sheet) return null;
  const { page } = state.words;
  const title = page.chips[sheet.key];
  // A new key is a new dialog, so that the focus goes to its first choice.
  return h(Dialog, { key: sheet.key, title, onClose: () => app.setup.closeSheet() }, [
    h('header', { class: 'sheet-head' }, [
      h('h2', null, title),
      h(
        'button',
        { type: 'button', class: 'sheet-close', onClick: () => app.setup.closeSheet() },
        page.sheet.close,
      ),
    ]),
    content(view, sheet),
  ]);
}

function content(view: View, sheet: Sheet): ComponentChild {
  const { state } = view;
  const { choices } = state.words.page;
  const named = (values: readonly string[]): Choice[] =>
    values.map((value) => ({ value, name: choices[value] ?? value }));
  switch (sheet.key) {
    case 'student':
      return namesView(view, 'student', [...new Set(state.runs.map((one) => one.student))]);
    case 'booth':
      return namesView(view, 'booth', state.booths);
    case 'expect':
      return listView(view, sheet.key, named(MODES));
    case 'wireDiameter':
      return [unitSwitch(view), listView(view, sheet.key, wireChoices(state.units))];
    case 'wireMaterial':
      return listView(view, sheet.key, named(WIRE_MATERIALS));
    case 'gas':
      return listView(view, sheet.key, GAS_CHOICES);
    default:
      return padView(view, { ...sheet, key: sheet.key });
  }
}

function listView(
  { app, state }: View,
  key: 'expect' | 'wireDiameter' | 'wireMaterial' | 'gas',
  choices: readonly Choice[],
): ComponentChild {
  const { page } = state.words;
  const now = state.setup[key] ?? '';
  const choice = ({ value, name = value, also }: Choice): ComponentChild =>
    h(
      'button',
      {
        type: 'button',
        class: key === 'expect' && value !== '' ? `pick-one field-${value}` : 'pick-one',
        'aria-pressed': value !== '' && now === value ? 'true' : 'false',
        onClick: () => app.setup.pick(key, value),
      },
      [
        h('span', null, shownValue(name, state.words)),
        also ? h('small', null, shownValue(also, state.words)) : null,
      ],
    );
  return h('div', { class: `pick-list pick-${key}` }, [
    ...choices.map(choice),
    choice({ value: '', name: page.sheet.none }),
  ]);
}

function unitSwitch({ app, state }: View): ComponentChild {
  const { page } = state.words;
  return h('div', { class: 'unit-switch', role: 'group', 'aria-label': page.unitsLabel }, [
    ...UNIT_SYSTEMS.map((one) =>
      h(
        'button',
        {
          type: 'button',
          'aria-pressed': state.units === one ? 'true' : 'false',
          onClick: () => app.units(one),
        },
        page.units[one],
      ),
    ),
  ]);
}

function namesView(
  { app, state }: View,
  key: 'student' | 'booth',
  names: readonly string[],
): ComponentChild {
  const { page } = state.words;
  const now = chipValue(state, key);
  const take = (event: SubmitEvent): void => {
    event.preventDefault();
    const typed = new FormData(event.currentTarget as HTMLFormElement).get('name');
    app.setup.name(key, String(typed ?? '').trim());
  };
  return h('div', { class: 'pick-list' }, [
    ...names
      .filter((one) => one !== '')
      .map((one) =>
        h(
          'button',
          {
            type: 'button',
            class: 'pick-one',
            'aria-pressed': one === now ? 'true' : 'false',
            onClick: () => app.setup.name(key, one),
          },
          one,
        ),
      ),
    h('form', { class: 'new-name', onSubmit: take }, [
      h('label', { class: 'field' }, [
        h('span', null, page.sheet.newName[key]),
        h('input', { type: 'text', name: 'name', autocomplete: 'off', maxLength: 80 }),
      ]),
      h('button', { type: 'submit' }, page.sheet.ok),
    ]),
    h('p', { class: 'small' }, page.whoHelp),
  ]);
}

/** Keys large enough for gloves; a keyboard works as well. */
function padView(
  { app, state }: View,
  sheet: Sheet & { key: 'setVoltage' | 'wireFeed' },
): ComponentChild {
  const { page } = state.words;
  const unit = padUnit(sheet.key, state.units);
  const press = (key: string): void => app.setup.press(key);
  const done = (): void => app.setup.takeNumber(unit);
  const typed = (event: KeyboardEvent): void => {
    const { key } = event;
    if (/^[0-9]$/.test(key)) press(key);
    else if (key === '.' || key === ',') press('.');
    else if (key === 'Backspace') press('back');
  };
  const mark = state.words.view.numbers.decimal('.');
  const keyOf = (key: string, name = key, label?: string): ComponentChild =>
    h(
      'button',
      { type: 'button', class: 'pad-key', 'aria-label': label, onClick: () => press(key) },
      name,
    );
  return h('div', { class: 'pad', onKeyDown: typed }, [
    sheet.key === 'wireFeed' ? unitSwitch({ app, state }) : null,
    h('output', { class: 'pad-value' }, [
      sheet.digits === ''
        ? h('span', { class: 'chip-empty' }, chipValue(state, sheet.key) || '–')
        : `${state.words.view.numbers.decimal(sheet.digits)} ${unit}`,
    ]),
    h('div', { class: 'pad-keys' }, [
      ...['7', '8', '9', '4', '5', '6', '1', '2', '3'].map((digit) => keyOf(digit)),
      keyOf('.', mark),
      keyOf('0'),
      keyOf('back', '⌫', page.sheet.back),
    ]),
    h('div', { class: 'pad-ends' }, [
      h(
        'button',
        { type: 'button', onClick: () => app.setup.pick(sheet.key, '') },
        page.sheet.none,
      ),
      h('button', { type: 'button', class: 'pad-ok', onClick: done }, page.sheet.ok),
    ]),
  ]);
}

/** A modal dialog of the browser: keeps the focus inside, and Escape closes it. */
class Dialog extends Component<{ title: string; onClose: () => void; children?: ComponentChild }> {
  readonly #place = createRef<HTMLDialogElement>();
  #before: Element | null = null;

  override componentDidMount(): void {
    this.#before = document.activeElement;
    this.#place.current?.showModal();
  }

  override componentWillUnmount(): void {
    this.#place.current?.close();
    if (this.#before instanceof HTMLElement) this.#before.focus();
  }

  render({ title, onClose, children }: Readonly<Dialog['props']>): ComponentChild {
    return h(
      'dialog',
      {
        ref: this.#place,
        class: 'sheet',
        'aria-label': title,
        onCancel: (event: Event) => {
          event.preventDefault();
          onClose();
        },
        // Beside the sheet is out of it.
        onClick: (event: Event) => (event.target === this.#place.current ? onClose() : undefined),
      },
      h('div', { class: 'sheet-body' }, children),
    );
  }
}
