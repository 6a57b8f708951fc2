// Starts what the tests look at: the address in BEDWEEK_URL when given, or else
// the fixtures of internal/web, built by `go test -c`; or the program itself.
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const root = new URL('..', import.meta.url).pathname;

// start returns the addresses by name, and how to stop; fixture is the test that
// serves them, three addresses in all.
export async function start(fixture = 'TestServeFixture') {
  if (process.env.BEDWEEK_URL) {
    return { urls: { given: process.env.BEDWEEK_URL.replace(/\/$/, '') }, stop() {} };
  }
  const folder = mkdtempSync(join(tmpdir(), 'pages-'));
  const program = join(folder, 'pages.test');
  execFileSync('go', ['test', '-c', '-o', program, './internal/web'], { cwd: root, stdio: 'inherit' });
  const child = spawn(program, ['-test.run', `^${fixture}$`, '-serve', '127.0.0.1'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const urls = await new Promise((resolve, reject) => {
    const found = {};
    let text = '';
    child.on('exit', code => reject(new Error(`the pages ended early: ${code}`)));
    child.stdout.on('data', data => {
      text += data;
      for (const m of text.matchAll(/serving (\w+) (http:\S+)/g)) found[m[1]] = m[2];
      if (Object.keys(found).length === 3) resolve(found);
    });
  });
  return { urls, stop() { child.stdin.end(); rmSync(folder, { recursive: true, force: true }); } };
}

// built names the program: BEDWEEK_BIN, or else built into a folder.
export function built(folder) {
  if (process.env.BEDWEEK_BIN) return process.env.BEDWEEK_BIN;
  const program = join(folder, 'bedweek');
  execFileSync('go', ['build', '-o', program, './cmd/bedweek'], { cwd: root, stdio: 'inherit' });
  return program;
}

// run starts the program and, once its plan is whole or its record does not
// open (or it has said what ready matches), returns its address and how to
// stop. args is given a folder of its own, which is gone after stop.
export async function run(args, ready = /the plan is whole|The page there says what you can do/) {
  const folder = mkdtempSync(join(tmpdir(), 'bedweek-'));
  const child = spawn(built(folder), args(folder), { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  const url = await new Promise((yes, no) => {
    let text = '';
    const hear = d => { text += d; const m = text.match(/http:\/\/127\.0\.0\.1:\d+/); if (m && ready.test(text)) yes(m[0]); };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('exit', code => no(new Error(`the program ended early: ${code}\n${text}`)));
  });
  const stop = async () => {
    child.removeAllListeners('exit');
    const gone = new Promise(yes => child.once('close', yes));
    child.kill('SIGTERM');
    await gone;
    rmSync(folder, { recursive: true, force: true });
  };
  return { url, stop };
}
