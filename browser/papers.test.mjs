// Browser tests of the table and the papers: node --test papers.test.mjs
// Serves the fixtures, or tests BEDWEEK_URL, like test.mjs.
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { after, before, test } from 'node:test';
import { axeFaults, large, launch, opener, shots, small, unfold, wide } from './looks.mjs';
import { start } from './server.mjs';


let server, browser, spaces;
const paths = () => [['table', '/table'], ['papers', '/papers'], ['order', '/order'], ['kitchen', '/kitchen'], ['turnovers', '/turnover'], ['turnover', `/turnover/${spaces[2]}`],
  ['years', '/year'], ['year', `/year/${spaces[2]}`], ['teach', '/teach']];

before(async () => {
  server = await start();
  browser = await launch();
  const page = await open(Object.values(server.urls)[0] + '/turnover', 1280);
  spaces = await page.locator('.list a').evaluateAll(as => as.map(a => a.getAttribute('href').split('/').pop()));
  assert.ok(spaces.length > 3, `spaces with a turnover: ${spaces}`);
  await page.context().close();
});

after(async () => {
  await browser?.close();
  server?.stop();
});

const open = opener(() => browser);

// An empty garden has no page for a space.
const has = (name, word) => name !== 'empty' || !['turnover', 'year'].includes(word);

