// Signing in and out on a phone that keeps things: copies of pages go, and nobody leaves unsent things without knowing.
(() => {
  'use strict';
  const phone = window.plumbrowPhone;
  const forgetPages = async () => {
    if (window.caches) await Promise.all(['plumbrow-pages', 'plumbrow-files'].map(name => caches.delete(name)));
  };
  let through = false;

  const guard = (form, ask) => form.addEventListener('submit', async event => {
    if (through) return;
    event.preventDefault();
    const go = async () => {
      through = true;
      await forgetPages().catch(() => {});
      form.requestSubmit(event.submitter);
    };
    if (!await ask(go)) go();
  });

  // Whoever signs in may be another person: what the last one looked at goes meanwhile.
  document.querySelectorAll('form[data-phone-in]').forEach(form =>
    form.addEventListener('submit', () => void forgetPages().catch(() => {})));

  const box = document.getElementById('phone-out');
  document.querySelectorAll('form[data-phone-out]').forEach(form => guard(form, async go => {
    const {person} = box.dataset;
    const unsent = await phone.unsent(person).catch(() => []);
    if (!unsent.length) return false;
    box.querySelector('ul').replaceChildren(...unsent.map(one => {
      const line = document.createElement('li');
      const link = document.createElement('a');
      link.href = (one.page ?? one.form).replace(/(\/photos)\/.*/, '$1');
      link.textContent = one.title;
      line.append(link);
      return line;
    }));
    box.hidden = false;
    box.focus();
    const [keep, drop] = box.querySelectorAll('button');
    keep.onclick = go;
    drop.onclick = async () => {
      await phone.throwAway(person);
      go();
    };
    return true;
  }));
})();
