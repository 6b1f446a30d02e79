// @ts-check
// A signature as text: strokes of points on a field of 600 by 200, `x,y x,y;x,y x,y`, as few points as draw it as well.

/** @typedef {[number, number]} Point */
export const WIDTH = 600;
export const HEIGHT = 200;
const LONGEST_TEXT = 4000; // characters of one field, on the wire
const MOST_STROKES = 200;

/** The strokes as text that fits into a field of a record. @param {Point[][]} strokes */
export function signatureText(strokes) {
  for (let tolerance = 1; ; tolerance *= 2) {
    const kept = strokes.slice(0, MOST_STROKES).map(stroke => simplified(stroke, tolerance));
    const text = kept.map(stroke => stroke.map(each => each.map(Math.round).join(',')).join(' ')).join(';');
    if (text.length <= LONGEST_TEXT) return text;
  }
}

/** The strokes that a text says; none of a text that says anything else. @param {string | undefined} text @returns {Point[][]} */
export function strokesOf(text) {
  if (!/^\d{1,3},\d{1,3}(?:[ ;]\d{1,3},\d{1,3})*$/.test(text ?? '')) return [];
  return (text ?? '').split(';').map(stroke => stroke.split(' ').map(each => /** @type {Point} */ (each.split(',').map(Number))));
}

/** Fewer points that stay within a distance of the line through all of them (Douglas and Peucker). @param {Point[]} points @param {number} tolerance @returns {Point[]} */
export function simplified(points, tolerance) {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) return points;
  let [farthest, place] = [0, 0];
  points.forEach((point, at) => {
    const away = distance(point, first, last);
    if (away > farthest) [farthest, place] = [away, at];
  });
  if (farthest <= tolerance) return [first, last];
  return [...simplified(points.slice(0, place + 1), tolerance).slice(0, -1), ...simplified(points.slice(place), tolerance)];
}

/** @param {Point} point @param {Point} from @param {Point} to how far from the line between them */
function distance([x, y], [fromX, fromY], [toX, toY]) {
  const [wide, high] = [toX - fromX, toY - fromY];
  const length = wide * wide + high * high;
  const along = length ? Math.max(0, Math.min(1, ((x - fromX) * wide + (y - fromY) * high) / length)) : 0;
  return Math.hypot(x - fromX - along * wide, y - fromY - along * high);
}

const SVG = 'http://www.w3.org/2000/svg';

/** Strokes as a drawing. @param {Point[][]} strokes @param {string} name what it is, for the ear */
export function drawn(strokes, name) {
  const drawing = document.createElementNS(SVG, 'svg');
  drawing.setAttribute('viewBox', `0 0 ${WIDTH} ${HEIGHT}`);
  drawing.setAttribute('preserveAspectRatio', 'xMinYMid');
  drawing.setAttribute('role', 'img');
  drawing.setAttribute('aria-label', name);
  drawing.classList.add('signature');
  drawing.append(...strokes.map(lineOf));
  return drawing;
}

/** @param {Point[]} stroke */
function lineOf(stroke) {
  const line = document.createElementNS(SVG, 'polyline');
  // A dot is a line to itself.
  line.setAttribute('points', (stroke.length > 1 ? stroke : [...stroke, ...stroke]).map(each => each.join(',')).join(' '));
  return line;
}

/** Let a finger or a pen draw on a field; return what gives its strokes and what clears it. @param {SVGSVGElement} pad */
export function watchPad(pad) {
  /** @type {Point[][]} */
  const strokes = [];
  /** @type {{ stroke: Point[], line: Element } | undefined} */
  let going;
  /** @param {PointerEvent} event @returns {Point} */
  const place = event => {
    const box = pad.getBoundingClientRect();
    const [x, y] = [((event.clientX - box.left) / box.width) * WIDTH, ((event.clientY - box.top) / box.height) * HEIGHT];
    return [Math.max(0, Math.min(WIDTH, Math.round(x))), Math.max(0, Math.min(HEIGHT, Math.round(y)))];
  };
  pad.addEventListener('pointerdown', event => {
    pad.setPointerCapture(event.pointerId);
    const stroke = [place(event)];
    going = { stroke, line: lineOf(stroke) };
    strokes.push(stroke);
    pad.append(going.line);
  });
  pad.addEventListener('pointermove', event => {
    if (!going) return;
    going.stroke.push(place(event));
    going.line.setAttribute('points', going.stroke.map(each => each.join(',')).join(' '));
  });
  for (const end of ['pointerup', 'pointercancel']) pad.addEventListener(end, () => (going = undefined));
  return {
    strokes: () => strokes,
    clear() {
      strokes.length = 0;
      pad.replaceChildren();
    },
  };
}
