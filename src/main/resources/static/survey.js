// The survey on a phone: what is typed is kept as it is typed, sent when there is signal, and shown as what it is.
// Without script, or where the browser keeps nothing, the forms are sent as they always were.
(() => {
  'use strict';
  const phone = window.plumbrowPhone;
  const box = document.getElementById('phone');
  const {person, zone, survey} = box.dataset;
  const find = id => document.getElementById(id);
  const copyOf = id => find(id).content.firstElementChild.cloneNode(true);
  const make = (tag, text, more) => Object.assign(document.createElement(tag), {textContent: text}, more);
  const words = Object.fromEntries([...find('phone-words').content.children].map(one => [one.dataset.word, one.textContent]));
  const say = (word, ...values) => values.reduce((text, value, i) => text.replaceAll('{' + i + '}', value), words[word]);
  const when = at => {
    const day = {timeZone: zone, month: 'short', day: 'numeric'};
    const as = style => new Intl.DateTimeFormat('en-US', style).format(at);
    const time = as({timeZone: zone, hour: 'numeric', minute: '2-digit'}).replace(/[AP]M/, half => half.toLowerCase());
    return as(day) === new Intl.DateTimeFormat('en-US', day).format(Date.now()) ? time : as(day) + ', ' + time;
  };

  // What is where: one line, and below it what else waits.
  const show = (shape, text) => {
    box.hidden = false;
    find('phone-shape').firstElementChild.setAttribute('href', '#m-' + shape);
    if (find('phone-state').textContent !== text) find('phone-state').textContent = text;
    find('phone-in').hidden = text !== words.other && !text.endsWith(words.in);
  };
  const shapes = {sent: 'done', 'sign-in': 'risk', other: 'risk', busy: 'due', 'no-signal': 'due'};
  const tell = (outcome, at) => show(shapes[outcome], say(outcome, when(at)) + (outcome === 'sign-in' ? ' ' + words.in : ''));

  const photosOf = address => address.replace(/(\/photos)\/.*/, '$1');
  const list = async () => {
    const others = (await phone.unsent(person)).filter(one => one.form !== address);
    find('phone-waiting').replaceChildren(...others.map(one => {
      const line = document.createElement('li');
      line.append(make('a', one.title, {href: photosOf(one.page ?? one.form)}), ': ');
      if (one.page) {
        line.append((one.problems[0].sentence || words.large) + ' ', make('button', words.away, {type: 'button',
          className: 'quiet', onclick: () => phone.forget(person, one.form).then(list)}));
      } else {
        line.append(one.said === 'conflict' ? words.conflict : one.said ? words.refused : say('kept', when(one.at)));
      }
      return line;
    }));
    if (others.length && box.hidden) show('part', words.waits);
  };

  // The form of a part.
  const form = document.querySelector('form[data-phone]');
  const address = form?.getAttribute('action');
  const version = form?.elements.namedItem('version');
  const control = name => form.elements.namedItem(name);
  const ours = ['_csrf', 'version', 'then'];
  const gather = () => Object.fromEntries([...new FormData(form)].filter(([name]) => !ours.includes(name)));
  let able = false;
  let base = form && gather();
  let leaving = null;

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
      if (one.type === 'checkbox') one.checked = one.name in fields;
      else one.value = fields[one.name] ?? '';
    });
    do put(); while (grow());
    form.querySelectorAll('[data-limits]').forEach(ask);
    put();
    Object.keys(fields).filter(name => fields[name] && !control(name))
      .forEach(name => form.append(make('input', '', {type: 'hidden', name, value: fields[name]})));
  };

  const thing = () => ({person, form: address, title: form.dataset.title, version: Number(version.value), base,
    fields: gather(), at: Date.now()});
  const keep = async () => {
    const draft = thing();
    await phone.keep(draft);
    show('part', say('kept', when(draft.at)));
  };

  const mark = problems => {
    const lines = problems.map(({field, sentence}, i) => {
      const input = field && control(field);
      const line = make('li', input ? '' : sentence);
      if (!input) return line;
      line.append(make('a', sentence, {href: '#' + input.id}));
      const wrong = make('p', sentence, {className: 'wrong phone-wrong', id: 'phone-wrong-' + i});
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
  const both = (rows, now, by, at) => {
    find('phone-both')?.remove();
    const panel = copyOf('phone-both-copy');
    panel.id = 'phone-both';
    panel.querySelector('h2').textContent = by ? say('both', by, at) : words.bothlater;
    rows.forEach(row => {
      const set = document.createElement('fieldset');
      const was = base[row.field] ?? '';
      set.append(make('legend', row.label));
      [['theirs', row.theirs === was], ['yours', row.yours === was]].forEach(([whose, same]) => {
        const label = make('label', '', {className: 'pick'});
        label.append(make('input', '', {type: 'radio', name: 'both-' + row.field, value: row[whose],
          checked: same ? false : row.theirs === was || row.yours === was}), make('span', say(whose, row[whose + 'Words'])));
        set.append(label);
      });
      panel.querySelector('div').append(set);
    });
    panel.querySelector('button').onclick = () => {
      const open = [...panel.querySelectorAll('fieldset')].find(set => !set.querySelector(':checked'));
      panel.querySelector('.wrong').hidden = !open;
      if (open) return open.querySelector('input').focus();
      const chosen = [...panel.querySelectorAll(':checked')];
      base = {...base, ...Object.fromEntries(rows.map(row => [row.field, row.theirs]))};
      fill({...gather(), ...Object.fromEntries(chosen.map((one, i) => [rows[i].field, one.value]))});
      version.value = now;
      panel.remove();
      save('stay');
    };
    form.before(panel);
    show('risk', words.conflict);
  };
  const words4 = (name, value) => {
    const input = control(name);
    return (input?.options ? [...input.options].find(one => one.value === value)?.text : value) || '–';
  };
  const rowsAgainst = theirs => {
    const yours = gather();
    return [...new Set([...Object.keys(theirs), ...Object.keys(yours)])]
      .map(field => ({field, theirs: theirs[field] ?? '', yours: yours[field] ?? ''}))
      .filter(row => row.theirs !== row.yours)
      .map(row => ({...row, label: control(row.field)?.labels?.[0]?.textContent ?? row.field,
        theirsWords: words4(row.field, row.theirs), yoursWords: words4(row.field, row.yours)}));
  };

  const restore = async () => {
    const kept = await phone.draft(person, address);
    const queued = (await phone.waiting(person)).filter(one => one.form === address).at(-1);
    able = true;
    const mine = kept?.fields ? kept : queued;
    if (!mine) return kept?.sent && show('done', say('sent', when(kept.sent)));
    const [theirs, now] = [base, Number(version.value)];
    fill(mine.fields);
    base = mine.base;
    version.value = mine.version;
    const fresh = !document.documentElement.dataset.kept;
    show('part', say('kept', when(mine.at)));
    if (kept?.said === 'refused') {
      show('trouble', words.refused);
      mark(kept.problems);
    } else if (fresh && !queued && mine.version !== now) {
      const rows = rowsAgainst(theirs);
      if (rows.length) return both(rows, now, kept.by, kept.at);
      await phone.forget(person, address);
      version.value = now;
      show('done', words.same);
    } else if (kept?.said === 'conflict') {
      both(kept.theirs, kept.now, kept.by, kept.at);
    }
  };

  const told = (one, answer) => {
    if (answer.next) fetch(one.photo ? photosOf(one.form) : one.form).catch(() => {}); // renews the copy for later
    if (one.form !== address) return;
    if (answer.said === 'refused' || answer.said === 'conflict') {
      if (answer.said === 'conflict') return both(answer.theirs, answer.version, answer.by, answer.at);
      show('trouble', words.refused);
      unmark();
      mark(answer.problems);
      return box.focus();
    }
    if (Number(version.value) === one.version) version.value = answer.version;
    base = one.fields;
    if (leaving === one.id) location.assign(answer.next);
  };

  const send = async () => {
    const before = await phone.waiting(person);
    if (!before.length) return 'nothing';
    const outcome = await phone.send(person, told);
    const left = await phone.waiting(person);
    const trouble = document.querySelector('#phone-both, #phone-problems li');
    if (!trouble) tell(left.length ? outcome : 'sent', left.length ? left.at(-1).at : Date.now());
    await list();
    return outcome;
  };

  const save = async then => {
    unmark();
    const sending = {...thing(), id: phone.id(), then};
    leaving = sending.id;
    await phone.queue(sending);
    const outcome = await send();
    if (outcome !== 'no-signal' || then || !form.dataset.next) return;
    if (await window.caches?.match(new URL(form.dataset.next, location).href)) location.assign(form.dataset.next);
  };

  if (form) {
    form.addEventListener('input', () => {
      if (!able) return;
      grow();
      keep();
    });
    form.addEventListener('change', ({target}) => {
      if (able && target.dataset.limits) ask(target);
    });
    form.addEventListener('submit', event => {
      if (!able) return;
      event.preventDefault();
      save(event.submitter?.value ?? '').catch(() => form.submit());
    });
  }

  // Photos: as they were taken while there is signal, smaller ones to wait.
  const smaller = async file => {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, 2560 / Math.max(picture.width, picture.height));
    const canvas = make('canvas', '', {width: picture.width * scale, height: picture.height * scale});
    canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
    const small = await new Promise(done => canvas.toBlob(done, 'image/jpeg', .85));
    return small && small.size < file.size ? small : file;
  };
  const MOST = 60e6;
  const photo = async (taken, file) => {
    const others = (await phone.unsent(person)).reduce((sum, one) => sum + (one.photo?.size ?? 0), 0);
    if (others + Math.min(file.size, 2e6) > MOST) return show('trouble', say('full', MOST / 1e6));
    if (file.size > 20e6) return show('trouble', words.large);
    const sending = {id: phone.id(), person, form: taken.getAttribute('action'), title: taken.dataset.title, photo: file,
      name: file.name, at: Date.now()};
    sending.number = await phone.queue(sending);
    taken.reset();
    if (await send() === 'sent') return location.reload();
    await phone.replace({...sending, photo: await smaller(file).catch(() => file)});
    await list();
  };
  document.querySelectorAll('form[data-phone-photo]').forEach(taken => taken.addEventListener('submit', event => {
    const file = taken.elements.namedItem('photo').files[0];
    if (!able || !file) return;
    event.preventDefault();
    photo(taken, file).catch(() => taken.submit());
  }));

  // Copies of these pages for later, where the address allows it.
  const copies = async () => {
    if (!navigator.serviceWorker) {
      find('phone-pages').textContent = words.nohttps;
      return;
    }
    await navigator.serviceWorker.register('/survey-worker.js', {scope: survey});
    await navigator.serviceWorker.ready;
    const parts = [...document.querySelectorAll('.parts a')].map(link => link.href);
    const files = [...document.querySelectorAll('link[href], script[src]')].map(one => one.href || one.src);
    const wanted = [location.href.replace(/[?#].*/, ''), new URL(survey, location).href, ...parts, ...files];
    for (const one of wanted) if (!await caches.match(one)) await fetch(one);
    find('phone-pages').textContent = words.pages;
  };

  const begin = async () => {
    const old = Number(document.documentElement.dataset.kept);
    if (old) find('phone-old').textContent = say('old', when(old));
    try {
      await (form ? restore() : phone.waiting(person));
      able = true;
    } catch {
      return show('risk', words.keepsnothing);
    }
    await list();
    await send();
    const again = () => document.visibilityState === 'visible' && send();
    addEventListener('online', again);
    document.addEventListener('visibilitychange', again);
    setInterval(again, 30000);
    if (!old) copies().catch(() => {});
  };
  begin();
})();
