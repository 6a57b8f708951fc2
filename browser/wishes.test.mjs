// Browser tests of wishes, what-ifs and reasons on the southern demonstration,
// a real garden reckoned by the program itself: node --test wishes.test.mjs
// BEDWEEK_BIN names a built program; else it is built here.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, sound, wide } from './looks.mjs';
import { run } from './server.mjs';

let program, browser, url, line;

before(async () => {
  program = await run(folder => ['demo', '-south', '-port', '0', '-data', join(folder, 'data')]);
  url = program.url;
  browser = await launch();
  const page = await open('/lines', 1280);
  line = await page.locator('svg.lines [data-why*=".sow"], svg.lines [data-why*=".set"]').first().getAttribute('data-why');
  await page.context().close();
});

after(async () => {
  await browser?.close();
  await program?.stop();
});

const open = opener(() => browser, () => url, /status of 422/);

test('without script: ask why, keep the line, see its price, take it back', async () => {
  const page = await open(line, 390, { javaScriptEnabled: false });
  assert.equal(await page.locator('.reasons li').count(), 3);
  assert.ok(await page.getByText('What would change it').count());
  await page.getByRole('button', { name: 'Keep this as planned' }).click();
  assert.match(page.url(), /\/wishes\?saved=/);
  const priced = /Keep .+ as planned.+In the plan\..+(No difference seen: less than|It costs about) .+meal/s; // the file's own wish may be priced before
  for (let i = 0; i < 180 && !priced.test(await page.locator('.wishes').innerText().catch(() => '')); i++) {
    await page.waitForTimeout(1000);
    await page.goto(url + '/wishes');
  }
  assert.match(await page.locator('.wishes').innerText(), priced);
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
