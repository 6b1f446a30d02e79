// @ts-check
// One step less, one step more: another number without a keyboard. How much a step is, the quantity says; the number
// that comes of it is typed into the box as a welder would type it.

const NUMBER = /^([-+\u2212]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$|^([-+\u2212]?)(\d*)(?:([.,])(\d*))?$/;
const ALMOST = 1e-9;

/** What a text says, if it can only say one thing. @param {string} text @returns {{ value: number, mark: boolean } | null} */
function read(text) {
  const found = NUMBER.exec(text.includes('/') ? text : text.replace(/(\d)[ \u00a0\u202f\u2009](?=\d)/g, '$1'));
  if (!found) return null;
  const [, sign, whole = '0', top, bottom, sign10, whole10 = '', mark, rest = ''] = found;
  if (bottom) return Number(bottom) ? { value: (sign && sign !== '+' ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom)), mark: false } : null;
  // A comma before three digits may be either mark: the book asks.
  if (!/\d/.test(whole10 + rest) || (mark === ',' && rest.length === 3 && Number(whole10))) return null;
  return { value: (sign10 && sign10 !== '+' ? -1 : 1) * Number(`${whole10}.${rest}0`), mark: Boolean(mark) };
}

/** @param {number} one @param {number} other @returns {number} */
const divisor = (one, other) => (other ? divisor(other, one % other) : one);

/** A fraction as it is marked on a rule. @param {number} tops how many @param {number} bottom of which */
function asFraction(tops, bottom) {
  const size = Math.abs(tops);
  const [whole, rest] = [Math.floor(size / bottom), size % bottom];
  const common = divisor(rest, bottom);
  return (tops < 0 ? '-' : '') + [whole || !rest ? `${whole}` : '', rest ? `${rest / common}/${bottom / common}` : ''].filter(Boolean).join(' ');
}

/** @typedef {{ unit: string, step: string, low: number, high: number }} Step */

/** @param {string} declared @returns {Step[]} */
export const steps = declared =>
  declared.split(';').map(each => {
    const [unit = '', step = '', low, high] = each.split('|');
    return { unit, step, low: Number(low), high: Number(high) };
  });

/**
 * The next multiple of a step, as it is typed; null where there is none inside the range, or nothing to start from.
 * @param {string} text a number, with its unit or without @param {1 | -1} way
 * @param {Step[]} offered @param {string} chosen the unit beside the box @param {(sign: string) => string | undefined} named the unit that is typed so
 */
export function stepped(text, way, offered, chosen, named) {
  const [, number = '', suffix = ''] = /^([-+\u2212\d.,/\s]*)(.*)$/.exec(text.trim()) ?? [];
  const unit = suffix ? named(suffix) : chosen;
  const step = offered.find(each => each.unit === unit);
  const now = read(number.trim());
  if (!step || !now) return null;
  const [top = 1, bottom = 1] = step.step.split('/').map(Number);
  const count = (now.value * bottom) / top;
  const near = Math.round(count);
  const from = Math.abs(count - near) < 1e-6 ? near : way > 0 ? Math.floor(count) : Math.ceil(count);
  const next = from + way;
  const value = (next * top) / bottom;
  const room = ALMOST * Math.max(1, Math.abs(value));
  if (value < step.low - room || value > step.high + room) return null;
  // Typed as decimals, it stays so.
  const shown = bottom > 1 && !now.mark ? asFraction(next * top, bottom) : String(Number(value.toFixed(6)));
  return suffix ? `${shown} ${suffix}` : shown;
}

/** @param {HTMLFormElement} form */
export function watchSteppers(form) {
  form.addEventListener('click', event => {
    const button = event.target instanceof Element ? event.target.closest('.steps button') : null;
    const pair = button?.parentElement;
    const entry = pair?.closest('.entry');
    const box = entry?.querySelector('input');
    if (!button || !pair || !entry || !box) return;
    const chooser = entry.querySelector('select');
    const only = entry.querySelector('input[type="hidden"]');
    const units = chooser ? [...chooser.options].map(each => [each.value, each.text]) : [[only instanceof HTMLInputElement ? only.value : '', entry.querySelector('.unit')?.textContent ?? '']];
    /** @param {string} sign */
    const named = sign => units.find(each => each.some(name => name?.toLowerCase() === (sign === '"' ? 'in' : sign.toLowerCase())))?.[0];
    const text = stepped(box.value, button === pair.firstElementChild ? -1 : 1, steps(pair.dataset.steps ?? ''), chooser?.value ?? units[0]?.[0] ?? '', named);
    // Nothing to start from: the place to type it.
    if (text === null && !/\d/.test(box.value)) box.focus();
    if (text === null) return;
    box.value = text;
    box.dispatchEvent(new Event('change', { bubbles: true }));
    const spoken = document.getElementById('spoken');
    if (spoken) spoken.textContent = text;
  });
}
