// Lets a finger drag the marked space on the plan from above. The taps below
// the plan do the same and stay. Nothing is kept before the finger is lifted;
// a drag that is broken off, or Escape, leaves the space where it was.
const plan = document.querySelector('.from-above');
const send = document.querySelector('form.drag');
const says = document.querySelector('.drag-says');

if (plan && send && says && plan.dataset.scale > 0 && window.PointerEvent) {
  const scale = Number(plan.dataset.scale);
  const grip = plan.querySelector('.grip');
  const first = says.textContent;
  says.hidden = false;
  says.setAttribute('role', 'status');
  let drag = null;
  const at = e => { // where a finger is, in the plan's own pixels
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(plan.getScreenCTM().inverse());
    return { x: p.x, y: p.y };
  };
  const mine = [...plan.querySelectorAll('[data-space]')].filter(s => s.dataset.space === grip?.dataset.space);
  const stood = new Map(mine.map(s => [s, s.getAttribute('transform') || '']));
  const put = (dx, dy) => {
    for (const s of mine) s.setAttribute('transform', dx || dy ? `translate(${dx} ${dy}) ${stood.get(s)}` : stood.get(s));
  };
  const end = () => { drag = null; plan.classList.remove('dragging'); };
  const drop = () => { end(); put(0, 0); says.textContent = first; };
  const metres = n => `${Math.abs(n).toFixed(1)} m`;

  grip?.addEventListener('pointerdown', e => {
    if (!e.isPrimary || e.button > 0) return;
    drag = { id: e.pointerId, from: at(e), dx: 0, dy: 0 };
    grip.setPointerCapture(e.pointerId);
    plan.classList.add('dragging');
    e.preventDefault();
  });
  grip?.addEventListener('pointermove', e => {
    if (!drag || e.pointerId !== drag.id) return;
    const p = at(e);
    drag.dx = p.x - drag.from.x;
    drag.dy = p.y - drag.from.y;
    put(drag.dx, drag.dy);
    const [east, north] = [drag.dx / scale, -drag.dy / scale];
    says.textContent = `${metres(east)} ${east < 0 ? 'west' : 'east'}, ${metres(north)} ${north < 0 ? 'south' : 'north'} of where it stood.`;
  });
  grip?.addEventListener('pointerup', e => {
    if (!drag || e.pointerId !== drag.id) return;
    const { dx, dy } = drag;
    if (Math.hypot(dx, dy) < 4) { drop(); return; }
    end();
    send.elements.east.value = (dx / scale).toFixed(3);
    send.elements.north.value = (-dy / scale).toFixed(3);
    send.requestSubmit();
  });
  grip?.addEventListener('pointercancel', drop);
  addEventListener('keydown', e => { if (drag && e.key === 'Escape') drop(); });
  addEventListener('pageshow', e => { if (e.persisted) location.reload(); }); // its form was sent already

  // Another space that is tapped, or nearly, is taken instead.
  const near = 24; // pixels of the screen
  plan.addEventListener('click', e => {
    const far = s => { const b = s.getBoundingClientRect(); return Math.hypot(b.x + b.width / 2 - e.clientX, b.y + b.height / 2 - e.clientY); };
    const hit = e.target.closest?.('[data-space]') ?? [...plan.querySelectorAll('[data-space]')].filter(s => far(s) < near).sort((a, b) => far(a) - far(b))[0];
    const id = hit?.dataset.space;
    if (id && id !== grip?.dataset.space) location.href = `/entry/plan?space=${encodeURIComponent(id)}&step=${encodeURIComponent(send.elements.step.value)}`;
  });
}
