import { chromium } from 'playwright-core';
const [,, base, ...paths] = process.argv;
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
for (const [w,h] of [[390,844],[1280,900]]) for (const p of paths) {
  const c = await b.newContext({ viewport: { width: w, height: h } }); const page = await c.newPage();
  await page.goto(base + p); await page.screenshot({ path: `/tmp/h/wd/${p.replace(/[^a-z0-9]+/gi,'_').slice(0,40)}-${w}.png`, fullPage: true });
  await c.close();
}
await b.close();
