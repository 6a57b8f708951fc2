// Browser tests of wishes, what-ifs and reasons on the southern demonstration,
// a real garden reckoned by the program itself: node --test wishes.test.mjs
// BEDWEEK_BIN names a built program; else it is built here.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { chromium } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const root = new URL('..', import.meta.url).pathname;
const shots = new URL('../shots', import.meta.url).pathname;
mkdirSync(shots, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), 'wishes-'));
let browser, url, child, line;

before(async () => {
  let program = process.env.BEDWEEK_BIN;
  if (!program) {
    program = join(folder, 'bedweek');
    execFileSync('go', ['build', '-o', program, './cmd/bedweek'], { cwd: root, stdio: 'inherit' });
  }
  child = spawn(program, ['demo', '-south', '-port', '0', '-data', join(folder, 'data')], { stdio: ['ignore', 'pipe', 'pipe'] });
  url = await new Promise((yes, no) => {
    let text = '';
    const hear = d => { text += d; const m = text.match(/http:\/\/127\.0\.0\.1:\d+/); if (m) yes(m[0]); };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('exit', code => no(new Error(`the program ended early: ${code}\n${text}`)));
  });
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', '--no-first-run', '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'],
  });
  const page = await open('/lines', 1280);
  line = await page.locator('svg.lines [data-why*=".sow"], svg.lines [data-why*=".set"]').first().getAttribute('data-why');
  await page.context().close();
});

after(async () => {
  await browser?.close();
  child?.removeAllListeners('exit');
  child?.kill('SIGTERM');
  await new Promise(yes => child?.once('close', yes) ?? yes());
  rmSync(folder, { recursive: true, force: true });
});

async function open(path, width, options = {}) {
  const context = await browser.newContext({ viewport: { width, height: width < 700 ? 844 : 900 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  page.faults = [];
  page.on('pageerror', e => page.faults.push(e.message));
  page.on('console', m => { if (m.type() === 'error' && !m.text().includes('422')) page.faults.push(m.text()); });
  await page.goto(url + path);
  return page;
}

const unfold = page => page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
const wide = page => page.evaluate(() => {
  const most = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= most) return [];
  return [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > most + 1).slice(0, 5).map(e => `${e.tagName}.${e.getAttribute('class') ?? ''}`);
});
const small = page => page.evaluate(() =>
  [...document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type=hidden])')]
    .filter(e => !e.classList.contains('skip') && e.checkVisibility())
    .map(e => [e, e.getBoundingClientRect()])
    .filter(([, r]) => r.width < 43.5 || r.height < 43.5)
    .map(([e, r]) => `${e.tagName} "${(e.textContent || e.name).trim().slice(0, 30)}" ${Math.round(r.width)}x${Math.round(r.height)}`));

async function sound(page, word) {
  await unfold(page);
  assert.deepEqual(await wide(page), [], `${word}: sticks out`);
  assert.deepEqual(await small(page), [], `${word}: too small`);
  await page.evaluate(axe);
  const found = await page.evaluate(async () => {
    const r = await window.axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: { 'color-contrast-enhanced': { enabled: true } } });
    return { passes: r.passes.length, faults: r.violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 160)}`) };
  });
  assert.deepEqual(found.faults, [], word);
  assert.ok(found.passes > 10);
  assert.deepEqual(page.faults, [], word);
}

test('without script: ask why, keep the line, see its price, take it back', async () => {
  const page = await open(line, 390, { javaScriptEnabled: false });
  assert.equal(await page.locator('.reasons li').count(), 3);
  assert.ok(await page.getByText('What would change it').count());
  await page.getByRole('button', { name: 'Keep this as planned' }).click();
  assert.match(page.url(), /\/wishes\?saved=/);
  for (let i = 0; i < 180 && !(await page.locator('.wishes').innerText().catch(() => '')).match(/No difference seen|It costs/); i++) {
    await page.waitForTimeout(1000);
    await page.goto(url + '/wishes');
  }
  assert.match(await page.locator('.wishes').innerText(), /Keep .+ as planned.+In the plan\..+(No difference seen: less than|It costs about) .+meal/s);
  await page.context().close();
});

test('a slip is said at the field, and what was typed stays', async () => {
  const page = await open('/wishes', 390, { javaScriptEnabled: false });
  await page.getByLabel('Meals a week, beyond what is wanted now').fill('plenty');
  await page.getByRole('button', { name: 'Wish it' }).click();
  assert.match(await page.locator('#f-meals').innerText(), /how many meals a week/);
  assert.equal(await page.getByLabel('Meals a week, beyond what is wanted now').inputValue(), 'plenty');
  await page.context().close();
});

test('keep the plan under a name, find it beside the present one', async () => {
  const page = await open('/wishes', 390, { javaScriptEnabled: false });
  await page.getByLabel('Keep the plan of today under the name').fill('As it was');
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  assert.match(await page.locator('.kept').innerText(), /As it was\s+Kept from .+ lines still open, \d+ are in the plan of today/s);
  await page.context().close();
});

test('what if: an answer side by side, and nothing is kept', async () => {
  const page = await open('/whatif', 390, { javaScriptEnabled: false });
  await page.getByLabel('Which space').selectOption({ index: 1 });
  await page.getByLabel('What if it were').selectOption('gone');
  await page.getByRole('button', { name: 'Try it' }).first().click();
  const said = await page.locator('main').innerText();
  assert.match(said, /What if .+ were gone/);
  assert.match(said, /No difference seen|would be worth about/);
  assert.match(said, /Better in \d+ of 20 futures, worse in \d+/);
  const bars = await page.locator('svg.foods g').evaluateAll(gs => gs.map(g => `${g.dataset.food} ${g.dataset.present} ${g.dataset.other}`));
  const rows = await page.locator('tr[data-food]').evaluateAll(rs => rs.map(r => `${r.dataset.food} ${r.dataset.present} ${r.dataset.other}`));
  assert.ok(rows.length > 1);
  for (const b of bars) assert.ok(rows.includes(b), b);
  await page.goto(url + '/wishes');
  assert.equal(await page.getByText('gone').count(), 0);
  await page.context().close();
});

test('tapping a line of the picture asks why', async () => {
  const page = await open('/lines', 1280);
  const mark = page.locator('.onwide svg.lines [data-why]').filter({ has: page.locator('.tap') }).first();
  const to = await mark.getAttribute('data-why');
  await mark.locator('.tap').click({ position: { x: 4, y: 14 } });
  await page.waitForURL(u => u.pathname.startsWith('/why/'));
  assert.ok(to.startsWith('/why/'));
  await page.context().close();
});

for (const width of [390, 1280]) {
  test(`at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [word, path] of [['wishes', '/wishes'], ['whatif', '/whatif'], ['whatif-answer', '/whatif?ask=minutes&minutes=-30'], ['why', line], ['plan', '/plan'], ['lines', '/lines']]) {
      const page = await open(path, width);
      await sound(page, word);
      await page.reload();
      await page.screenshot({ path: join(shots, `${word}-asked-${width}.png`), fullPage: true });
      await page.context().close();
    }
  });
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const path of ['/wishes', '/whatif?ask=minutes&minutes=-30', line]) {
    const page = await open(path, 320);
    await page.evaluate(() => { const s = new CSSStyleSheet(); s.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [s]; });
    assert.deepEqual(await wide(page), [], path);
    await page.context().close();
  }
});
