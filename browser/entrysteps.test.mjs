// Browser tests of every step of describing a garden, by keyboard without
// script, and sent again over a restart: node --test entrysteps.test.mjs
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { firstSpace, Hand, open, root, serve } from './entry.mjs';
import { unfold } from './looks.mjs';

let s, port;
const text = async page => (await page.request.get(`${s.url}/entry/file/garden.yaml`)).text();
// record is the file, and how many entries are kept.
const record = async page => {
  const counts = [...(await (await page.request.get(`${s.url}/safe`)).text()).matchAll(/data-label="Entries kept">(\d+)/g)].map(m => Number(m[1]));
  assert.ok(counts.length, 'the entries are counted');
  return { file: await text(page), entries: counts.reduce((a, b) => a + b) };
};
const main = 'form.form button.main';
before(async () => {
  s = await serve('steps');
  port = Number(new URL(s.url).port);
  const page = await open(s.url);
  await firstSpace(page, new Hand(page));
  await page.goto(`${s.url}/entry/space?kind=raised%20bed`);
  await page.locator('[name=size]').fill('3 m x 1.2 m');
  await page.locator(main).click();
  await page.waitForURL(/entry\/kind/);
  await page.context().close();
});
after(async () => { await s?.stop(); });

// Each step: where it is, what the file says after, how many entries it makes,
// and its pages one after the other: what each says, what is put into which
// field, what is pressed. word makes the rounds differ; file is the garden's.
const step = (path, put, said, more = {}) => ({ path, said, entries: 1, pages: [{ put, press: main }], ...more });
const steps = (word, file) => {
  const n = { a: 5, b: 7, c: 8 }[word];
  const months = readFileSync(join(root, 'demo/south-normals.csv'), 'utf8').replace('12.1', `12.${n}`);
  const list = 'Day,Plant,Where,Number\n2015-03-20,chard,by the wall,2\n2015-03-21,kale,by the wall,3\n';
  // A file is chosen in the first round, its words are pasted in the others.
  const brought = words => (word === 'a' ? { file: words } : { paste: words });
  return [
    step('/entry/person', { name: `Ann ${word}`, reach: '60 cm' }, `name: Ann ${word}`),
    step('/entry/obstacle', { name: `Fence ${word}`, size: '3 m x 10 cm', where: `1 m east, ${n * 4} m north`, height: '2 m' }, `name: Fence ${word}`),
    step('/entry/medium', { name: `heap-${word}`, since: '2014' }, `heap-${word}:`),
    step('/entry/wants', { salad: `${n}` }, `salad: ${n}`),
    step('/entry/tin', { places: `${n * 6}` }, `places: ${n * 6}`),
    step('/entry/copies?id=bag', { count: '1' }, 'name: Bag '),
    step('/entry/space?id=bag', { name: `Tub ${word}`, others: `bay laurel, 1${n} cm across, until October 2016` }, `{name: bay laurel, takes: 1${n} cm across, until: October 2016}`),
    step('/entry/turnover?id=bag', {}, null),
    step('/entry/split?id=raised-bed', { name: `Far end ${word}` }, `name: Far end ${word}`),
    step('/entry/weather', brought(months), `weather: weather-${createHash('sha256').update(months).digest('hex').slice(0, 8)}.csv`),
    step('/entry/file', null, `depth: 3${n} cm   # by a stick, ${word}`, { pages: [
      { put: brought(file.replace(/depth: (25-40|3\d) cm.*/, `depth: 3${n} cm   # by a stick, ${word}`)), press: main },
      { says: RegExp(`Tub .: depth was .*, is 3${n} cm`), put: {}, press: main }] }),
    step('/entry/list', null, null, { entries: 2, pages: [
      { put: brought(list), press: main },
      { says: /2 rows/, put: { 'p-by the wall': 'Raised bed 1' }, press: 'button[value=try]' },
      { says: /All of them read/, put: {}, press: 'button[value=write]' }] }),
    step('/entry/round', null, null, { waits: 'form.taps', pages: [{ says: /Catching up/, put: {}, press: 'form.taps button[value="not done"]' }] }),
    ...(word === 'b' ? [step('/entry/ending?id=bag-2', {}, 'ended:')] : []),
  ];
};
const stepsOf = async (word, page) => steps(word, await text(page)).map((one, i) => [i, one.path]);
const now = async (word, i, page) => steps(word, await text(page))[i];

const loaded = async (page, act) => { const moved = page.waitForEvent('load'); await act(); await moved; };
const press = page => what => loaded(page, () => page.locator(what).first().click());
const says = async (page, one) => { if (one.says) assert.match(await page.locator('main').innerText(), one.says); };
const fill = async (page, one) => {
  await says(page, one);
  await unfold(page);
  for (const [name, value] of Object.entries(one.put)) {
    const field = page.locator(`form.form [name="${name}"]`);
    if (await field.evaluate(e => e.tagName === 'SELECT')) await field.selectOption({ label: value });
    else await field.fill(value);
  }
};
// first opens a step's first page; the round has a form once a plan has the space.
const first = async (page, one) => {
  await page.goto(s.url + one.path);
  for (let i = 0; one.waits && !(await page.locator(one.waits).count()); i++) {
    assert.ok(i < 120, `${one.path} has no ${one.waits}`);
    await page.waitForTimeout(500);
    await page.goto(s.url + one.path);
  }
};
// to goes through a step's pages up to one, filling what comes before it.
const to = async (page, one, upto) => {
  await first(page, one);
  for (const p of one.pages.slice(0, upto)) { await fill(page, p); await press(page)(p.press); }
};
const keptOnce = (was, is, one) => {
  assert.equal(is.entries - was.entries, one.entries, `${one.path}: entries`);
  if (one.said) assert.ok(is.file.includes(one.said), `${one.path}: the file says ${one.said}`);
};

