// @ts-check
// Before the first paint: the theme chosen last. Kept apart from app.js so that nothing flashes.
{
  const chosen = (() => {
    try {
      return localStorage.getItem('theme');
    } catch {
      return null; // storage refused: the system's preference applies
    }
  })();
  if (chosen === 'dark' || chosen === 'noon') document.documentElement.dataset.theme = chosen;
}
