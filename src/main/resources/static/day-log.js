// The running clock of the day log. Without script the page shows the times as the server wrote them.
window.plumbrowClock = (() => {
  'use strict';
  const find = id => document.getElementById(id);
  const clock = find('clock');
  const at = name => Date.parse(clock.dataset[name]);
  const MINUTE = 60000;
  const EARLY = [30, 15, 5];
  // The server's clock is right, not the phone's. A page kept on the phone is as old as it is: there the last figure counts.
  const measured = () => {
    const said = Date.parse(document.body.dataset.now);
    const old = document.documentElement.dataset.kept;
    try {
      if (old || !said) return Number(localStorage.getItem('plumbrow-ahead')) || 0;
      localStorage.setItem('plumbrow-ahead', said - Date.now());
    } catch { /* a browser that keeps nothing */ }
    return said - Date.now();
  };
  const ahead = measured();
  const hoursAndMinutes = ms => Math.floor(ms / (60 * MINUTE)) + ':' + String(Math.floor(ms / MINUTE) % 60).padStart(2, '0');

  const warn = minutes => {
    const line = find('early');
    const step = minutes < 0 ? 'past' : EARLY.filter(early => minutes < early).at(-1);
    if (!line || line.dataset.step === String(step)) return;
    line.dataset.step = String(step);
    line.hidden = step === undefined;
    line.textContent = minutes < 0 ? line.dataset.past : step === undefined ? '' : line.dataset.soon.replace('{0}', step);
  };
  const tick = () => {
    const now = Date.now() + ahead;
    if (clock.dataset.off) find('off').textContent = hoursAndMinutes(Math.max(0, now - at('off')));
    const left = find('left');
    if (!left || !clock.dataset.decide) return;
    const until = at('decide') - now;
    left.textContent = until < 0 ? clock.dataset.over : hoursAndMinutes(until);
    if (!clock.dataset.off) return;
    warn(until / MINUTE);
    const share = Math.max(0, Math.min(1, (now - at('off')) / (at('decide') - at('off'))));
    find('gone')?.setAttribute('width', (100 * share).toFixed(1) + '%');
  };
  let runs = false;
  const run = (name, when) => {
    if (name) clock.dataset[name] = new Date(when).toISOString();
    clock.hidden = false;
    tick();
    if (!runs) setInterval(tick, 5000);
    runs = true;
  };
  if (clock && (clock.dataset.off || clock.dataset.decide)) run();
  return {
    ahead,
    // The power is off by a tap that the server does not know yet.
    off: when => {
      if (clock && !clock.dataset.off) run('off', when);
    },
    decide: when => {
      if (clock) run('decide', when);
    }
  };
})();
