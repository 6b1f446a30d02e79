// @ts-check
// The way back between pages that were opened softly (softly.js), also where that script is not there any more.

export function watchBack() {
  const here = location.pathname + location.search;
  window.addEventListener('popstate', event => {
    const shown = document.documentElement.dataset.softly ?? here;
    if (!event.state?.soft || shown === location.pathname + location.search) return;
    if (document.dispatchEvent(new Event('page:back', { cancelable: true }))) location.reload();
  });
}
