// @ts-check
// What a page was opened for: the part of its address after the #, which never leaves the phone. Read once, before the
// page puts the address of its answer in the place of its own; it stays on <html>, where every script finds it.

const PURPOSE = /^#(correct|job|copy)=/;

export function readPurpose() {
  document.documentElement.dataset.opened = PURPOSE.test(location.hash) ? location.hash : '';
}

/** What it was opened for, as it stands in the address: '' or `#name=value&name=value`. */
export const purpose = () => document.documentElement.dataset.opened ?? '';

/** From now on the page is for this; its address says so too. @param {string} hash */
export function setPurpose(hash) {
  document.documentElement.dataset.opened = hash;
  history.replaceState(history.state, '', location.pathname + location.search + hash);
}

/**
 * `correct` and `rev`: the record that the page corrects and the revision that it follows; `job`: the job that it was
 * opened from; `copy`: the record that a new one starts from. What is no id of a record is left out.
 */
export function openedFor() {
  const said = new URLSearchParams(purpose().slice(1));
  const id = (/** @type {string} */ name) => (/^[0-9a-f-]{36}$/.test(said.get(name) ?? '') ? /** @type {string} */ (said.get(name)) : '');
  const rev = said.get('rev') ?? '';
  return { correct: /^\d+-[0-9a-f]{32}$/.test(rev) ? id('correct') : '', rev, job: id('job'), copy: id('copy'), said };
}

/**
 * Have something done when another part of the address after the # is asked for, while what shows it is there.
 * @param {Element} shown @param {() => void} work
 */
export function whenHashChanges(shown, work) {
  const path = location.pathname;
  const changed = () => {
    if (!shown.isConnected) window.removeEventListener('hashchange', changed);
    else if (location.pathname === path) work();
  };
  window.addEventListener('hashchange', changed);
}

/** Under which name a form's inputs are kept: those of a record, or of a job, must not become the next one's. @param {string} calculator */
export function inputsName(calculator) {
  const { correct, job } = openedFor();
  const record = (RECORDS.includes(calculator) && correct) || job;
  return record ? `${calculator}#${record}` : calculator;
}

/** The calculators whose answers are kept as records. */
export const RECORDS = ['weld-entry', 'job', 'job-price', 'stock'];
