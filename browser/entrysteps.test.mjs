// Browser tests of every step of describing a garden, by keyboard without
// script, and sent again over a restart: node --test entrysteps.test.mjs
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { firstSpace, Hand, open, serve } from './entry.mjs';

let s, port;
const text = async page => (await page.request.get(`${s.url}/entry/file/garden.yaml`)).text();
before(async () => {
  s = await serve('steps');
  port = Number(new URL(s.url).port);
  const page = await open(s.url);
  await firstSpace(page, new Hand(page));
  await page.goto(`${s.url}/entry/space?kind=raised%20bed`);
  await page.locator('[name=size]').fill('3 m x 1.2 m');
  await page.locator('form.form button.main').click();
  await page.waitForURL(/entry\/kind/);
  await page.context().close();
});
after(async () => { await s?.stop(); });

// Each step: its page, what is typed into which field, and what the file says
// after. word makes the two rounds of the steps differ.
const steps = word => [
  ['/entry/person', { name: `Ann ${word}`, reach: '60 cm' }, `name: Ann ${word}`],
  ['/entry/obstacle', { name: `Fence ${word}`, size: '3 m x 10 cm', where: `1 m east, ${{ a: 20, b: 24, c: 28 }[word]} m north`, height: '2 m' }, `name: Fence ${word}`],
  ['/entry/medium', { name: `heap-${word}`, since: '2014' }, `heap-${word}:`],
  ['/entry/wants', { salad: { a: '5', b: '7', c: '8' }[word] }, `salad: ${{ a: 5, b: 7, c: 8 }[word]}`],
  ['/entry/tin', { places: { a: '24', b: '36', c: '48' }[word] }, `places: ${{ a: 24, b: 36, c: 48 }[word]}`],
  ['/entry/copies?id=bag', { count: '1' }, 'name: Bag '],
  ['/entry/space?id=bag', { name: `Tub ${word}` }, `name: Tub ${word}`],
  ['/entry/turnover?id=bag', {}, null],
  ['/entry/split?id=raised-bed', { name: `Far end ${word}` }, `name: Far end ${word}`],
  ['/entry/ending?id=bag-2', {}, 'ended:'],
].slice(0, word === 'b' ? 10 : 9);

test('every step by keyboard alone and without script', async () => {
  const page = await open(`${s.url}/entry`, { javaScriptEnabled: false });
  const to = async is => {
    for (let i = 0; i < 120; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(is[0], is[1])) return;
    }
    assert.fail(`${is[1]} is not reached`);
  };
  const enter = async () => { const moved = page.waitForEvent('load'); await page.keyboard.press('Enter'); await moved; };
  // Without script the page runs nothing of its own; the test may still look.
  const field = name => [n => document.activeElement?.name === n, name];
  const button = () => [() => document.activeElement?.matches('form.form button.main'), 'the button'];
  for (const [path, fields, said] of steps('a')) {
    await page.goto(s.url + path);
    const shut = page.locator('form.form details:not([open], [hidden], .odd) > summary');
    while (await shut.count()) { await shut.first().focus(); await page.keyboard.press('Enter'); }
    await page.locator('h1').click();
    for (const [name, value] of Object.entries(fields)) {
      await to(field(name));
      await page.keyboard.press('Control+A');
      await page.keyboard.type(value);
    }
    await to(button());
    assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), 'none', `${path}: the focus is seen`);
    await enter();
    assert.deepEqual(await page.locator('.fault, .problem').allInnerTexts(), [], path);
    if (said) assert.ok((await text(page)).includes(said), `${path}: the file says ${said}`);
  }
  // On the plan: north, a turn, and the walk, by keys.
  for (const [way, said] of [['north', /north: 6 in/], ['right', /turn: 15 degrees/]]) {
    await page.goto(`${s.url}/entry/plan?space=bag`);
    await to([d => document.activeElement?.closest('form')?.elements.do?.value === d && document.activeElement.type === 'submit', way]);
    await enter();
    assert.match(await text(page), said);
  }
  await page.context().close();
});

test('every step sent twice, and again after a restart, is kept once', async () => {
  const page = await open(`${s.url}/entry`);
  const form = { 'Content-Type': 'application/x-www-form-urlencoded', 'Sec-Fetch-Site': 'same-origin' };
  const sent = [];
  const send = async f => (await page.request.post(f.action, { headers: form, data: f.body, maxRedirects: 0 })).status();
  for (const [path, fields, said] of steps('b')) {
    await page.goto(s.url + path);
    await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
    for (const [name, value] of Object.entries(fields)) await page.locator(`form.form [name="${name}"]`).fill(value);
    const f = await page.locator('form.form').first().evaluate(e => ({ action: e.action, body: new URLSearchParams([...new FormData(e)].filter(([, v]) => typeof v === 'string')).toString() }));
    sent.push([path, f]);
    assert.equal(await send(f), 303, path);
    const kept = await text(page);
    if (said) assert.ok(kept.includes(said), `${path}: the file says ${said}`);
    assert.equal(await send(f), 303, path);
    assert.equal(await text(page), kept, `${path}: sent twice, kept once`);
  }
  const kept = await text(page);
  await s.stop();
  s = await serve('steps', port);
  assert.equal(await text(page), kept, 'a restart keeps all of it');
  for (const [path, f] of sent) {
    assert.ok([303, 409, 422, 404].includes(await send(f)), path);
    assert.equal(await text(page), kept, `${path}: sent again after a restart, kept once`);
  }
  await page.context().close();
});

test('at every step the connection lost gives back what was typed, and the back button doubles nothing', async () => {
  const page = await open(`${s.url}/entry`);
  for (const [path, fields, said] of steps('c')) {
    const fill = async () => {
      await page.goto(s.url + path);
      await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
    };
    await fill();
    for (const [name, value] of Object.entries(fields)) await page.locator(`form.form [name="${name}"]`).fill(value);
    const was = await text(page);
    await page.context().setOffline(true);
    await page.locator('form.form button.main').first().click({ noWaitAfter: true }).catch(() => {});
    await page.waitForTimeout(300);
    await page.context().setOffline(false);
    assert.equal(await text(page), was, `${path}: nothing went without a connection`);
    await fill();
    for (const [name, value] of Object.entries(fields)) {
      assert.equal(await page.locator(`form.form [name="${name}"]`).inputValue(), value, `${path}: ${name} is as it was typed`);
    }
    await page.locator('form.form button.main').first().click();
    await page.waitForURL(u => u.href !== s.url + path);
    const kept = await text(page);
    if (said) assert.ok(kept.includes(said), `${path}: the file says ${said}`);
    await page.goBack();
    await page.goForward();
    assert.equal(await text(page), kept, `${path}: there and back, kept once`);
  }
  await page.context().close();
});
