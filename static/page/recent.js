// @ts-check
// The first screen: recent answers, and questions that open with the numbers last used.
import { forgetRecent, jobAtHand, recentAnswers } from './memory.js';
import { showPinned, withLastInputs } from './pinned.js';

export function showRecent() {
  const list = document.querySelector('[data-recent]');
  const none = document.querySelector('[data-no-recent]');
  const forget = document.querySelector('[data-forget]');
  if (!(list instanceof HTMLElement && none instanceof HTMLElement && forget instanceof HTMLElement)) return;
  showJobAtHand();
  const answers = recentAnswers();
  list.replaceChildren(...answers.map(entry));
  list.hidden = forget.hidden = answers.length === 0;
  none.hidden = answers.length > 0;
  forget.onclick = () => {
    forgetRecent();
    showRecent();
  };
  showPinned();
  for (const link of document.querySelectorAll('.questions a, .often a')) {
    const address = link.getAttribute('href') ?? '';
    // What a question says itself is not to be typed over.
    if (!address.includes('?') || address.endsWith('?units=si')) link.setAttribute('href', withLastInputs(address));
  }
}

function showJobAtHand() {
  const link = document.querySelector('[data-at-hand] a');
  const job = jobAtHand();
  const title = link?.querySelector('span');
  if (!(link instanceof HTMLAnchorElement && title && job)) return void delete document.documentElement.dataset.jobAtHand;
  document.documentElement.dataset.jobAtHand = '';
  link.href = `work#${job.id}`;
  title.textContent = job.title;
}

/** @param {import('./memory.js').RecentAnswer} answer */
function entry(answer) {
  const link = document.createElement('a');
  link.href = answer.href;
  const when = new Date(answer.at).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' });
  for (const [name, text] of [['strong', answer.number], ['span', answer.label], ['span', answer.given], ['time', when]]) {
    const part = document.createElement(name ?? '');
    part.textContent = text ?? '';
    link.append(part, ' ');
  }
  const item = document.createElement('li');
  item.append(link);
  return item;
}
