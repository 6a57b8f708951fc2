// Browser tests of the pages: node --test test.mjs
// Needs chromium (path in CHROMIUM, else /usr/bin/chromium) and `npm ci`.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, describe, test } from 'node:test';
import { large, launch, opener, shots, sound, unprintable, wide } from './looks.mjs';
import { start } from './server.mjs';


let server, browser, pages = {};

before(async () => {
  server = await start();
  browser = await launch('MAP garden.test 127.0.0.1, ');
  for (const [name, url] of Object.entries(server.urls)) pages[name] = await pagesOf(url);
});

after(async () => {
  await browser?.close();
  server?.stop();
});

// The menu's pages, one space, its forms, and one task's page.
async function pagesOf(url) {
  const page = await open(url, 1280);
  const space = await page.evaluate(() => document.querySelector('.spaces a')?.getAttribute('href'));
  const task = await page.evaluate(() => document.querySelector('input[name=task]')?.value);
  await page.context().close();
  const list = [['today', '/'], ['lines', '/lines'], ['keep', '/keep'], ['table', '/table'], ['plan', '/plan'], ['safe', '/safe'], ['nowhere', '/nowhere']];
  if (space) list.push(['space', space], ['sown', `${space}/note/sown`], ['picked', `${space}/note/picked`], ['looked', `${space}/note/looked`]);
  if (task) list.push(['look', `/look?task=${encodeURIComponent(task)}`]);
  return list;
}

const open = opener(() => browser, () => '', /status of 404/);

for (const width of [390, 1280]) {
  test(`every page at ${width} px: no sideways scroll, nothing for axe, targets of 44 px`, async t => {
    for (const [name, list] of Object.entries(pages)) {
      for (const [word, path] of list) {
        await t.test(`${name} ${word}`, async () => {
          const page = await open(server.urls[name] + path, width);
          await sound(page, word);
          assert.equal(await page.locator('script:not([src^="/assets/"])').count(), 0, 'typed markup became script');
          await page.reload();
          await page.screenshot({ path: join(shots, `${name}-${word}-${width}.png`), fullPage: true });
          await page.context().close();
        });
      }
    }
  });
}

test('every page at 320 px with text twice as large: no sideways scroll', async () => {
  for (const [name, list] of Object.entries(pages)) {
    for (const [word, path] of list) {
      const page = await open(server.urls[name] + path, 320);
      await large(page);
      assert.deepEqual(await wide(page), [], `${name} ${word}`);
      await page.context().close();
    }
  }
});

test('every page of the menu by keyboard in at most 12 steps, with the focus seen', async () => {
  const url = Object.values(server.urls)[0];
  const page = await open(url, 1280);
  const hrefs = await page.evaluate(() => [...document.querySelectorAll('.menu a')].map(a => a.getAttribute('href')));
  assert.equal(hrefs.length, process.env.BEDWEEK_URL ? 8 : 6); // a running program also keeps seeds and describes its garden
  for (const href of hrefs) {
    await page.goto(url);
    let steps = 0;
    for (;;) {
      await page.keyboard.press('Tab');
      assert.ok(++steps <= 12, `${href} is not reached in 12 steps`);
      const at = await page.evaluate(() => {
        const e = document.activeElement, s = getComputedStyle(e);
        return { href: e.getAttribute('href'), seen: s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 };
      });
      assert.ok(at.seen, `focus is not seen at step ${steps}`);
      if (at.href === href) break;
    }
    await page.keyboard.press('Enter');
    await page.waitForURL(new URL(href, url).href);
    assert.equal(await page.locator('.menu a[aria-current=page]').getAttribute('href'), href);
  }
  await page.goto(url);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  assert.equal(await page.evaluate(() => document.activeElement.id), 'main', 'the skip link leads to the page');
  await page.context().close();
});

