// Notes written without a signal wait in this browser and go home by
// themselves. Forms work without this script too: then they need a signal.
const KEEP_SENT = 60 * 24 * 3600 * 1000; // kept after sending, for a restore at home
const BATCH = 50;
const DAY = 24 * 3600 * 1000;
const MB = 1 << 20;
const HOLDS = 50 * MB; // pictures and sounds kept here at most, together
const LARGEST = { photo: 16 * MB, voice: 10 * MB }; // as the program takes them

// The store: "notes" by form id, "meta" for a few words.
const opened = new Promise((yes, no) => {
  const ask = indexedDB.open('bedweek', 1);
  ask.onupgradeneeded = () => {
    ask.result.createObjectStore('notes', { keyPath: 'form' });
    ask.result.createObjectStore('meta');
  };
  ask.onsuccess = () => yes(ask.result);
  ask.onerror = () => no(ask.error);
});

// act runs one transaction and answers when the browser has it on its disk.
async function act(store, mode, work) {
  const db = await opened;
  return new Promise((yes, no) => {
    const t = db.transaction(store, mode, { durability: 'strict' });
    const ask = work(t.objectStore(store));
    t.oncomplete = () => yes(ask?.result);
    t.onabort = t.onerror = () => no(t.error);
  });
}
const add = note => act('notes', 'readwrite', s => s.add(note)); // never over another
const put = note => act('notes', 'readwrite', s => s.put(note));
const drop = form => act('notes', 'readwrite', s => s.delete(form));
const notes = async () => (await act('notes', 'readonly', s => s.getAll())).sort((a, b) => a.at - b.at || (a.form < b.form ? -1 : 1));
const meta = key => act('meta', 'readonly', s => s.get(key));
const setMeta = (key, value) => act('meta', 'readwrite', s => s.put(value, key));
const waiting = async () => (await notes()).filter(n => !n.sent);

