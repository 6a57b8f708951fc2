// Redraws the garden while week or hour is being dragged. The page works
// without: the form's button does the same. One question is asked at a time,
// and the newest answer is shown.
'use strict';
(() => {
  const form = document.getElementById('pick');
  const drawing = document.getElementById('drawing');
  if (!form || !drawing || !window.fetch || !window.DOMParser) return;
  const fields = ['week', 'hour', 'show'].map(id => document.getElementById(id));
  let asking = false;
  let again = false;

  const address = () => {
    const q = new URLSearchParams();
    fields.forEach(f => q.set(f.name, f.value));
    return q;
  };

  async function redraw() {
    if (asking) {
      again = true;
      return;
    }
    asking = true;
    try {
      do {
        again = false;
        const q = address();
        const shown = '/light?' + q;
        q.set('part', 'drawing');
        const answer = await fetch('/light?' + q, { headers: { Accept: 'text/html' } });
        if (!answer.ok) return;
        const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
        const fresh = page.getElementById('drawing');
        if (!fresh) return;
        const open = [...drawing.querySelectorAll('details')].map(d => d.open);
        fresh.querySelectorAll('details').forEach((d, i) => { d.open = open[i]; });
        drawing.replaceChildren(...fresh.childNodes);
        history.replaceState(null, '', shown);
      } while (again);
    } catch (e) {
      // Out of reach: the last drawing stays.
    } finally {
      asking = false;
    }
  }

  const said = () => {
    const out = document.getElementById('week-o');
    const monday = new Date(`${out.dataset.first}T12:00:00Z`);
    monday.setUTCDate(monday.getUTCDate() + 7 * (Number(fields[0].value) - 1));
    out.textContent = monday.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' });
    const m = Math.round(Number(fields[1].value) * 60);
    document.getElementById('hour-o').textContent = `${Math.floor(m / 60)}:${String(m % 60).padStart(2, '0')}`;
  };

  const spoken = () => ['week-o', 'hour-o'].forEach((id, i) => fields[i].setAttribute('aria-valuetext', document.getElementById(id).textContent));

  fields.forEach(f => f.addEventListener('input', () => {
    said();
    spoken();
    redraw();
  }));
})();
