// @ts-check
// The demo's scenario: every name, place, number and fault in it is invented for this book.

/**
 * @typedef {{ key: string, kind: string, days: number, typed: Record<string, string>, of?: Record<string, string>,
 *   beside?: (at: string) => Record<string, string>,
 *   parts?: { calculator: string, prefix: string, typed: Record<string, string> }[] }} DemoRecord
 *   `days` before now; `of` names other records by their keys; `beside` is what a script keeps
 */

const SPOOL = { wire_class: 'ER70S-6', wire_material: 'mild-steel', wire_diameter: '0.035 in' };
const RUN = { ...SPOOL, gas_used: 'Argon + CO2', gas_flow: '35 ft3/h', process: 'gas-metal-arc' };
const PRICE = { call_out: '60', drive_distance: '38 mi', distance_price: '1.1 /mi', labor_rate: '85 /h', markup: '15 %', tax_rate: '8 %', tax_name: 'Sales tax' };

/** @returns {DemoRecord[]} the oldest first, what others name in front of them */
export function demoRecords() {
  return [...stock(), ...hitch(), ...bucket(), rail()];
}

/** @returns {DemoRecord[]} */
const stock = () => [
  { key: 'spool', kind: 'stock', days: 12, typed: { item: 'spool', name: 'Steel, front rack', ...SPOOL, spool_left: '8.5 lb' } },
  { key: 'stainless', kind: 'stock', days: 12, typed: { item: 'spool', name: 'Stainless, small', wire_class: 'ER308LSi', wire_material: 'stainless', wire_diameter: '0.030 in', spool_left: '1.2 lb' } },
  { key: 'mix', kind: 'stock', days: 12, typed: { item: 'cylinder', name: 'Mix, left', gas: 'argon-carbon-dioxide', carbon_dioxide: '25 %', cylinder: '125-ft3', cylinder_pressure: '1100 psi' } },
  { key: 'machine', kind: 'stock', days: 12, typed: { item: 'machine', name: 'Old faithful', rated_current: '200 A', rated_duty_cycle: '30 %', largest_current: '210 A', largest_feed: '600 in/min', notes: 'Liner changed in spring' } },
  { key: 'lead', kind: 'stock', days: 12, typed: { item: 'lead', name: 'Long pair', lead_length: '60 ft', cable_size: 'awg-2', current: '175 A' } },
  { key: 'generator', kind: 'stock', days: 12, typed: { item: 'generator', name: 'Behind the cab', supply: 'generator-240', generator_power: '9 kW' } },
];

/** Welded, looked at, paid and closed. @returns {DemoRecord[]} */
const hitch = () => [
  {
    key: 'hitch',
    kind: 'job',
    days: 9,
    typed: {
      title: 'Stock trailer, cracked coupler', customer: 'Ida Marlow', place: 'Pell Farm, north yard', broken: 'Crack along the toe of the coupler weld, both sides',
      job_kind: 'trailer', base_metal: 'mild-steel', grade: 'a36-group', coating: 'painted', access: 'open', power: 'generator', wind: 'breeze', work_on: 'open', where: 'outdoors', ...wire, spool_left: '8.5 lb', gas_left: '62 ft3',
      ...joint(1, 'Coupler left', 'fillet', '3/16 in', '8 in', 'flat', '3/16 in'), ...joint(2, 'Coupler right', 'fillet', '3/16 in', '8 in', 'flat', '3/16 in'),
      generator_power: '9 kW', welder: 'R. Tamm', qualification: 'Own test plate, 2F', qualified_until: '2031-06-30', not_done: 'Safety chains and brake were not looked at.',
    },
    of: { spool: 'spool', cylinder: 'mix' },
    beside: at => ({ status: 'closed', closed_at: at, signed_by: 'Ida Marlow', signed_at: at, signature: '40,120 70,60 90,140 120,70 150,130 190,90;220,110 260,80 300,120 360,90 430,110' }),
    parts: [{ calculator: 'job-price', prefix: 'price.', typed: { ...PRICE, prep_time: '0.75 h', welding_time: '1 h', cleaning_time: '0.25 h', paid: 'all', exclusions: 'Paint and the brake.' } }],
  },
  entry('hitch', 9, 'Coupler left', 'root', '20.2 V', '172 A', '8 in', '33 s'),
  entry('hitch', 9, 'Coupler right', 'root', '20.3 V', '175 A', '8 in', '31 s'),
];

/** Begun yesterday, to be gone on with. @returns {DemoRecord[]} */
const bucket = () => [
  {
    key: 'bucket',
    kind: 'job',
    days: 1,
    typed: {
      title: 'Loader bucket, torn lip', customer: 'Osk Gravel', place: 'Quarry road, gate 2', broken: 'Lip torn 10 in from the corner', job_kind: 'machine', base_metal: 'mild-steel', grade: 'a572-50-group',
      coating: 'none', access: 'open', power: 'generator', wind: 'wind', ...wire, ...joint(1, 'Lip, top', 'single-v', '1/2 in', '10 in', 'flat', ''),
      ...joint(2, 'Gusset', 'fillet', '3/8 in', '6 in', 'horizontal', '5/16 in'), generator_power: '9 kW', welder: 'R. Tamm', qualification: 'Own test plate, 2F', qualified_until: '2025-03-31',
    },
    of: { spool: 'spool', cylinder: 'mix' },
    beside: () => ({ status: 'open' }),
    parts: [{ calculator: 'job-price', prefix: 'price.', typed: { ...PRICE, gouging_time: '1.5 h', welding_time: '2.5 h', deposit_share: '30 %', paid: 'none' } }],
  },
  entry('bucket', 1, 'Lip, top', 'root', '19 V', '175 A', '10 in', '62 s'),
  entry('bucket', 1, 'Lip, top', 'fill 1', '19.5 V', '182 A', '10 in', '70 s'),
];

/** A call just taken: much is not known yet. @returns {DemoRecord} */
const rail = () => ({
  key: 'rail',
  kind: 'job',
  days: 0,
  typed: { title: 'Handrail post broken off', place: 'Village hall, back steps', broken: 'Post broken at the base', job_kind: 'structure', base_metal: 'stainless', power: 'mains-120', wind: 'still', 'joints-1-name': 'Post base' },
  beside: () => ({ status: 'open' }),
});

const wire = { wire_diameter: '0.035 in', gas: 'argon-carbon-dioxide', carbon_dioxide: '25 %' };

/** @param {number} row @param {string} name @param {string} shape @param {string} thickness @param {string} length @param {string} position @param {string} leg */
function joint(row, name, shape, thickness, length, position, leg) {
  const said = { name, joint: shape, thickness, weld_length: length, position, leg };
  return Object.fromEntries(Object.entries(said).flatMap(([field, text]) => (text ? [[`joints-${row}-${field}`, text]] : [])));
}

/** @param {string} job @param {number} days @param {string} name @param {string} pass @param {string} voltage @param {string} current @param {string} length @param {string} time @returns {DemoRecord} */
function entry(job, days, name, pass, voltage, current, length, time) {
  return {
    key: `${job} ${name} ${pass}`,
    kind: 'weld-entry',
    days,
    typed: { joint: name, weld_pass: pass, voltage, current, weld_length: length, arc_time: time, wire_feed_speed: '334 in/min', visual_result: 'accepted', ...RUN },
    of: { job_id: job, spool: 'spool', cylinder: 'mix' },
  };
}