// newID is 26 signs of base 32, as the program's own.
function newID() {
  const bytes = crypto.getRandomValues(new Uint8Array(26));
  return Array.from(bytes, b => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'[b & 31]).join('');
}

const plural = (n, one, many) => `${n} ${n === 1 ? one : many}`;

// say shows one line at the head of the page.
function say(words, kind) {
  let box = document.getElementById(kind);
  if (!words) { box?.remove(); return; }
  if (!box) {
    box = document.createElement('p');
    box.id = kind;
    box.className = 'problem';
    box.setAttribute('role', 'status');
    document.getElementById('main').prepend(box);
  }
  box.textContent = words;
}

// tell says how many notes wait, on every page.
async function tell() {
  const list = await waiting();
  let words = '';
  if (list.length) {
    words = `${plural(list.length, 'note waits', 'notes wait')} on this device to go home.`;
    if (Date.now() - list[0].at > 3 * DAY) words += ' The oldest is over 3 days old. Bring this device home.';
  }
  say(words, 'held');
  const count = document.getElementById('held-count');
  if (count) {
    count.textContent = words || 'Nothing waits on this device. Everything is home.';
    document.getElementById('waiting').replaceChildren(...list.map(line));
  }
  return list;
}

function line(n) {
  const li = document.createElement('li');
  const what = Object.entries(n.fields).filter(([k, v]) => v && k !== 'form').map(([k, v]) => `${k}: ${v instanceof Blob ? `${(v.size / MB).toFixed(1)} MB` : v}`).join(', ');
  li.textContent = `${n.path === '/task' ? 'list' : n.path.split('/').slice(n.whole ? 1 : 2).join(' ')} – ${what}${n.words ? `. ${n.words}` : ''}`;
  if (n.refused) {
    const b = document.createElement('button');
    b.type = 'button';
    b.textContent = 'Throw this one away';
    b.onclick = async () => { await drop(n.form); tell(); };
    li.append(' ', b);
  }
  return li;
}

// files are the pictures and sounds of a form.
const files = fields => Object.entries(fields).filter(([, v]) => v instanceof Blob && v.size);

// tooLarge says why the files of a form cannot wait here, '' = they can.
async function tooLarge(fields) {
  let all = 0;
  for (const [name, file] of files(fields)) {
    all += file.size;
    if (file.size > (LARGEST[name] ?? 0)) return `This file has ${Math.ceil(file.size / MB)} MB. At most ${LARGEST[name] / MB} can be taken.`;
  }
  for (const n of await waiting()) for (const [, file] of files(n.fields)) all += file.size;
  return all > HOLDS ? `Pictures and sounds of ${HOLDS / MB} MB wait here already. This one is not kept. Bring this device home first.` : '';
}

// carry sends one form as it is: a picture, a sound or a hand-over. The program
// takes it once, however often it is sent. Files sent are let go.
async function carry(n) {
  const body = files(n.fields).length ? new FormData() : new URLSearchParams();
  for (const [k, v] of Object.entries({ ...n.fields, form: n.form })) body.append(k, v);
  const answer = await fetch(n.path, { method: 'POST', body, headers: { 'Bedweek-Held': 'yes' }, signal: AbortSignal.timeout(120000) });
  if (answer.status >= 500) throw new Error(`status ${answer.status}`);
  if (answer.redirected || answer.status === 409) { // 409: it was kept before
    landed.set(n.form, answer.redirected ? answer.url : n.path);
    return files(n.fields).length ? drop(n.form) : put({ ...n, sent: true, refused: false, words: '' });
  }
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  return put({ ...n, refused: true, words: (page.querySelector('.fault, main p') ?? page.body).textContent.trim().slice(0, 300) });
}
const landed = new Map(); // where the program led to, by form

// ask sends JSON and gives the answer, or throws when there is none.
async function ask(body) {
  const answer = await fetch('/sync', {
    method: body ? 'POST' : 'GET', cache: 'no-store', redirect: 'error', signal: AbortSignal.timeout(15000),
    ...(body && { headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`status ${answer.status}`);
  return answer.json();
}

// greet compares the record's epoch with the last one seen. After a restore
// at home everything still kept here is sent again.
async function greet(state) {
  const seen = await meta('epoch');
  if (seen !== undefined && seen !== state.epoch) {
    for (const n of await notes()) await put({ ...n, sent: false, refused: false });
    say('The record at home was put back to a backup. This device sends again what it still has.', 'epoch');
  }
  await setMeta('epoch', state.epoch);
  await setMeta('device', state.device);
  if (seen === undefined && state.waiting > 0) {
    say(`This device held ${plural(state.waiting, 'note', 'notes')} when last heard of, and holds none now. The browser threw them away. Write them again.`, 'lost');
  }
}

let sending;
// send brings everything home, in order. It may be called at any time.
function send() {
  sending ??= (async () => {
    try {
      await greet(await ask());
      for (;;) {
        const list = (await waiting()).filter(n => !n.refused);
        const all = await waiting();
        const whole = list.findIndex(n => n.whole);
        const batch = list.slice(0, Math.min(BATCH, whole < 0 ? BATCH : whole));
        const answer = await ask({
          epoch: await meta('epoch'), waiting: all.length, oldest: all[0]?.at ?? Date.now(), clock: Date.now(),
          entries: batch.map(({ form, path, fields, stamped }) => ({ form, path, fields, stamped })),
        });
        if (answer.words) say(answer.words, 'clock');
        let kept = 0;
        for (const r of answer.results) {
          const n = batch.find(x => x.form === r.form);
          if (r.kept) { kept++; await put({ ...n, sent: true, refused: false, words: '' }); }
          else await put({ ...n, refused: !r.again, words: r.words });
        }
        if (whole === 0) { await carry(list[0]); continue; }
        if (!batch.length || !kept || list.length <= batch.length) break;
      }
      for (const n of await notes()) if (n.sent && Date.now() - n.at > KEEP_SENT) await drop(n.form);
      return true;
    } catch {
      return false;
    } finally {
      sending = undefined;
      await tell();
    }
  })();
  return sending;
}

// Notes go home as words, many at once; pictures, sounds and hand-overs each as
// the form they are.
const goesWhole = form => /^\/(photo|voice)$|^\/plant\/[^/]+\/move\/[^/]+$/.test(new URL(form.action).pathname);
const isNote = form => goesWhole(form) || /^\/space\/[^/]+\/note\/[^/]+$|^\/task$/.test(new URL(form.action).pathname);

// filled is a form with the button that was pressed, which FormData alone leaves out.
function filled(form, button) {
  const data = new FormData(form);
  if (button?.name) data.set(button.name, button.value);
  return data;
}

// after is the page a note leads to: the next stop, or where it began. What came
// home is told there, with a way to take it back.
function after(form, note) {
  if (note.whole) return landed.get(note.form);
  const to = onward(form, note);
  return note.sent ? `${to}${to.includes('?') ? '&' : '?'}saved=${note.form}` : to;
}
function onward(form, note) {
  if (form.dataset.next) return note.fields.answer?.startsWith('did') && note.sent ? form.dataset.here : form.dataset.next;
  return note.fields.back || note.path.replace(/\/note\/.*$/, '');
}

// hold keeps a note here first, then tries to send it.
async function hold(form, button) {
  const fields = Object.fromEntries(filled(form, button));
  const id = fields.form, whole = goesWhole(form);
  const why = await tooLarge(fields);
  if (why) { say(why, 'kept'); return; }
  if (whole && form.querySelector('input[type=file]') && !files(fields).length) { plainly(form, button); return; }
  delete fields.form;
  const stamped = form.dataset.stamped === 'yes' && fields.day === form.dataset.day;
  await add({ form: id, path: new URL(form.action).pathname, fields, stamped, whole, at: Date.now(), sent: false });
  const own = async () => (await notes()).find(n => n.form === id) ?? { form: id, whole, sent: true, fields };
  let home = await send(), note = await own();
  if (home && !note.sent && !note.refused) { // a sending was under way, and had looked before this note was here
    home = await send();
    note = await own();
  }
  if (home && note?.refused) { // the program shows the form again with words at the field
    await drop(id);
    plainly(form, button);
    return;
  }
  form.elements.form.value = newID();
  if (home && note?.sent) {
    location.assign(after(form, note));
    return;
  }
  form.reset();
  form.elements.form.value = newID();
  if (form.dataset.next?.startsWith('/walk')) { // the walk goes on without a signal
    location.assign(form.dataset.next);
    return;
  }
  say('Kept on this device. It goes home by itself when there is a signal.', 'kept');
  document.getElementById('kept').scrollIntoView();
}

// plainly sends a form past this script, with the button that was pressed.
function plainly(form, button) {
  if (button?.name) {
    const field = document.createElement('input');
    field.type = 'hidden';
    field.name = button.name;
    field.value = button.value;
    form.append(field);
  }
  HTMLFormElement.prototype.submit.call(form);
}

document.addEventListener('submit', event => {
  const form = event.target;
  const button = event.submitter ?? form.querySelector('button[type=submit]');
  if (!isNote(form)) return;
  event.preventDefault();
  if (button.value === 'different') { // a question, not a note: out of reach of home, though online perhaps, the form for looks is at hand
    send().then(home => (home ? plainly(form, button) : location.assign(`/space/${encodeURIComponent(form.elements.space.value)}/note/looked`)));
    return;
  }
  if (form.dataset.busy) return; // a second touch while the first is kept
  form.dataset.busy = 'yes';
  hold(form, button).catch(() => {
    // This browser keeps nothing (private window, full disk): send it plainly.
    plainly(form, button);
  }).finally(() => { setTimeout(() => { delete form.dataset.busy; }, 400); });
});

// A kept page carries the mark and the day it was drawn with. Each opening is
// another note: it gets a mark of its own, and today's day.
for (const form of document.forms) {
  if (!isNote(form) || !form.elements.day) continue;
  form.elements.form.value = newID();
  const now = new Date();
  const today = `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
  if (!navigator.onLine && form.elements.day.value !== today) {
    form.elements.day.value = today;
    form.dataset.stamped = 'yes';
    form.dataset.day = today;
  }
}

async function saveFile() {
  const body = { device: await meta('device') ?? '', epoch: await meta('epoch') ?? '', entries: (await waiting()).filter(n => !n.whole).map(({ form, path, fields, stamped }) => ({ form, path, fields, stamped })) };
  const a = document.createElement('a');
  a.href = URL.createObjectURL(new Blob([JSON.stringify(body, null, 1)], { type: 'application/json' }));
  a.download = 'notes-not-yet-home.json';
  a.click();
  setTimeout(() => URL.revokeObjectURL(a.href), 60000);
}

async function storage() {
  const line = document.getElementById('storage');
  const kept = await navigator.storage?.persist?.();
  if (line) line.textContent = kept ? 'The browser promised not to throw these notes away.' : 'The browser made no promise to keep these notes for long. Bring this device home within a few days, or add these pages to the home screen.';
}

document.getElementById('send')?.addEventListener('click', send);
document.getElementById('save')?.addEventListener('click', saveFile);
addEventListener('online', send);
document.addEventListener('visibilitychange', () => { if (!document.hidden) send(); });

if ('serviceWorker' in navigator) {
  navigator.serviceWorker.register('/worker.js').then(() => navigator.serviceWorker.ready).then(r => {
    document.documentElement.dataset.ready = 'yes';
    r.active.postMessage('gather');
  }).catch(() => {});
  navigator.serviceWorker.addEventListener('message', e => { if (e.data === 'gathered') document.documentElement.dataset.gathered = 'yes'; });
}
// A page kept for use without a signal is drawn as this device wants it now.
const mode = document.cookie.match(/(?:^|; )bedweek-mode=(bed|big|dark|plain)/)?.[1];
if (mode === 'plain') delete document.documentElement.dataset.mode;
else if (mode) document.documentElement.dataset.mode = mode;

tell().then(storage).then(send);