test('every step by keyboard alone and without script', async () => {
  const page = await open(`${s.url}/entry`, { javaScriptEnabled: false });
  const tabTo = async (is, what) => {
    for (let i = 0; i < 120; i++) {
      await page.keyboard.press('Tab');
      // Without script the page runs nothing of its own; the test may still look.
      if (await page.evaluate(is, what)) return;
    }
    assert.fail(`${what} is not reached`);
  };
  const enter = () => loaded(page, () => page.keyboard.press('Enter'));
  const type = async (name, value) => {
    await tabTo(n => document.activeElement?.name === n, name);
    if (name === 'file') { // what chooses it is the phone's own
      await page.locator(':focus').setInputFiles({ name: 'brought.txt', mimeType: 'text/plain', buffer: Buffer.from(value) });
      return;
    }
    await page.keyboard.press('Control+A');
    await page.keyboard.type(value);
  };
  for (const [i] of await stepsOf('a', page)) {
    const one = await now('a', i, page);
    const was = await record(page);
    await first(page, one);
    for (const p of one.pages) {
      await says(page, p);
      const shut = page.locator('form.form details:not([open], [hidden], .odd) > summary');
      while (await shut.count()) { await shut.first().focus(); await page.keyboard.press('Enter'); }
      await page.locator('h1').click();
      for (const [name, value] of Object.entries(p.put)) await type(name, value);
      await tabTo(b => document.activeElement?.matches(b), p.press);
      assert.notEqual(await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), 'none', `${one.path}: the focus is seen`);
      await enter();
      assert.deepEqual(await page.locator('.fault, .problem').allInnerTexts(), [], one.path);
    }
    keptOnce(was, await record(page), one);
  }
  // On the plan: north, a turn, and the walk, by keys.
  for (const [way, said] of [['north', /north: 6 in/], ['right', /turn: 15 degrees/]]) {
    await page.goto(`${s.url}/entry/plan?space=bag`);
    await tabTo(d => document.activeElement?.closest('form')?.elements.do?.value === d && document.activeElement.type === 'submit', way);
    await enter();
    assert.match(await text(page), said);
  }
  await page.context().close();
});

test('every step sent twice, and again after a restart, is kept once', async () => {
  const page = await open(`${s.url}/entry`);
  const headers = { 'Sec-Fetch-Site': 'same-origin' };
  const sent = [];
  const send = async f => {
    const body = f.files ? { multipart: Object.fromEntries(f.words) } : { data: new URLSearchParams(f.words).toString() };
    const kind = f.files ? {} : { 'Content-Type': 'application/x-www-form-urlencoded' };
    return (await page.request.post(f.action, { headers: { ...headers, ...kind }, ...body, maxRedirects: 0 })).status();
  };
  for (const [i, path] of await stepsOf('b', page)) {
    const one = await now('b', i, page);
    const last = one.pages.at(-1);
    const was = await record(page);
    await to(page, one, one.pages.length - 1);
    await fill(page, last);
    const f = await page.locator(last.press).first().evaluate(b => ({ action: b.form.action, files: b.form.enctype.startsWith('multipart'),
      words: [...new FormData(b.form, b)].filter(([, v]) => typeof v === 'string') }));
    sent.push([path, f]);
    assert.equal(await send(f), 303, path);
    const is = await record(page);
    keptOnce(was, is, one);
    assert.equal(await send(f), 303, path);
    assert.deepEqual(await record(page), is, `${path}: sent twice, kept once`);
  }
  const is = await record(page);
  await s.stop();
  s = await serve('steps', port);
  assert.deepEqual(await record(page), is, 'a restart keeps all of it');
  for (const [path, f] of sent) {
    assert.ok([303, 409, 422, 404].includes(await send(f)), path);
    assert.deepEqual(await record(page), is, `${path}: sent again after a restart, kept once`);
  }
  await page.context().close();
});

test('at every step the connection lost gives back what was typed, and the back button doubles nothing', async () => {
  const page = await open(`${s.url}/entry`);
  for (const [i, path] of await stepsOf('c', page)) {
    const one = await now('c', i, page);
    const was = await record(page);
    for (const [k, p] of one.pages.entries()) {
      await to(page, one, k);
      await fill(page, p);
      await page.context().setOffline(true);
      await page.locator(p.press).first().click({ noWaitAfter: true }).catch(() => {});
      await page.waitForTimeout(300);
      await page.context().setOffline(false);
      assert.deepEqual(await record(page), was, `${path}: nothing went without a connection`);
    }
    await first(page, one);
    for (const p of one.pages) {
      await says(page, p);
      for (const [name, value] of Object.entries(p.put)) {
        const shown = await page.locator(`form.form [name="${name}"]`).evaluate(e => e.selectedOptions?.[0].text ?? e.value);
        assert.equal(shown, value, `${path}: ${name} is as it was typed`);
      }
      await press(page)(p.press);
    }
    const is = await record(page);
    keptOnce(was, is, one);
    await page.goto(s.url + path);
    assert.equal(await page.getByText('What you typed here before is back').count(), 0, `${path}: what was kept is not offered again`);
    await page.goBack();
    await page.goBack();
    await page.goForward();
    assert.deepEqual(await record(page), is, `${path}: there and back, kept once`);
  }
  await page.context().close();
});
