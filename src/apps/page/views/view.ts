import type { App } from '../shell/app.js';
import type { State } from '../shell/state.js';

/** What every part of the page is drawn from. */
export interface View {
  app: App;
  state: State;
}
