// @ts-check
import { keep, recall } from './memory.js';

/** Auto, dark or noon, one tap away and remembered. theme.js applies it before the first paint. */
export function watchTheme() {
  const buttons = document.querySelectorAll('button[data-theme]');
  const show = () => {
    const chosen = recall('theme') ?? 'auto';
    for (const button of buttons) button.setAttribute('aria-pressed', String(button.getAttribute('data-theme') === chosen));
  };
  for (const button of buttons) {
    button.addEventListener('click', () => {
      const theme = button.getAttribute('data-theme') ?? 'auto';
      keep('theme', theme === 'auto' ? null : theme);
      if (theme === 'auto') delete document.documentElement.dataset.theme;
      else document.documentElement.dataset.theme = theme;
      show();
    });
  }
  show();
}
