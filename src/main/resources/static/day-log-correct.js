// A reading that waits on this phone and is wrong is put right in place, before it is sent. What was tapped first stays beside
// it, each with the time of this phone. If the first was sent meanwhile, the correction follows it under the same id.
window.plumbrowCorrect = (phone, words, say, time) => {
  'use strict';
  const make = (tag, text, more) => Object.assign(document.createElement(tag), {textContent: text}, more);
  const isReading = input => input.name?.startsWith('r.');

  // What a form asks for, in words, so that it can be asked again where its page is gone.
  const asked = form => [...new Map([...form.elements].filter(isReading).map(input => [input.name, {
    name: input.name,
    label: (input.type === 'radio' ? input.closest('fieldset').querySelector('legend') : input.labels[0]).textContent,
    unit: input.type === 'radio' ? '' : input.nextElementSibling?.textContent ?? '',
    mode: input.inputMode,
    choices: input.type === 'radio' ? [...form.elements[input.name]].map(one => ({value: one.value, text: one.labels[0].textContent.trim()})) : null
  }])).values()];
  const readings = one => (one.asks ?? []).filter(ask => one.fields[ask.name]?.trim());
  const shown = (ask, value) => ask.choices?.find(one => one.value === value)?.text ?? (value + ' ' + ask.unit).trim();
  const tell = one => readings(one).map(ask => ask.label + ' ' + [shown(ask, one.fields[ask.name]),
    ...(one.fixes ?? []).filter(fix => 'r.' + fix.of === ask.name).reverse()
      .map(fix => '(' + say('was', shown(ask, fix.was), time(fix.at)) + ')')].join(' ')).join('; ');

  const field = (id, label, input, unit) => {
    const box = make('div', '', {className: 'field'});
    input.id = id;
    box.append(make('label', label, {htmlFor: id}));
    const line = make('span', '', {className: 'unit'});
    line.append(input, ' ', ...(unit ? [make('span', unit)] : []));
    box.append(line);
    return box;
  };
  const inputOf = (ask, value) => {
    if (!ask.choices) return make('input', '', {type: 'text', inputMode: ask.mode, value, autocomplete: 'off', className: ask.unit ? 'w4' : ''});
    const input = make('select', '');
    input.append(...ask.choices.map(one => make('option', one.text, {value: one.value})));
    input.value = value;
    return input;
  };
  const wrong = (input, sentence) => {
    const box = input.closest('.field');
    box.querySelector('.wrong')?.remove();
    box.classList.toggle('bad', Boolean(sentence));
    if (!sentence) return input.removeAttribute('aria-invalid');
    const line = make('p', sentence, {className: 'wrong', id: input.id + '-w'});
    box.querySelector('label').after(line);
    input.setAttribute('aria-invalid', 'true');
    input.setAttribute('aria-describedby', line.id);
  };
  const isNumber = text => /^[−-]?\d[\d,\s]*(\.\d+)?$|^[−-]?\.\d+$/.test(text);
  const against = (ask, value) => !value ? words.readwhat : ask.unit && !isNumber(value) ? say('readnumber', value) : '';

  const fixed = (one, changes, why) => {
    const at = Date.now();
    const next = {...one, changed: at, fields: {...one.fields}, fixes: [...(one.fixes ?? [])]};
    changes.forEach(({ask, value}) => {
      const fix = {of: ask.name.slice(2), was: one.fields[ask.name], at};
      next.fixes.push(fix);
      const as = name => `fix.${next.fixes.length}.${name}`;
      Object.assign(next.fields, {[as('id')]: phone.id(), [as('at')]: new Date(at).toISOString(), [as('of')]: fix.of,
        [as('was')]: fix.was, [as('why')]: why, [ask.name]: value});
    });
    return next;
  };

  // One form a line of the list; ended says whether something was put right.
  const open = (one, line, ended) => {
    const form = make('form', '', {noValidate: true});
    form.setAttribute('aria-label', words.correct + ': ' + one.title);
    const inputs = readings(one).map((ask, i) => {
      const input = inputOf(ask, one.fields[ask.name]);
      form.append(field(`right-${one.number}-${i}`, ask.label, input, ask.unit));
      return {ask, input};
    });
    const why = make('input', '', {type: 'text', value: words.typedwrong, maxLength: 300});
    form.append(field(`right-${one.number}-why`, words.why, why));
    const acts = make('p', '', {className: 'acts'});
    acts.append(make('button', words.correctkeep), ' ', make('button', words.correctleave, {type: 'button', className: 'quiet', onclick: () => {
      form.remove();
      ended(false);
    }}));
    form.append(acts);
    form.addEventListener('submit', async event => {
      event.preventDefault();
      const changes = inputs.map(({ask, input}) => ({ask, input, value: input.value.trim()}));
      changes.forEach(({ask, input, value}) => wrong(input, against(ask, value)));
      wrong(why, why.value.trim() ? '' : words.whywhat);
      const first = form.querySelector('[aria-invalid]');
      if (first) return first.focus();
      const made = changes.filter(({ask, value}) => value !== one.fields[ask.name].trim());
      if (made.length) await phone.change(fixed(one, made, why.value.trim()));
      form.remove();
      ended(made.length > 0);
    });
    line.append(form);
    inputs[0].input.focus();
    inputs[0].input.select?.();
  };
  return {asked, tell, open, mayBe: one => readings(one).length > 0};
};
