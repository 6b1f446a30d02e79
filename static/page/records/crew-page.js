// @ts-check
// Joining a crew by a code, and leaving it. What is not on the server never goes by leaving.
import { keep, recall } from '../memory.js';
import { keepFact } from './database.js';
import { post } from './exchange.js';
import { count, exchangeNow } from './sending.js';
import { PAIRED } from './unsent.js';

export function showCrew() {
  const crew = document.querySelector('[data-crew]');
  const form = crew?.querySelector('[data-joining]');
  const leave = crew?.querySelector('[data-leave]');
  const said = crew?.querySelector('[data-said]');
  if (!(crew instanceof HTMLElement && form instanceof HTMLFormElement && leave instanceof HTMLButtonElement && said instanceof HTMLElement)) return;
  crew.hidden = false;
  const code = /** @type {HTMLInputElement} */ (form.querySelector('#code'));
  const name = /** @type {HTMLInputElement} */ (form.querySelector('#name'));
  // A scanned code stands after the #, which no server sees; it is taken out of the address at once.
  if (location.hash.length > 1) {
    code.value = decodeURIComponent(location.hash.slice(1));
    history.replaceState(null, '', location.pathname);
  }
  /** @param {string} [words] */
  const show = words => {
    const paired = Boolean(recall(PAIRED));
    form.hidden = paired;
    leave.hidden = !paired;
    said.textContent = words ?? (paired ? said.dataset.paired : said.dataset.notPaired) ?? '';
  };
  /** @param {string} reason */
  const why = reason => said.dataset[reason.replace(/-(.)/g, (_, letter) => letter.toUpperCase())] ?? '';
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const { reply, reason, status } = await post('pair', { code: code.value, name: name.value });
    if (!reply) return show(status === 403 || status === 422 ? said.dataset.wrong : why(reason));
    keep(PAIRED, reply.device);
    await keepFact('server', { store: '', after: 0, after_rev: '' });
    code.value = '';
    show();
    await exchangeNow(true);
  });
  leave.addEventListener('click', async () => {
    const left = await count();
    if (left) return show((said.dataset.notSent ?? '').replace('#', String(left)));
    const { reply, reason, status } = await post('leave', {});
    if (!reply && status !== 401) return show(why(reason));
    keep(PAIRED, null);
    show(said.dataset.left);
  });
  show();
}
