// Browser tests of sun and shade: node --test sky.test.mjs
// Serves a small garden north and south of the equator and beyond the polar
// circle, or tests BEDWEEK_URL, whose first space is then looked at.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, small, sound, unprintable, wide } from './looks.mjs';
import { start } from './server.mjs';

const given = Boolean(process.env.BEDWEEK_URL);
const fixturesOnly = { skip: given ? 'writes; fixtures only' : false };

let server, browser, paths;

before(async () => {
  server = await start('TestServeSky');
  browser = await launch();
  let sky = '/sky/gate-bed';
  if (given) {
    const page = await open(server.urls.given + '/light', 390);
    sky = await page.locator('a[href^="/sky/"]').first().getAttribute('href');
    await page.context().close();
  }
  paths = [['sky', sky], ['light', '/light'], ['light-mol', '/light?week=25&hour=9&show=light'], ['light-night', '/light?week=50&hour=2'],
    ['light-if', '/light?thing=0&do=remove'], ['light-slip', '/light?thing=0&do=raise&by=high']];
});

after(async () => {
  await browser?.close();
  server?.stop();
});

const open = opener(() => browser);

for (const width of [390, 1280]) {
  test(`at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [word, path] of paths) {
      for (const [name, url] of Object.entries(server.urls).slice(0, word === 'sky' || word === 'light' ? 3 : 1)) {
        const page = await open(url + path, width);
        await sound(page, `${name} ${word}`);
        await page.reload();
        await page.screenshot({ path: join(shots, `${name}-${word}-${width}.png`), fullPage: true });
        await page.context().close();
      }
    }
  });
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const [name, url] of Object.entries(server.urls)) {
    for (const [word, path] of paths) {
      if (name === 'south' && word !== 'sky') continue; // the same pages in other words
      const page = await open(url + path, 320);
      await large(page);
      assert.deepEqual(await wide(page), [], `${name} ${word}`);
      await page.context().close();
    }
  }
});

test('the picture follows week and hour without a reload, and its figures are the table’s', async () => {
  const url = Object.values(server.urls)[0];
  const page = await open(url + '/light?week=15&hour=12', 390);
  await page.evaluate(() => { window.stayed = true; });
  const read = () => page.evaluate(() => ({
    week: document.querySelector('.plan > svg').dataset.week, hour: document.querySelector('.plan > svg').dataset.hour,
    drawn: [...document.querySelectorAll('.plan text[data-figure]')].map(t => `${t.dataset.space} ${t.dataset.figure}`),
    table: [...document.querySelectorAll('#drawing tr[data-figure]')].map(t => `${t.dataset.space} ${t.dataset.figure}`),
    stayed: window.stayed,
  }));
  const first = await read();
  await page.locator('#week').fill('50');
  await page.waitForFunction(() => document.querySelector('.plan > svg').dataset.week === '50');
  await page.getByLabel('Hour of the day').fill('9.5');
  await page.waitForFunction(() => document.querySelector('.plan > svg').dataset.hour === '9.5');
  const then = await read();
  assert.ok(first.stayed && then.stayed, 'the page was loaded anew');
  for (const one of [first, then]) assert.deepEqual(one.drawn, one.table);
  assert.notDeepEqual(first.drawn, then.drawn);
  assert.match(page.url(), /week=50&hour=9\.5/);
  assert.match(await page.locator('#week-o').innerText(), /^\d+ December$/);
  await page.reload();
  assert.deepEqual((await read()).drawn, then.drawn, 'the address draws the same');
  assert.deepEqual(page.faults, []);
  await page.context().close();
});

test('without script: another week, a what-if', async () => {
  const url = Object.values(server.urls)[0];
  const page = await open(url + '/light?week=15', 390, { javaScriptEnabled: false });
  await page.getByLabel('Hour of the day').fill('8');
  await page.getByRole('button', { name: 'Show it so' }).click();
  assert.match(page.url(), /hour=8/);
  assert.match(await page.locator('#drawing .lead').innerText(), /8:00/);
  await page.getByLabel('What to do').selectOption('remove');
  await page.getByRole('button', { name: 'Show the difference' }).click();
  assert.match(await page.locator('#what-if ~ .verdict').innerText(), /^Without /);
  assert.ok(await page.locator('#difference tbody tr').count() > 0);
  await page.context().close();
});

test('without script: a fist up at a bearing, the sun at an hour, both taken back', fixturesOnly, async () => {
  const page = await open(server.urls.north + '/sky/gate-bed', 390, { javaScriptEnabled: false });
  const year = async () => (await page.locator('tr[data-month]').evaluateAll(rs => rs.map(r => r.dataset.hours))).join(' ');
  const before = await year();
  await page.getByLabel('In which direction').selectOption('180');
  await page.getByRole('button', { name: '+ a fist higher' }).click();
  assert.match(await page.locator('.saved').innerText(), /moves up by 10°, about one fist/);
  assert.notEqual(await year(), before);
  assert.ok(await page.locator('.skyline circle.seen').count() > 0);
  await page.getByRole('button', { name: 'Take it back' }).click();
  assert.equal(await year(), before);
  await page.getByRole('radio', { name: 'left here' }).check();
  await page.getByLabel('At what time by the clock').fill('4.30pm');
  await page.getByLabel('On which day').fill('2015-06-21');
  await page.getByRole('button', { name: 'Move the edge there' }).click();
  assert.match(await page.locator('.saved').innerText(), /moves (up|down) by \d+°/);
  assert.notEqual(await year(), before);
  await page.locator('.history summary').first().click();
  await page.getByRole('button', { name: /^Yes, take it back/ }).click();
  assert.equal(await year(), before);
  await page.getByLabel('At what time by the clock').fill('3:00');
  await page.getByRole('button', { name: 'Move the edge there' }).click();
  assert.match(await page.locator('.fault').innerText(), /below the level/);
  assert.equal(await page.getByLabel('At what time by the clock').inputValue(), '3:00');
  await page.context().close();
});

test('a tap on the skyline chooses the direction, and the keyboard does too', fixturesOnly, async () => {
  for (const [name, left] of [['north', 'east'], ['south', 'west']]) {
    const page = await open(server.urls[name] + '/sky/gate-bed', 390);
    const box = await page.locator('.skyline > svg').boundingBox();
    await page.mouse.click(box.x + box.width * 0.3, box.y + box.height * 0.6);
    const words = await page.locator('#bearing option:checked').innerText();
    assert.match(words, new RegExp(left), `${name}: ${words}`);
    const drawn = await page.locator('#here').getAttribute('d');
    await page.keyboard.press('ArrowDown');
    assert.notEqual(await page.locator('#here').getAttribute('d'), drawn);
    assert.deepEqual(page.faults, []);
    await page.context().close();
  }
});

test('paper: black, 14 pt or more, the card on two sheets', async () => {
  for (const [name, url] of Object.entries(server.urls)) {
    for (const [word, path] of paths.slice(0, 2)) {
      const page = await open(url + path, 1000);
      assert.deepEqual(await unprintable(page), [], `${name} ${word}`);
      const pdf = (await page.pdf({ path: join(shots, `${name}-${word}.pdf`), preferCSSPageSize: true })).toString('latin1');
      const sheets = pdf.match(/\/Type\s*\/Page[^s]/g).length;
      if (word === 'sky') assert.ok(sheets <= 2, `${name}: the card takes ${sheets} sheets`);
      await page.context().close();
    }
  }
});
