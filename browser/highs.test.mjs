// An outside solver judges the season's model: node --test highs.test.mjs
// Each garden in internal/season/testdata/mps was planned by trying every plan;
// the solver reads the model file and must find the same worth, no more than
// the proved bound. With BEDWEEK_BIN a small garden is planned and judged too.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import loadHighs from 'highs';

const dir = new URL('../internal/season/testdata/mps', import.meta.url).pathname;
const near = 1e-5; // meals: the solver's own tolerance on rows, times a few rows

// read takes a free MPS file apart: the sections the season writes, no others.
function read(text) {
  const rows = new Map(), cols = new Map();
  let section = '', whole = false;
  for (const line of text.trim().split('\n')) {
    const word = line.trim().split(/\s+/);
    if (!line.startsWith(' ')) { section = word[0]; continue; }
    if (section === 'ROWS') rows.set(word[1], { kind: word[0], rhs: 0, in: [] });
    else if (section === 'COLUMNS' && word[1] === 'MARKER') whole = word[3] === "'INTORG'";
    else if (section === 'COLUMNS') {
      if (!cols.has(word[0])) cols.set(word[0], { id: `x${cols.size}`, whole, low: 0, high: Infinity });
      for (let i = 1; i < word.length; i += 2) rows.get(word[i]).in.push([word[0], Number(word[i + 1])]);
    } else if (section === 'RHS') rows.get(word[1]).rhs = Number(word[2]);
    else if (section === 'BOUNDS') {
      const col = cols.get(word[2]), x = Number(word[3]);
      assert.ok(['UP', 'FX'].includes(word[0]), line);
      col.high = x;
      if (word[0] === 'FX') col.low = x;
    } else assert.fail(`${section}: ${line}`);
  }
  assert.equal(section, 'ENDATA');
  return { rows, cols };
}

// solve gives the least cost of a model; fixed holds columns at values. The
// solver's package takes another text form, so the model is written over.
async function solve(text, fixed = new Map(), options = {}) {
  const { rows, cols } = read(text);
  const sum = row => row.in.map(([c, x]) => `${x < 0 ? '-' : '+'} ${Math.abs(x)} ${cols.get(c).id}`).join('\n ') || '0 x0';
  const out = ['minimize', ` cost: ${sum(rows.get('cost'))}`, 'subject to'];
  let n = 0;
  for (const [name, row] of rows) {
    if (name !== 'cost' && row.in.length) out.push(` r${n++}: ${sum(row)} ${{ L: '<=', G: '>=', E: '=' }[row.kind]} ${row.rhs}`);
  }
  out.push('bounds');
  for (const [name, c] of cols) {
    const low = fixed.get(name) ?? c.low, high = fixed.get(name) ?? c.high;
    out.push(high === Infinity ? ` ${c.id} >= ${low}` : ` ${low} <= ${c.id} <= ${high}`);
  }
  out.push('general', ...[...cols.values()].filter(c => c.whole).map(c => ` ${c.id}`), 'end');
  const highs = await loadHighs();
  return highs.solve(out.join('\n'), { mip_rel_gap: 0, mip_abs_gap: 1e-9, ...options });
}

// sol reads the figures and columns of a plan beside its model.
function sol(text) {
  const said = {}, columns = new Map();
  for (const line of text.trim().split('\n')) {
    const word = line.split(' ');
    if (word[0] === '#') said[word[1]] = Number(word[2]);
    else columns.set(word[0], Number(word[1]));
  }
  return { said, columns };
}

// everyWhole lists the whole-number columns of plantings and pull weeks.
const everyWhole = text => new Set([...text.matchAll(/^ ((?:start|plants|pull)\.\S+) cost /gm)].map(m => m[1]));

test('the solver finds what trying every plan finds', async () => {
  const names = readdirSync(dir).filter(n => n.endsWith('.mps'));
  assert.ok(names.length >= 20, `${names.length} models`);
  for (const name of names) {
    const text = readFileSync(join(dir, name), 'utf8');
    const { said } = sol(readFileSync(join(dir, name.replace('.mps', '.sol')), 'utf8'));
    const best = await solve(text);
    assert.equal(best.Status, 'Optimal', name);
    assert.ok(Math.abs(best.ObjectiveValue - said.objective) < near, `${name}: solver ${best.ObjectiveValue}, every plan ${said.objective}`);
    assert.ok(best.ObjectiveValue > said.bound - near, `${name}: solver ${best.ObjectiveValue} beyond the bound ${said.bound}`);
  }
});

test('the plan beside a model has the worth it claims', async () => {
  for (const name of readdirSync(dir).filter(n => n.endsWith('.mps')).slice(0, 8)) {
    const text = readFileSync(join(dir, name), 'utf8');
    const { said, columns } = sol(readFileSync(join(dir, name.replace('.mps', '.sol')), 'utf8'));
    const fixed = new Map([...everyWhole(text)].map(c => [c, columns.get(c) ?? 0]));
    for (const c of columns.keys()) assert.ok(fixed.has(c), `${name} has no column ${c}`);
    const got = await solve(text, fixed);
    assert.ok(Math.abs(got.ObjectiveValue - said.objective) < near, `${name}: ${got.ObjectiveValue}, claimed ${said.objective}`);
  }
});

// Two spaces and twelve weeks: what a solver in a browser's engine can finish.
const garden = readFileSync(new URL('./small-garden.yaml', import.meta.url), 'utf8');

test('a garden planned by the program: plan, optimum and bound in order', { skip: !process.env.BEDWEEK_BIN }, async () => {
  const work = mkdtempSync(join(tmpdir(), 'model-'));
  try {
    writeFileSync(join(work, 'garden.yaml'), garden);
    const record = new URL('../demo/seattle-weather.csv', import.meta.url).pathname;
    const run = spawnSync(process.env.BEDWEEK_BIN, ['plan', join(work, 'garden.yaml'), '-weather', record, '-from', '2015-04-06', '-weeks', '12', '-work', '300000',
      '-json', '-mps', join(work, 'model.mps')], { encoding: 'utf8', maxBuffer: 1 << 28 });
    assert.equal(run.status, 0, run.stderr);
    const plan = JSON.parse(run.stdout);
    const text = readFileSync(join(work, 'model.mps'), 'utf8');
    const { said, columns } = sol(readFileSync(join(work, 'model.sol'), 'utf8'));
    assert.ok(Math.abs(plan.value + said.objective) < 1e-6 && Math.abs(plan.bound + said.bound) < 1e-6);
    const fixed = new Map([...everyWhole(text)].map(c => [c, columns.get(c) ?? 0]));
    const own = await solve(text, fixed);
    assert.ok(Math.abs(own.ObjectiveValue - said.objective) < 1e-4, `the plan: solver ${own.ObjectiveValue}, program ${said.objective}`);
    const best = await solve(text, new Map(), { time_limit: 60, mip_rel_gap: 1e-4 });
    const optimum = -best.ObjectiveValue;
    console.log(`# plan ${plan.value.toFixed(3)}, solver ${optimum.toFixed(3)} (${best.Status}), bound ${plan.bound.toFixed(3)}, ${plan.options} options`);
    assert.ok(optimum >= plan.value - 1e-3 * Math.abs(plan.value) || best.Status !== 'Optimal', `solver ${optimum} below the plan ${plan.value}`);
    assert.ok(optimum <= plan.bound + 1e-4, `solver ${optimum} above the bound ${plan.bound}`);
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
});
