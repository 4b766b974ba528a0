// Who is on site and who may sign, as far as this phone knows: what its page says, and what waits here. The server asks again.
window.plumbrowSigning = (log, say) => {
  'use strict';
  const find = id => document.getElementById(id);
  const SIGN = /\/holds\/(H\d)\/sign$/;
  const plain = name => name.replace(/\s+/g, ' ').trim().toLowerCase();
  const told = [...(find('phone-people')?.content.children ?? [])].map(one => ({...one.dataset}));

  const here = waits => waits.reduce((people, {form, fields, id}) => {
    const left = form.match(/\/people\/([^/]+)\/left$/);
    if (left) return people.filter(one => one.arrival !== left[1]);
    if (form === log) return [...people, {name: fields.personInCharge}];
    return form === log + '/people' || SIGN.test(form) ? [...people, {name: fields.name, arrival: id}] : people;
  }, told.filter(one => !one.hold));
  const signed = waits => [...told.filter(one => one.hold),
    ...waits.filter(one => SIGN.test(one.form)).map(({form, fields}) => ({hold: form.match(SIGN)[1], ...fields}))];

  // The field and what is to be done about it; null when this phone knows nothing against the signature.
  const against = (form, waits) => {
    const hold = form.getAttribute('action').match(SIGN)?.[1];
    if (!hold) return null;
    const {part, name, trade, isHere} = Object.fromEntries(new FormData(form));
    const same = one => plain(one.name) === plain(name);
    const hasSigned = (where, other) => signed(waits).some(one => one.hold === where && same(one) && (!other || one.part !== part));
    if (name.trim().length < 2) return ['name', say('signname')];
    if (hold === 'H1' && hasSigned('H1', true)) return ['name', say('signother')];
    if (hold === 'H3' && part === 'SECOND_PERSON' && hasSigned('H2')) return ['name', say('signsecond', name.trim())];
    if (trade.trim().length < 2) return ['trade', say('signtrade')];
    const people = here(waits);
    if (isHere || people.some(same)) return null;
    return ['isHere', say('nothere', name.trim(), [...new Set(people.map(one => one.name))].join(', ') || '–')];
  };

  const unmark = form => {
    form.querySelectorAll('.phone-wrong').forEach(one => {
      const field = one.closest('.field');
      if (field.matches('.phone-here')) return field.remove();
      field.classList.remove('bad');
      field.querySelectorAll('[aria-invalid]').forEach(input => ['aria-invalid', 'aria-describedby'].forEach(name => input.removeAttribute(name)));
      one.remove();
    });
  };
  const mark = (form, [name, sentence]) => {
    unmark(form);
    if (name === 'isHere' && !form.elements.isHere) {
      const box = find('phone-here').content.firstElementChild.cloneNode(true);
      form.elements.name.closest('.field').after(box);
      // Said of this name only.
      form.elements.name.addEventListener('input', () => unmark(form), {once: true});
    }
    const input = form.elements[name];
    const field = input.closest('.field');
    const wrong = field.querySelector('.wrong') ?? document.createElement('p');
    Object.assign(wrong, {className: 'wrong phone-wrong', id: 'phone-wrong', textContent: sentence});
    if (!wrong.isConnected) input.before(wrong);
    field.classList.add('bad');
    input.setAttribute('aria-invalid', 'true');
    input.setAttribute('aria-describedby', wrong.id);
    input.focus();
  };
  return {against, mark, unmark};
};