for (const width of [320, 390, 1280]) {
  test(`every paper at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [name, url] of Object.entries(server.urls)) {
      for (const [word, path] of paths()) {
        if (!has(name, word) || (width !== 390 && name === 'empty')) continue;
        const page = await open(url + path, width);
        const where = `${name} ${word}`;
        assert.equal(page.status, 200, where);
        await unfold(page);
        assert.deepEqual(await wide(page), [], `${where}: sticks out`);
        assert.deepEqual(await small(page), [], `${where}: too small`);
        if (width === 320) { // and with text twice as large
          await page.evaluate(() => { const s = new CSSStyleSheet(); s.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [s]; });
          assert.deepEqual(await wide(page), [], `${where}: sticks out at 200 %`);
        } else if (name !== 'empty') {
          assert.deepEqual(await axeFaults(page), [], where);
        }
        assert.deepEqual(page.faults, [], where);
        assert.equal(await page.locator('main em').count(), 0, where);
        if (width === 390 && name === Object.keys(server.urls)[0]) await page.screenshot({ path: join(shots, `${name}-${word}-390.png`), fullPage: true });
        await page.context().close();
      }
    }
  });
}

// sheets prints a page and counts its sheets.
async function sheets(page, format, file) {
  const pdf = await page.pdf({ format, preferCSSPageSize: false, landscape: await landscape(page), path: file });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g).length;
}

// A browser turns the paper when the page asks; the printing used here does not.
const landscape = page => page.evaluate(() => [...document.styleSheets].some(s => [...s.cssRules].some(r =>
  r instanceof CSSMediaRule && [...r.cssRules].some(p => p instanceof CSSPageRule && p.style.size === 'landscape'))));

test('each paper prints on its sheets, A4 and Letter, in letters of 14 pt or more', async () => {
  const [name, url] = Object.entries(server.urls)[0];
  for (const [word, path, most] of [['kitchen', '/kitchen', 1], ['turnover', `/turnover/${spaces[0]}`, 1], ['year', `/year/${spaces[2]}`, 1], ['years', '/year', 3], ['away', '/away?days=10', 1], ['order', '/order', 4], ['teach', '/teach', 9]]) {
    const page = await open(url + path, 800);
    for (const format of ['A4', 'Letter']) {
      const n = await sheets(page, format, join(shots, `${name}-${word}-${format}.pdf`));
      assert.ok(n >= 1 && n <= most, `${word} on ${format}: ${n} sheets, want ${most} at most`);
    }
    await page.emulateMedia({ media: 'print' });
    if (word === 'years') { // on the narrower sheet, Letter lying down, less its margins
      await page.setViewportSize({ width: 950, height: 700 });
      const letters = await page.$$eval('svg.wholeyear text', es => es.map(e => parseFloat(getComputedStyle(e).fontSize) * e.getScreenCTM().a * 0.75));
      assert.ok(letters.length > 40 && Math.min(...letters) >= 7, `${letters.length} letters, the smallest of ${Math.min(...letters)} pt`);
      await page.setViewportSize({ width: 800, height: 900 });
    }
    const tiny = await page.evaluate(() => [...document.querySelectorAll('body *')]
      .filter(e => e.checkVisibility() && !e.closest('svg') && [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()))
      .filter(e => parseFloat(getComputedStyle(e).fontSize) < 18.6) // 14 pt = 18.67 px
      .map(e => `${e.tagName}.${e.className} ${getComputedStyle(e).fontSize}`));
    assert.deepEqual(tiny, [], word);
    const ink = await page.evaluate(() => [...new Set([...document.querySelectorAll('body *')].filter(e => e.checkVisibility()).map(e => getComputedStyle(e).color))]);
    assert.deepEqual(ink, ['rgb(0, 0, 0)'], `${word}: black only`);
    if (['turnover', 'order'].includes(word)) assert.ok(await page.locator('.tick:visible').count() > 2, `${word}: boxes to tick`);
    assert.match(await page.locator('.foot').textContent(), word.startsWith('year') ? /Printed on / : /Printed on .* good until /);
    await page.context().close();
  }
});

test('the cloth and its table say the same, drawn in a browser', async () => {
  const page = await open(Object.values(server.urls)[0] + '/table', 390);
  const wrong = await page.evaluate(() => {
    const out = [];
    let seen = 0;
    for (const food of document.querySelectorAll('section.food')) {
      const weft = food.querySelector('.weft');
      if (!weft) continue;
      const rows = [...food.querySelectorAll('tr[data-enough]')].map(tr => [+tr.dataset.enough, +tr.dataset.much, !tr.textContent.includes('not wanted')]);
      const runs = p => [...p.getAttribute('d').matchAll(/M([\d.]+) ([\d.]+)H([\d.]+)/g)].map(m => [+m[1], +m[3]]);
      const [below, above] = [runs(weft), runs(food.querySelector('.ridge'))];
      rows.forEach(([enough, much, wanted], w) => {
        if (!wanted) return;
        const x = (w + 0.5) * 366 / rows.length;
        const at = rs => rs.filter(([a, b]) => a <= x && x < b).length;
        seen++;
        if (at(below) !== enough || at(above) !== much) out.push(`${food.querySelector('h2').textContent} week ${w}: ${at(below)}/${at(above)} drawn, ${enough}/${much} in the table`);
      });
    }
    return { out: out.slice(0, 5), seen };
  });
  assert.deepEqual(wrong.out, []);
  assert.ok(wrong.seen > 100, `${wrong.seen} weeks`);
  await page.context().close();
});

test('a hole leads to what mends it, by keyboard', async () => {
  const page = await open(Object.values(server.urls)[0] + '/table', 390);
  await page.locator('.holes summary').first().focus();
  await page.keyboard.press('Enter');
  const mend = page.locator('.holes details[open] .mends li').first();
  assert.match(await mend.textContent(), /week/);
  assert.match(await mend.textContent(), /of 20/);
  await page.context().close();
});

// The lesson is opened from the disk by a browser without a network, and asks
// for nothing.
test('the lesson opens from disk with the network off', async () => {
  const [name, url] = Object.entries(server.urls).find(([n]) => n !== 'empty');
  const folder = mkdtempSync(join(tmpdir(), 'lesson-'));
  const file = join(folder, 'bedweek-lesson.html');
  writeFileSync(file, await (await fetch(url + '/teach/bedweek-lesson.html')).text());
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, offline: true });
  const page = await context.newPage();
  const asked = [];
  page.on('request', r => asked.push(r.url()));
  page.on('console', m => { if (m.type() === 'error') asked.push(m.text()); });
  await page.goto(pathToFileURL(file).href);
  assert.deepEqual(asked, [pathToFileURL(file).href], name);
  assert.ok((await page.locator('h1').textContent()).includes('reasons and sources'));
  assert.equal(await page.evaluate(() => getComputedStyle(document.querySelector('h2')).borderTopWidth), '4px', 'its style is in it');
  assert.deepEqual(await wide(page), []);
  await context.close();
  rmSync(folder, { recursive: true });
});
