// Browser tests of the crop pages on the southern demonstration, a real
// garden reckoned by the program itself: node --test crops.test.mjs
// BEDWEEK_BIN names a built program; else it is built here.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, sound, unfold, wide } from './looks.mjs';
import { run } from './server.mjs';

const paths = [['crops', '/crops'], ['crops-like', '/crops?q=onio'], ['crop', '/crop/carrot'], ['crop-set-out', '/crop/tomato?change=days-from-set'], ['crop-planted', '/crop/garlic']];
let program, browser, url;

before(async () => {
  program = await run(folder => ['demo', '-south', '-port', '0', '-data', join(folder, 'data')]);
  url = program.url;
  browser = await launch();
});

after(async () => {
  await browser?.close();
  await program?.stop();
});

const open = opener(() => browser, () => url);

for (const width of [390, 1280]) {
  test(`at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [word, path] of paths) {
      const page = await open(path, width);
      await page.screenshot({ path: join(shots, `${word}-${width}.png`), fullPage: true });
      await sound(page, word);
      await page.context().close();
    }
  });
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const [word, path] of paths) {
    const page = await open(path, 320);
    await page.evaluate(() => { document.documentElement.style.fontSize = '36px'; });
    await unfold(page);
    assert.deepEqual(await wide(page), [], word);
    await page.context().close();
  }
});

test('pictures stay inside their frames and words in them do not meet', async () => {
  for (const path of ['/crop/carrot', '/crop/tomato', '/crop/garlic', '/crop/spinach', '/crop/kale']) {
    const page = await open(path, 390);
    const faults = await page.evaluate(() => {
      const out = [];
      for (const svg of document.querySelectorAll('main svg[role=img]')) {
        const frame = svg.getBoundingClientRect();
        const boxes = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBoundingClientRect()]);
        for (const [i, [words, b]] of boxes.entries()) {
          if (b.left < frame.left - 6 || b.right > frame.right + 6 || b.bottom > frame.bottom + 3) out.push(`${svg.getAttribute('class')}: "${words}" leaves the picture`);
          for (const [other, o] of boxes.slice(i + 1)) {
            if (Math.min(b.right, o.right) - Math.max(b.left, o.left) > 1 && Math.min(b.bottom, o.bottom) - Math.max(b.top, o.top) > 3) out.push(`${svg.getAttribute('class')}: "${words}" meets "${other}"`);
          }
        }
      }
      return out;
    });
    assert.deepEqual(faults, [], path);
    await page.context().close();
  }
});

test('a crop is found by its name, and a start chosen, without script', async () => {
  const page = await open('/more', 390, { javaScriptEnabled: false });
  await page.getByRole('link', { name: 'Crops' }).click();
  await page.getByLabel('Which crop? Type its name').fill('rocket');
  await page.getByRole('button', { name: 'Find it' }).click();
  assert.equal(new URL(page.url()).pathname, '/crop/arugula');
  const before = await page.locator('.verdict').innerText();
  const weeks = await page.locator('#week option').evaluateAll(all => all.map(o => o.value));
  await page.getByLabel('When', { exact: true }).selectOption(weeks[20]);
  await page.getByLabel('Where', { exact: true }).selectOption('open bed');
  await page.getByRole('button', { name: 'Show it' }).click();
  assert.equal(await page.locator('#week').inputValue(), weeks[20]);
  assert.notEqual(await page.locator('.verdict').innerText(), before);
  assert.equal(await page.locator('svg.start g').count(), 20);
  await page.context().close();
});

test('an own figure is refused in words, kept, shown with its effect, and taken back, without script', async () => {
  const page = await open('/crop/carrot', 390, { javaScriptEnabled: false });
  const says = () => page.locator('.way p').first().innerText();
  const book = await says();
  const save = async fields => {
    for (const [label, value] of Object.entries(fields)) await page.getByLabel(label).fill(value);
    await page.getByRole('button', { name: 'Use my figure' }).click();
  };
  await page.getByLabel('Which figure').selectOption('days-from-sow');
  await save({ 'Your figure': '2', 'Where it comes from': 'my notes' });
  assert.match(await page.locator('#value-f').innerText(), /2 days is not possible\. A plant can have 5 to 500 days\./);
  assert.equal(await page.locator('#value').inputValue(), '2');
  assert.equal(await page.locator('#figure').inputValue(), 'days-from-sow');
  await save({ 'Your figure': '18 weeks' });
  assert.match(await page.locator('.saved').innerText(), /126 days/);
  assert.notEqual(await says(), book, 'the window stands where it was');
  assert.match(await page.locator('#own ~ ul').innerText(), /Without it/i);
  assert.match(await page.locator('.figs').evaluate(e => e.textContent), /mine 126 days; book/);
  assert.match(await page.locator('#own ~ ul').innerText(), /The plan (is being worked out|plants it)/); // its words: desk_test.go
  await page.getByText('Take back', { exact: true }).first().click();
  await page.getByRole('button', { name: /Yes, take it back/ }).first().click();
  assert.equal(await page.locator('#own').count(), 0);
  assert.equal(await says(), book, 'taken back, the window is not the book’s');
  await page.context().close();
});

test('by keyboard: every field and button is reached, in the order of the page', async () => {
  const page = await open('/crop/carrot', 1280);
  const seen = [];
  for (let k = 0; k < 60; k++) {
    await page.keyboard.press('Tab');
    seen.push(await page.evaluate(() => document.activeElement.id || document.activeElement.textContent.trim().slice(0, 20)));
  }
  for (const id of ['space', 'way', 'week', 'Show it', 'figure', 'value', 'why', 'Use my figure', 'All crops']) assert.ok(seen.includes(id), `${id} is not reached: ${seen}`);
  assert.ok(seen.indexOf('space') < seen.indexOf('figure'));
  await page.context().close();
});

test('on paper: black, 14 pt, pictures whole, few sides', async () => {
  const page = await open('/crop/carrot', 794);
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(() => ({
    size: parseFloat(getComputedStyle(document.querySelector('main p')).fontSize),
    forms: [...document.querySelectorAll('main form')].filter(f => f.checkVisibility()).length,
    pictures: [...document.querySelectorAll('main svg[role=img]')].filter(f => f.checkVisibility()).length,
    tables: [...document.querySelectorAll('main table')].filter(f => f.checkVisibility()).length,
    colours: [...new Set([...document.querySelectorAll('main *')].filter(e => e.checkVisibility()).map(e => getComputedStyle(e).color))],
  }));
  assert.ok(found.size >= 14 * 96 / 72 - 0.1, `${found.size} px`);
  assert.equal(found.forms, 0);
  assert.ok(found.pictures >= 4, `${found.pictures} pictures`);
  assert.equal(found.tables, 0, 'closed tables are printed');
  assert.deepEqual(found.colours, ['rgb(0, 0, 0)']);
  const pdf = await page.pdf({ path: join(shots, 'crop.pdf'), preferCSSPageSize: true });
  const sides = pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g).length;
  assert.ok(sides <= 4, `${sides} sides`);
  await page.context().close();
});
