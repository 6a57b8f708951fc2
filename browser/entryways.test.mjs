// Browser tests of the other ways to describe a garden, a finger, a picture, a
// compass, an odd shape, and of the round: node --test entryways.test.mjs
import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { before, after, test } from 'node:test';
import { Hand, firstSpace, folder, open, serve } from './entry.mjs';
import { axeFaults, shots, wide } from './looks.mjs';

let s, page;
before(async () => {
  s = await serve('ways');
  page = await open(s.url);
  await firstSpace(page, new Hand(page));
});
after(async () => { await page?.context().close(); await s?.stop(); });
const text = async () => (await page.request.get(`${s.url}/entry/file/garden.yaml`)).text();
const save = async () => { await page.locator('form.form button.main').click(); await page.waitForLoadState(); };

test('a finger drags a space on the plan; the file says where it stands; Escape and a broken drag leave it', async () => {
  await page.goto(`${s.url}/entry/space?kind=raised%20bed`);
  await page.locator('[name=size]').fill('L 3 m x 2 m, less 1 m x 80 cm');
  await page.locator('[name=where]').fill('4 m east, 2 m north');
  await save();
  await page.goto(`${s.url}/entry/plan?space=raised-bed`);
  const spot = async () => { const b = await page.locator('.grip').boundingBox(); return [b.x + b.width / 2, b.y + b.height / 2]; };
  const perMetre = await page.locator('.from-above').evaluate(e => e.dataset.scale * e.getBoundingClientRect().width / e.viewBox.baseVal.width);
  assert.ok(await page.locator('path[data-space=raised-bed]').count(), 'the L is drawn as an L');
  const before = await text();
  let [x, y] = await spot();
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y, { steps: 4 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  assert.equal(await text(), before, 'Escape leaves it');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + perMetre, y - 2 * perMetre, { steps: 6 });
  assert.match(await page.locator('.drag-says').innerText(), /1\.0 m east, 2\.0 m north/);
  await page.mouse.up();
  await page.waitForURL(/saved=/);
  assert.match(await text(), /east: 5 m\n {4}north: 4 m\n/);
  // By taps it goes back again, and the finger may take another space.
  await page.goto(`${s.url}/entry/plan?space=raised-bed&step=1%20m`);
  for (const way of ['West', 'South', 'South']) { await page.getByRole('button', { name: way, exact: true }).click(); await page.waitForLoadState(); }
  assert.match(await text(), /east: 4 m\n {4}north: 2 m\n/);
  await page.locator('circle[data-space=bag]').first().click();
  await page.waitForURL(/space=bag/);
  await page.screenshot({ path: join(shots, 'entry-drag-390.png'), fullPage: true });
  assert.deepEqual(page.faults, []);
});

test('a picture given with a space is on its page, without what the camera wrote', async () => {
  await page.goto(`${s.url}/entry/space?id=bag`);
  const jpeg = await page.evaluate(() => new Promise(done => {
    const c = document.createElement('canvas');
    [c.width, c.height] = [320, 240];
    c.getContext('2d').fillRect(40, 40, 100, 100);
    c.toBlob(b => b.arrayBuffer().then(a => done([...new Uint8Array(a)])), 'image/jpeg');
  }));
  const exif = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 24]), Buffer.from('Exif\0\0MM\0*secret place'), Buffer.from(jpeg.slice(2))]);
  await page.locator('[name=photo]').setInputFiles({ name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer: exif });
  await save();
  assert.match(await page.locator('.saved').innerText(), /with its picture/);
  for (const at of ['/space/bag', '/entry/space?id=bag', '/space/bag/photos']) {
    await page.goto(s.url + at);
    const img = page.locator('img').first();
    assert.ok(await img.evaluate(e => e.complete && e.naturalWidth > 0), `${at} shows it`);
    const kept = Buffer.from(await (await page.request.get(s.url + (await img.getAttribute('src')))).body());
    assert.ok(!kept.includes('secret'), 'what the camera wrote is gone');
  }
  await page.goto(`${s.url}/entry/space?id=bag`);
  await page.locator('[name=name]').fill('Kale bag');
  await page.locator('[name=photo]').setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') });
  await save();
  assert.match(await page.locator('#f-photo').innerText(), /not a whole JPEG/);
  assert.equal(await page.locator('[name=name]').inputValue(), 'Kale bag', 'nothing typed is lost');
  assert.deepEqual(page.faults, []);
});

