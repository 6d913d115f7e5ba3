import { h, render } from 'preact';
import { patternDefinitions } from '../report/index.js';
import { App } from './shell/app.js';
import { goOffline } from './shell/offline.js';
import { pageView } from './views/page-view.js';

/** Starts the page. */
function start(): void {
  const place = document.getElementById('page');
  const patterns = document.getElementById('patterns');
  if (!place || !patterns) return;
  patterns.innerHTML = patternDefinitions();
  const app = new App();
  const Page = () => pageView({ app, state: app.store.state });
  app.store.show(({ words }) => {
    document.documentElement.lang = words.lang;
    document.title = words.page.title;
    render(h(Page, null), place);
  });
  // A file dropped beside its place must not replace the page.
  addEventListener('dragover', (event) => event.preventDefault());
  addEventListener('drop', (event) => event.preventDefault());
  void app.open();
  void goOffline();
}

start();
