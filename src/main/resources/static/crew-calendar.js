// Drag a job on the crew calendar. The drop opens the page that shows what it would do to every promise; nothing is saved
// here. Without script each job is a link to the same page with a form.
const table = document.querySelector('#crews[data-moves]');

if (table) {
  const days = [...table.querySelectorAll('th[data-day]')];
  const START_PX = 6; // less than this is a click
  const EDGE_PX = 48;
  const roll = table.closest('.roll');
  const says = document.createElement('p');
  says.className = 'dropsays';
  says.setAttribute('role', 'status');
  says.hidden = true;
  document.body.append(says);
  let held = null;

  /** The half-day and crew under the held job's first half-day; null where it cannot be dropped. */
  const place = event => {
    const row = document.elementsFromPoint(event.clientX, event.clientY)
      .map(e => e.closest && e.closest('tr[data-crew]')).find(Boolean);
    const at = event.clientX - held.grabbed;
    const day = days.find(th => {
      const box = th.getBoundingClientRect();
      return at >= box.left && at < box.right;
    });
    if (!row || !day || day.classList.contains('closed')) return null;
    const box = day.getBoundingClientRect();
    const morning = at < box.left + box.width / 2;
    return { row, day, morning, left: morning ? box.left : box.left + box.width / 2, half: box.width / 2 };
  };

  const show = event => {
    const to = place(event);
    held.to = to;
    held.ghost.hidden = !to;
    says.hidden = false;
    if (!to) {
      says.textContent = held.bar.title;
      return;
    }
    const row = to.row.getBoundingClientRect();
    Object.assign(held.ghost.style, {
      left: to.left + 'px', top: row.top + 'px', height: row.height + 'px', width: held.span * to.half + 'px',
    });
    says.textContent = [to.row.dataset.name, to.day.dataset.words, to.morning ? 'morning' : 'afternoon'].join(', ');
  };

  const drop = () => {
    if (!held) return;
    held.ghost.remove();
    held.bar.classList.remove('job-held');
    says.hidden = true;
    held = null;
  };

  table.addEventListener('dragstart', event => event.preventDefault());

  table.addEventListener('pointerdown', event => {
    const bar = event.target.closest('a[data-move]');
    if (!bar || event.button !== 0 || event.pointerType === 'touch') return;
    held = { bar, x: event.clientX, y: event.clientY, span: Number(bar.dataset.move), moving: false,
      grabbed: event.clientX - bar.getBoundingClientRect().left - 4 };
  });

  addEventListener('pointermove', event => {
    if (!held) return;
    if (!held.moving) {
      if (Math.hypot(event.clientX - held.x, event.clientY - held.y) < START_PX) return;
      held.moving = true;
      held.ghost = document.createElement('div');
      held.ghost.className = 'dropghost';
      document.body.append(held.ghost);
      held.bar.classList.add('job-held');
    }
    event.preventDefault();
    const box = roll.getBoundingClientRect();
    if (event.clientX > box.right - EDGE_PX) roll.scrollLeft += 16;
    if (event.clientX < box.left + EDGE_PX) roll.scrollLeft -= 16;
    show(event);
  });

  addEventListener('pointerup', () => {
    if (!held || !held.moving) {
      held = null;
      return;
    }
    const { bar, to } = held;
    // the click that follows a drag must not open the job's own page
    addEventListener('click', event => event.preventDefault(), { capture: true, once: true });
    setTimeout(drop);
    if (to) {
      const query = new URLSearchParams({
        day: to.day.dataset.day, half: to.morning ? 'MORNING' : 'AFTERNOON', crewId: to.row.dataset.crew,
      });
      location.assign(bar.getAttribute('href').replace(/move$/, 'effect') + '?' + query);
    }
  });

  addEventListener('pointercancel', () => held && held.moving ? drop() : (held = null));
  addEventListener('keydown', event => {
    if (event.key === 'Escape' && held && held.moving) drop();
  });
}
