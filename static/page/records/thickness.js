// @ts-check
// A thickness as it was typed, to look entries up by.

const TYPED = /^(?:(\d+)[ -]+)?(?:(\d+) ?\/ ?(\d+)|(\d*[.,]?\d+)) ?(in|mm)$/;
const MILLIMETRES = { in: 25.4, mm: 1 };

/** What a thickness typed with its unit is, [mm]; undefined if that is none. @param {string | undefined} text @returns {number | undefined} */
export function millimetres(text) {
  const [, whole = '', top = '', bottom = '', decimal = '', unit] = TYPED.exec(text?.replace(/\s+/g, ' ').trim() ?? '') ?? [];
  if (!unit || (whole && !top)) return undefined;
  const number = top ? Number(whole) + Number(top) / Number(bottom) : Number(decimal.replace(',', '.'));
  const length = number * MILLIMETRES[/** @type {'in' | 'mm'} */ (unit)];
  return Number.isFinite(length) && length > 0 ? Number(length.toFixed(3)) : undefined;
}
