// One form on a phone: its values in and out, rows that grow, readings that are asked about, what is marked, and theirs
// beside yours. Knows neither the store nor the page.
window.plumbrowForm = (form, say) => {
  'use strict';
  const find = id => document.getElementById(id);
  const copyOf = id => find(id).content.firstElementChild.cloneNode(true);
  const make = (tag, text, more) => Object.assign(document.createElement(tag), {textContent: text}, more);
  const control = name => form.elements.namedItem(name);
  const ours = ['_csrf', 'version', 'then'];
  const gather = () => Object.fromEntries([...new FormData(form)].filter(([name, value]) => !ours.includes(name) && typeof value === 'string'));

  // A group that repeats always has one empty row at its end.
  const grow = () => {
    let grew = false;
    for (const row of form.querySelectorAll('fieldset[data-row]')) {
      const {row: name, word, number, most} = row.dataset;
      const next = Number(number) + 1;
      const used = [...row.querySelectorAll('input, select, textarea')].some(one => one.type !== 'checkbox' && one.value);
      if (!used || next > most || form.querySelector(`[data-row="${name}"][data-number="${next}"]`)) continue;
      const copy = document.createElement('template');
      copy.innerHTML = row.outerHTML.replaceAll(`${name}.${number}.`, `${name}.${next}.`)
        .replaceAll(`${word} ${number}`, `${word} ${next}`).replace(`data-number="${number}"`, `data-number="${next}"`);
      copy.content.querySelectorAll('.asked, .wrong, .phone-ask, .pick, [for$=".why"], [name$=".why"]').forEach(one => one.remove());
      copy.content.querySelectorAll('.field').forEach(one => one.classList.remove('ask', 'bad'));
      copy.content.querySelectorAll('input').forEach(one => one.setAttribute('value', ''));
      copy.content.querySelectorAll('textarea').forEach(one => one.textContent = '');
      copy.content.querySelectorAll('[selected]').forEach(one => one.removeAttribute('selected'));
      row.after(copy.content);
      grew = true;
    }
    return grew;
  };

  // Out of the usual limits: kept, and asked about while one still stands there. The server asks about more.
  const ask = input => {
    const field = input.closest('.field');
    let asked = field.querySelector('.phone-ask');
    if (!asked && field.querySelector('.asked')) return;
    const value = parseFloat(input.value.replace(/[,\s]/g, '').replace('−', '-'));
    const outside = value < input.dataset.least || value > input.dataset.most;
    field.classList.toggle('ask', outside);
    if (!outside) return asked?.remove();
    if (!asked) {
      asked = copyOf('phone-ask');
      const [twice, why] = asked.querySelectorAll('input');
      twice.name = input.name + '.twice';
      why.name = why.id = asked.querySelector('[for]').htmlFor = input.name + '.why';
      form.querySelectorAll(`[type=hidden][name="${twice.name}"], [type=hidden][name="${why.name}"]`).forEach(one => one.remove());
      field.append(asked);
    }
    asked.querySelector('.asked').textContent = say('ask', input.value.trim(), input.dataset.limits);
  };

  const fill = fields => {
    const put = () => [...form.elements].filter(one => one.name && !ours.includes(one.name)).forEach(one => {
      if (one.type === 'checkbox') one.checked = Boolean(fields[one.name]);
      else one.value = fields[one.name] ?? '';
    });
    do put(); while (grow());
    form.querySelectorAll('[data-limits]').forEach(ask);
    put();
    form.querySelectorAll('details').forEach(part => {
      part.open ||= [...part.querySelectorAll('input, select, textarea')].some(one => fields[one.name]);
    });
    Object.keys(fields).filter(name => fields[name] && !control(name))
      .forEach(name => form.append(make('input', '', {type: 'hidden', name, value: fields[name]})));
  };

  const mark = problems => {
    const lines = problems.map(({field, sentence}, i) => {
      const input = field && control(field);
      const line = make('li', input ? '' : sentence);
      if (!input) return line;
      line.append(make('a', sentence, {href: '#' + input.id}));
      const wrong = make('p', sentence, {className: 'wrong phone-wrong', id: 'phone-wrong-' + i});
      input.closest('details')?.setAttribute('open', '');
      input.closest('.field').classList.add('bad');
      input.closest('.field').querySelector('label').after(wrong);
      input.setAttribute('aria-invalid', 'true');
      input.setAttribute('aria-describedby', wrong.id);
      return line;
    });
    find('phone-problems').replaceChildren(...lines);
  };
  const unmark = () => {
    find('phone-problems').replaceChildren();
    document.querySelectorAll('.phone-wrong').forEach(one => {
      const field = one.closest('.field');
      field.classList.remove('bad');
      field.querySelector('[aria-invalid]').removeAttribute('aria-invalid');
      one.remove();
    });
  };

  // Theirs beside yours: what only one of both changed is chosen already.
  const both = (rows, base, by, at, chosen) => {
    find('phone-both')?.remove();
    const panel = copyOf('phone-both-copy');
    panel.id = 'phone-both';
    panel.querySelector('h2').textContent = by ? say('both', by, at) : say('bothlater');
    rows.forEach(row => {
      const set = document.createElement('fieldset');
      const was = base[row.field] ?? '';
      set.append(make('legend', row.label));
      [['theirs', row.theirs === was], ['yours', row.yours === was]].forEach(([whose, same]) => {
        const label = make('label', '', {className: 'pick'});
        const pick = make('input', '', {type: 'radio', name: 'both-' + row.field, value: whose,
          checked: !same && (row.theirs === was || row.yours === was)});
        pick.dataset.whose = whose;
        label.append(pick, make('span', say(whose, row[whose + 'Words'])));
        set.append(label);
      });
      panel.querySelector('div').append(set);
    });
    panel.querySelector('button').onclick = () => {
      const open = [...panel.querySelectorAll('fieldset')].find(set => !set.querySelector(':checked'));
      panel.querySelector('.wrong').hidden = !open;
      if (open) return open.querySelector('input').focus();
      panel.remove();
      const taken = rows.filter((row, i) => panel.querySelectorAll(':checked')[i].dataset.whose === 'theirs');
      fill({...gather(), ...Object.fromEntries(taken.map(row => [row.field, row.theirs]))});
      chosen();
    };
    form.before(panel);
  };
  const wordsOf = (name, value) => {
    const input = control(name);
    return (input?.options ? [...input.options].find(one => one.value === value)?.text : value) || '–';
  };
  const labelOf = input => [input?.closest('fieldset.field')?.querySelector('legend')?.textContent, input?.labels?.[0]?.textContent]
    .filter(Boolean).join(': ');
  const rowsAgainst = theirs => {
    const yours = gather();
    return [...new Set([...Object.keys(theirs), ...Object.keys(yours)])]
      .map(field => ({field, theirs: theirs[field] ?? '', yours: yours[field] ?? ''}))
      .filter(row => row.theirs !== row.yours)
      .map(row => ({...row, label: labelOf(control(row.field)) || row.field,
        theirsWords: wordsOf(row.field, row.theirs), yoursWords: wordsOf(row.field, row.yours)}));
  };

  return {gather, fill, grow, ask, mark, unmark, both, rowsAgainst};
};
