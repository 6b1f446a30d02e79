// @ts-check
// Before the first paint: the theme chosen last, room for the job at hand, the pinned questions and those used last, and
// for what needs script. Kept apart from app.js so that nothing
// flashes or moves.
{
  /** @param {string} key */
  const kept = key => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null; // storage refused: the system's preference applies
    }
  };
  const chosen = kept('theme');
  if (chosen === 'dark' || chosen === 'noon') document.documentElement.dataset.theme = chosen;
  document.documentElement.dataset.script = ''; // what needs one shows from the first paint on
  if (kept('job-at-hand')) document.documentElement.dataset.jobAtHand = '';
  /** @param {string} key @returns {string[]} the questions that a list on the phone is about */
  const questions = key => {
    try {
      return JSON.parse(kept(key) ?? '[]').map((/** @type {{ calculator: string }} */ each) => each.calculator);
    } catch {
      return [];
    }
  };
  const pinned = questions('pinned');
  const used = [...new Set(questions('recent'))].filter(each => !pinned.includes(each)).slice(0, 4); // page/pinned.js: MOST_USED
  for (const [name, rows] of Object.entries({ pinned, used })) {
    document.documentElement.style.setProperty(`--${name}`, String(rows.length));
    document.documentElement.toggleAttribute(`data-has-${name}`, rows.length > 0);
  }
}
