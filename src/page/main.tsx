import { render } from 'preact';
import { App } from './parts/app.tsx';
import { begin } from './state/design.ts';
import { loadKept } from './state/kept.ts';
import { beginManners } from './state/manners.ts';
import './style/colours.css';
import './style/base.css';
import './style/top.css';
import './style/cards.css';
import './style/fields.css';
import './style/outcome.css';
import './style/pictures.css';
import './style/marks.css';
import './style/cutouts.css';
import './style/folding.css';
import './style/lists.css';
import './style/status.css';
import './style/print.css';

const place = document.getElementById('page');
if (place) {
  await beginManners();
  begin();
  render(<App />, place);
  void loadKept();
  addEventListener('online', () => void loadKept());
}
