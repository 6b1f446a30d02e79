// @ts-check
import { keep, recall } from './memory.js';

// The plate of app.css, for what the browser paints around the page.
const PLATE = { dark: '#16191c', noon: '#ffffff' };

/** Auto, dark or noon, one tap away and remembered. theme.js applies it before the first paint. */
export function watchTheme() {
  const buttons = document.querySelectorAll('button[data-theme]');
  const show = () => {
    const chosen = recall('theme') ?? 'auto';
    for (const button of buttons) button.setAttribute('aria-pressed', String(button.getAttribute('data-theme') === chosen));
    for (const frame of document.querySelectorAll('meta[name="theme-color"]')) {
      const system = frame.getAttribute('media')?.includes('light') ? 'noon' : 'dark';
      frame.setAttribute('content', PLATE[chosen === 'dark' || chosen === 'noon' ? chosen : system]);
    }
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
