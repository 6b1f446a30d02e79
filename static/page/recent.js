// @ts-check
// The first screen: recent answers, and questions that open with the numbers last used.
import { forgetRecent, inputsKey, recall, recentAnswers } from './memory.js';

export function showRecent() {
  const list = document.querySelector('[data-recent]');
  const none = document.querySelector('[data-no-recent]');
  const forget = document.querySelector('[data-forget]');
  if (!(list instanceof HTMLElement && none instanceof HTMLElement && forget instanceof HTMLElement)) return;
  const answers = recentAnswers();
  list.replaceChildren(...answers.map(entry));
  list.hidden = forget.hidden = answers.length === 0;
  none.hidden = answers.length > 0;
  forget.onclick = () => {
    forgetRecent();
    showRecent();
  };
  for (const link of document.querySelectorAll('.questions a')) openWithLastInputs(link);
}

/** @param {import('./memory.js').RecentAnswer} answer */
function entry(answer) {
  const item = document.createElement('li');
  const link = document.createElement('a');
  link.href = answer.href;
  const number = document.createElement('strong');
  number.textContent = answer.number;
  const label = document.createElement('span');
  label.textContent = answer.label;
  link.append(number, ' ', label);
  item.append(link);
  return item;
}

/** @param {Element} link */
function openWithLastInputs(link) {
  const address = link.getAttribute('href') ?? '';
  const last = recall(`link:${address.split('?')[0]}`) ?? recall(inputsKey(address.split('?')[0] ?? ''));
  if (last) link.setAttribute('href', `${address.split('?')[0]}?${last}`);
}
