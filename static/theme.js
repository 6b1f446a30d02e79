// @ts-check
// Before the first paint: the theme chosen last, and room for the job at hand. Kept apart from app.js so that nothing
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
  if (kept('job-at-hand')) document.documentElement.dataset.jobAtHand = '';
}