test('nothing focused on a phone lies under the menu', async () => {
  const page = await open(Object.values(server.urls)[0], 390);
  for (let i = 0; i < 40; i++) {
    await page.keyboard.press('Tab');
    const hidden = await page.evaluate(() => {
      const e = document.activeElement, menu = document.querySelector('.menu');
      if (e === document.body || menu.contains(e)) return '';
      const r = e.getBoundingClientRect(), m = menu.getBoundingClientRect();
      return r.bottom > m.top + 1 && r.height < m.top ? e.textContent || e.name : '';
    });
    assert.equal(hidden, '', `step ${i}`);
  }
  await page.context().close();
});

// Without script, and by a name over plain http, where a browser sends no
// Sec-Fetch-Site: forms must work all the same.
for (const by of ['127.0.0.1', 'garden.test']) {
  test(`without script, by ${by}: answer a task, take it back, note with a slip`, { skip: process.env.BEDWEEK_URL ? 'writes; fixtures only' : false }, async () => {
    const url = server.urls.rich.replace('127.0.0.1', by);
    const page = await open(url, 390, { javaScriptEnabled: false });
    await page.locator('.task summary').nth(1).click();
    await page.locator('.task').nth(1).getByRole('button', { name: 'Did it' }).click();
    assert.match(await page.locator('.saved').innerText(), /Saved: sow garlic\./);
    await page.screenshot({ path: join(shots, 'saved-390.png') });
    await page.getByRole('button', { name: 'Take it back' }).click();
    assert.match(await page.locator('.saved').innerText(), /Taken back/);
    await page.goto(`${url}/space/gate-bed/note/counted`);
    await page.getByLabel('How many stand there').fill('many');
    await page.getByRole('button', { name: 'Save' }).click();
    assert.match(await page.locator('.fault').innerText(), /whole number/);
    assert.equal(await page.getByLabel('How many stand there').inputValue(), 'many');
    await page.screenshot({ path: join(shots, 'slip-390.png'), fullPage: true });
    await page.getByLabel('How many stand there').fill('7');
    await page.getByRole('button', { name: 'Save' }).click();
    assert.match(await page.locator('.saved').innerText(), /Saved: Counted, Gate bed\./);
    await page.goto(`${url}/`);
    await page.locator('.task summary').first().click();
    await page.locator('.task').first().getByRole('button', { name: 'Looks different' }).click();
    assert.equal(await page.locator('h1').innerText(), 'What is different?');
    await page.context().close();
  });
}

describe('paper', () => {
  test('black, 14 pt or more, boxes to tick, no menu, and a PDF of each page', async () => {
    for (const [name, list] of Object.entries(pages)) {
      for (const [word, path] of list.slice(0, 6)) {
        const page = await open(server.urls[name] + path, 1000);
        assert.deepEqual(await unprintable(page), [], `${name} ${word}`);
        const seen = await page.evaluate(() => {
          const boxes = [...document.querySelectorAll('.task, .job:has(> p > .tick), .question')].filter(e => e.checkVisibility());
          return {
            menu: document.querySelector('.menu').checkVisibility(), tasks: boxes.length,
            ticks: boxes.filter(e => e.querySelector('.tick')?.getBoundingClientRect().width > 15).length,
            letters: [...document.querySelectorAll('svg.lines text')].filter(e => e.checkVisibility()).map(e => parseFloat(getComputedStyle(e).fontSize) * e.getScreenCTM().a),
            printed: document.querySelector('.foot').innerText,
          };
        });
        assert.equal(seen.menu, false);
        assert.equal(seen.ticks, seen.tasks);
        if (name === 'rich' && ['today', 'keep'].includes(word)) assert.ok(seen.tasks > 2, `${word}: boxes`);
        assert.deepEqual(seen.letters.filter(px => px < 18.6), [], `${name} ${word}: letters of the picture under 14 pt`);
        if (name === 'rich' && ['lines', 'plan'].includes(word)) assert.ok(seen.letters.length > 20, `${word}: a picture is printed`);
        assert.match(seen.printed, /Printed on [A-Z][a-z]+ \d+ [A-Z][a-z]+ \d+, good until /);
        const pdf = await page.pdf({ path: join(shots, `${name}-${word}.pdf`), preferCSSPageSize: true });
        assert.equal(pdf.subarray(0, 5).toString(), '%PDF-');
        await page.context().close();
      }
    }
  });
});