test('pointing the phone tells the side, not finer than a compass can; without leave the shadow stays', async () => {
  await page.goto(`${s.url}/entry/space?kind=raised%20bed`);
  await page.locator('[name=where]').fill('9 m east, 2 m north');
  await page.evaluate(() => { document.querySelectorAll('details').forEach(d => { d.open = true; }); });
  await page.locator('[name=supports]').fill('trellis 2 m long, 1.8 m high');
  const says = page.locator('.point .says');
  // Seattle's compass points about 15 degrees east; alpha runs against it.
  const off = Number(await page.locator('.point').getAttribute('data-off'));
  assert.ok(off > 14 && off < 16, `magnetic north lies ${off} degrees east of true north, by the World Magnetic Model`);
  const turn = (heading, beta = 2) => page.evaluate(([alpha, beta]) => dispatchEvent(new DeviceOrientationEvent('deviceorientationabsolute', { alpha, beta, gamma: 1, absolute: true })), [(720 - heading + 15) % 360, beta]);
  const settle = () => page.waitForTimeout(1600);
  await page.getByRole('button', { name: 'Point the phone' }).click();
  await turn(10);
  assert.match(await says.innerText(), /about north: the pole side/);
  await turn(110);
  assert.match(await says.innerText(), /It swings/, 'steel swings it');
  await settle();
  await turn(110);
  assert.match(await says.innerText(), /about east: the east side/);
  await settle();
  await turn(45);
  assert.match(await says.innerText(), /between two sides/);
  assert.ok(!(await page.getByRole('button', { name: 'Write it to what is climbed on' }).isVisible()), 'a side that is not sure is not written');
  await settle();
  await turn(45, 70);
  assert.match(await says.innerText(), /Hold it flat/);
  await settle();
  await turn(-5);
  await page.getByRole('button', { name: 'Write it to what is climbed on' }).click();
  assert.equal(await page.locator('[name=supports]').inputValue(), 'trellis 2 m long, 1.8 m high, pole side');
  await settle();
  await turn(300); // the long side runs from 300 to 120 degrees
  await page.getByRole('button', { name: 'The long side runs this way' }).click();
  assert.equal(await page.locator('[name=where]').inputValue(), '9 m east, 2 m north, turned 30 degrees');
  await save();
  assert.match(await text(), /turn: 30 degrees/);
  assert.match(await text(), /side: pole/);
  // Leave refused, as an iPhone may.
  await page.goto(`${s.url}/entry/space?kind=raised%20bed`);
  await page.evaluate(() => { DeviceOrientationEvent.requestPermission = async () => 'denied'; });
  await page.locator('.point summary').click();
  await page.getByRole('button', { name: 'Point the phone' }).click();
  assert.match(await says.innerText(), /noon shadow tells the same/);
  assert.deepEqual(page.faults, []);
});

test('the new parts: axe, no sideways scroll, 320 px with text twice as large, nothing moves without script', async () => {
  for (const at of ['/entry/plan?space=raised-bed', '/entry/space?kind=raised%20bed', '/entry/space?id=raised-bed', '/space/bag', '/entry/weather', '/entry/months', '/entry/round']) {
    await page.goto(s.url + at);
    await page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));
    assert.deepEqual(await axeFaults(page), [], `${at} axe`);
    assert.deepEqual(await wide(page), [], `${at} sticks out`);
    await page.screenshot({ path: join(shots, `entryways${at.replace(/[^a-z]+/g, '-')}-390.png`), fullPage: true });
    await page.setViewportSize({ width: 320, height: 640 });
    await page.evaluate(() => { const c = new CSSStyleSheet(); c.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [c]; });
    assert.deepEqual(await wide(page), [], `${at} at 320 px sticks out`);
    await page.setViewportSize({ width: 390, height: 844 });
  }
  const plain = await open(`${s.url}/entry/plan?space=raised-bed`, { javaScriptEnabled: false });
  assert.ok(!(await plain.locator('.drag-says').isVisible()), 'nothing is promised without script');
  await plain.getByRole('button', { name: 'North', exact: true }).click();
  await plain.goto(`${s.url}/entry/space?kind=raised%20bed`);
  assert.ok(!(await plain.locator('.point').isVisible()));
  await plain.context().close();
});

test('after five weeks away the round asks by the plan that stood, and what is taken for granted is marked', async () => {
  let t = await serve('away');
  const p = await open(t.url);
  await firstSpace(p, new Hand(p));
  await p.goto(`${t.url}/entry/space?kind=raised%20bed`);
  await p.locator('[name=size]').fill('3 m x 1.2 m');
  await p.locator('form.form button.main').click();
  await p.waitForURL(/entry\/kind/);
  const plans = join(folder, 'away', 'plans.json');
  for (let i = 0; i < 240 && !(existsSync(plans) && /"raised-bed"/.test(readFileSync(plans, 'utf8'))); i++) await p.waitForTimeout(500); // a plan of both spaces
  for (let i = 0; i < 120 && /being worked out/.test(await (await p.request.get(`${t.url}/entry`)).text()); i++) await p.waitForTimeout(500); // and the full one
  await p.goto('about:blank'); // what it still loads is not cut off
  await t.stop();
  t = await serve('away', 0, '2015-05-11');
  await p.goto(`${t.url}/entry/round`);
  const says = await p.locator('main').innerText();
  assert.match(says, /The last note is of 6 April 2015/);
  assert.match(says, /by the plan of 6 April 2015/);
  assert.match(says, /week of (6|13|20|27) April|week of 4 May/, 'what was wanted in between is asked');
  await p.screenshot({ path: join(shots, 'entry-round-390.png'), fullPage: true });
  const bed = p.locator('li', { has: p.getByRole('heading', { name: 'Raised bed 1' }) });
  await bed.getByRole('button', { name: 'As planned' }).click();
  await p.waitForLoadState();
  assert.match(await p.locator('.saved').innerText(), /taken as done, marked as assumed/);
  assert.match(await bed.innerText(), /Said: as planned/);
  await p.goto(`${t.url}/space/raised-bed`);
  assert.match(await p.locator('#history ~ *').allInnerTexts().then(x => x.join(' ')), /(April|May) 2015:[^]*Assumed: nobody wrote it down/);
  // Half the round is done: the other space is still asked by the same plan on the next day.
  await p.goto('about:blank');
  await t.stop();
  t = await serve('away', 0, '2015-05-12');
  await p.goto(`${t.url}/entry/round`);
  assert.match(await p.locator('main').innerText(), /by the plan of 6 April 2015/);
  assert.match(await p.locator('main').innerText(), /1 of 2 said/);
  assert.deepEqual(p.faults, []);
  await p.context().close();
  await t.stop();
});
