// Browser tests of seeds, trays, hand-overs and names, on the program itself:
// BEDWEEK_BIN=… node --test names.test.mjs
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
const paths = [
  ['seeds', '/seeds'], ['seeds-new', '/seeds/new'], ['lot', '/lot/kale-1'], ['plant', '/plant/store-1'], ['move', '/plant/store-1/move/set-out'],
  ['seed', '/plant/bed-1/seed'], ['which', '/which/store-1'], ['which-ask', '/which/store-1?answer=is&name=Curled+Ebb'], ['labels', '/labels?id=store-1&id=store-2'],
];

let program, browser, folder, url;

before(async () => {
  folder = mkdtempSync(join(tmpdir(), 'names-'));
  let bin = process.env.BEDWEEK_BIN;
  if (!bin) {
    bin = join(folder, 'bedweek');
    execFileSync('go', ['build', '-o', bin, './cmd/bedweek'], { cwd: root, stdio: 'inherit' });
  }
  program = spawn(bin, ['serve', '-garden', join(root, 'browser/names-garden.yaml'), '-weather', join(root, 'demo/seattle-weather.csv'), '-date', '2015-04-15', '-port', '0', join(folder, 'data')], { stdio: ['ignore', 'pipe', 'pipe'] });
  url = await new Promise((resolve, reject) => {
    let text = '';
    const read = data => { text += data; const m = text.match(/http:\/\/127\.0\.0\.1:\d+/); if (m) resolve(m[0]); };
    program.stdout.on('data', read);
    program.stderr.on('data', read);
    program.on('exit', code => reject(new Error(`ended early: ${code}\n${text}`)));
  });
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-background-networking', '--no-first-run', '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'],
  });
});

after(async () => {
  await browser?.close();
  program?.kill();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

async function open(path, width, options = {}) {
  const context = await browser.newContext({ viewport: { width, height: width < 700 ? 844 : 900 }, ...options });
  const page = await context.newPage();
  const r = await page.goto(url + path);
  assert.equal(r.status(), 200, path);
  return page;
}

const wide = page => page.evaluate(() => {
  const most = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= most) return [];
  return [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > most + 1).slice(0, 5).map(e => `${e.tagName}.${e.getAttribute('class') ?? ''}`);
});

const small = page => page.evaluate(() =>
  [...document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type=hidden])')]
    .filter(e => !e.classList.contains('skip') && e.checkVisibility())
    .map(e => [e, (e.type === 'radio' || e.type === 'checkbox' ? e.closest('label') : e).getBoundingClientRect()])
    .filter(([, r]) => r.width < 43.5 || r.height < 43.5)
    .map(([e, r]) => `${e.tagName} "${(e.textContent || e.name).trim().slice(0, 30)}" ${Math.round(r.width)}x${Math.round(r.height)}`));

for (const width of [390, 1280]) {
  test(`at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [word, path] of paths) {
      const page = await open(path, width);
      await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
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
      await page.reload();
      await page.screenshot({ path: join(shots, `names-${word}-${width}.png`), fullPage: true });
      await page.context().close();
    }
  });
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const [word, path] of paths) {
    const page = await open(path, 320);
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Emulation.setDeviceMetricsOverride', { width: 320, height: 640, deviceScaleFactor: 1, mobile: false });
    await page.evaluate(() => { const s = new CSSStyleSheet(); s.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [s]; });
    assert.deepEqual(await wide(page), [], word);
    await page.context().close();
  }
});

test('the menu holds eight pages, Seeds among them', async () => {
  const page = await open('/seeds', 390);
  assert.equal(await page.locator('.menu a').count(), 8);
  assert.equal(await page.locator('.menu a[aria-current=page]').innerText(), 'Seeds');
  await page.context().close();
});

test('the answer of a hand-over is a bar of 88 px, others 60 px', async () => {
  const page = await open('/plant/store-2/move/prick-out', 390);
  const tall = async name => (await page.getByRole('button', { name, exact: true }).boundingBox()).height;
  assert.ok(await tall('All 6') >= 88);
  assert.ok(await tall('Some of them') >= 60);
  await page.context().close();
});

test('without script: one tap pots on, a mix is set out, its name narrowed, all taken back', async () => {
  const page = await open('/plant/store-2', 390, { javaScriptEnabled: false });
  await page.getByRole('link', { name: 'Pot on' }).click();
  await page.getByRole('button', { name: 'All 6', exact: true }).click();
  assert.match(await page.locator('.saved').innerText(), /Saved: potted on, 6 plants\. They are still .+\./);
  await page.goto(url + '/plant/store-2/move/set-out');
  await page.getByLabel('Into which space').selectOption({ label: 'Bed' });
  await page.getByLabel('How many').fill('4');
  await page.getByText('I do not know from which tray').click();
  await page.getByLabel(/Perhaps this tray/).check();
  await page.locator('input[name=other]').first().check();
  await page.getByRole('button', { name: 'Some of them' }).click();
  assert.match(await page.locator('.saved').innerText(), /These are now .+ On the stick:/);
  await page.getByRole('link', { name: 'Which one is this?' }).click();
  const dots = await page.locator('[data-of20]').evaluateAll(es => es.map(e => Number(e.dataset.of20)));
  assert.equal(dots.reduce((a, b) => a + b, 0), 20);
  await page.getByRole('button', { name: 'It is this: Black Frond' }).click();
  assert.match(await page.locator('main').innerText(), /This is what changes:/);
  await page.getByRole('button', { name: /Agree/ }).click();
  assert.match(await page.locator('.saved').innerText(), /kale, Black Frond/);
  await page.getByRole('button', { name: 'Take it back' }).click();
  assert.match(await page.locator('main').innerText(), /one of/);
  await page.context().close();
});

test('a tag opens its plant; a sheet of labels is a PDF', async () => {
  const page = await open('/plant/store-1', 390);
  const tag = (await page.locator('.tagline').innerText()).trim();
  assert.match(tag, /^[A-Z][a-z]+ [A-Z][a-z]+ \d\d$/);
  await page.goto(url + '/seeds');
  await page.getByLabel('The tag on a stick').fill(tag.toLowerCase());
  await page.getByRole('button', { name: 'Open it' }).click();
  assert.match(page.url(), /\/plant\/store-1$/);
  const scanned = await page.request.get(`${url}/P/${tag.toUpperCase().replaceAll(' ', '-')}`);
  assert.match(scanned.url(), /\/plant\/store-1$/);
  const pdf = await page.request.get(url + '/labels.pdf?id=store-1');
  assert.equal(pdf.headers()['content-type'], 'application/pdf');
  assert.equal((await pdf.body()).subarray(0, 5).toString(), '%PDF-');
  await page.context().close();
});

test('paper: black, 14 pt or more', async () => {
  for (const [word, path] of [['seeds', '/seeds'], ['plant', '/plant/store-1'], ['lot', '/lot/kale-1']]) {
    const page = await open(path, 1000);
    await page.emulateMedia({ media: 'print' });
    const seen = await page.evaluate(() => {
      const out = [];
      const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (walk.nextNode()) {
        const e = walk.currentNode.parentElement;
        if (!walk.currentNode.data.trim() || !e.checkVisibility() || e.closest('svg') || e.closest('.skip')) continue;
        const s = getComputedStyle(e);
        if (parseFloat(s.fontSize) < 18.6 || s.color !== 'rgb(0, 0, 0)') out.push(`${e.tagName}.${e.className} ${s.fontSize} ${s.color} ${e.textContent.slice(0, 30)}`);
      }
      return out;
    });
    assert.deepEqual(seen, [], word);
    await page.context().close();
  }
});
