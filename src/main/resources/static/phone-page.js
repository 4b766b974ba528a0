// A page that is filled in on a phone (a part of the survey, a daily report, the steps of day one): what is typed or ticked is
// kept at once, sent when there is signal, and shown as what it is.
// Without script, or where the browser keeps nothing, the forms are sent as they always were.
(() => {
  'use strict';
  const phone = window.plumbrowPhone;
  const box = document.getElementById('phone');
  const {person, zone, home} = box.dataset;
  const find = id => document.getElementById(id);
  const make = (tag, text, more) => Object.assign(document.createElement(tag), {textContent: text}, more);
  const {words, say} = phone.texts();
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

  const list = async () => {
    const others = (await phone.unsent(person)).filter(one => one.form !== address);
    find('phone-waiting').replaceChildren(...others.map(one => {
      const line = document.createElement('li');
      line.append(make('a', one.title, {href: one.shown ?? one.form}), ': ');
      if (one.page || one.tap && one.said) {
        line.append((one.problems[0].sentence || words.large) + ' ', make('button', words.away, {type: 'button',
          className: 'quiet', onclick: () => phone.forget(person, one.form).then(list)}));
      } else {
        line.append(one.said === 'conflict' ? words.conflict : one.said ? words.refused : say(one.id ? 'queued' : 'kept', when(one.at)));
        if (one.tap) line.append(' ', make('button', words.withdraw, {type: 'button', className: 'quiet',
          onclick: () => phone.withdraw(one).then(() => location.reload())}));
      }
      return line;
    }));
    if (others.length && box.hidden) show('part', words.waits);
    drawTaps(others);
  };

  // Steps that are done by one tap: what waits of a step stands in the place of its button.
  const taps = [...document.querySelectorAll('form[data-phone-tap]')];
  const stepOf = address => address.replace(/\/[^/]+$/, '');
  const drawTaps = others => taps.forEach(tap => {
    const waits = others.findLast(one => one.tap && !one.said && stepOf(one.form) === stepOf(tap.getAttribute('action')));
    tap.hidden = Boolean(waits);
    tap.parentElement.querySelectorAll('.phone-waits').forEach(one => one.remove());
    if (waits) tap.after(make('p', say('queued', when(waits.at)), {className: 'phone-waits st'}));
  });
  const tapped = async tap => {
    await phone.queue({id: phone.id(), person, form: tap.getAttribute('action'), title: tap.dataset.title, tap: true,
      version: Number(tap.elements.namedItem('version')?.value ?? 0), fields: {}, shown: location.pathname, line: location.pathname,
      at: Date.now()});
    await list();
    await send();
  };

  // The form of a part.
  const form = document.querySelector('form[data-phone]');
  const address = form?.getAttribute('action');
  const version = form?.elements.namedItem('version');
  const {gather, fill, grow, ask, mark, unmark, both, rowsAgainst} = form ? window.plumbrowForm(form, say) : {};
  let able = false;
  let base = form && gather();
  let leaving = null;
  const heard = new Set();

  const thing = () => ({person, form: address, title: form.dataset.title, version: Number(version.value), base,
    fields: gather(), shown: location.pathname, at: Date.now()});
  const keep = async () => {
    const draft = thing();
    await phone.keep(draft);
    show('part', say('kept', when(draft.at)));
  };

  const compare = (rows, now, by, at) => {
    show('risk', words.conflict);
    both(rows, base, by, at, () => {
      base = {...base, ...Object.fromEntries(rows.map(row => [row.field, row.theirs]))};
      version.value = now;
      save('stay');
    });
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
    show('part', say(kept?.fields ? 'kept' : 'queued', when(mine.at)));
    if (kept?.said === 'refused') {
      show('trouble', words.refused);
      mark(kept.problems);
      find('phone-problems').append(make('li', ''));
      find('phone-problems').lastChild.append(make('button', words.away, {type: 'button', className: 'quiet',
        onclick: () => phone.forget(person, address).then(() => location.reload())}));
    } else if (fresh && !queued && mine.version !== now) {
      const rows = rowsAgainst(theirs);
      if (rows.length) return compare(rows, now, kept.by, kept.theirsAt);
      await phone.forget(person, address);
      version.value = now;
      show('done', words.same);
    } else if (kept?.said === 'conflict') {
      compare(kept.theirs, kept.now, kept.by, kept.theirsAt);
    }
  };

  const told = (one, answer) => {
    if (answer.next) fetch(one.shown ?? one.form).catch(() => {}); // renews the copy for later
    if (one.form !== address) return;
    heard.add(one.id);
    if (answer.said === 'refused' || answer.said === 'conflict') {
      if (answer.said === 'conflict') return compare(answer.theirs, answer.version, answer.by, answer.at);
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
    // Another page of this phone has sent what was written here: this page comes anew with what the server said of it.
    const mine = one => one.form === address && !heard.has(one.id) && !left.some(next => next.number === one.number);
    if (before.some(mine)) return location.reload();
    const trouble = document.querySelector('#phone-both, #phone-problems li');
    const here = left.findLast(one => one.form === address);
    if (trouble) return outcome;
    if (left.length && !here && outcome === 'no-signal') show('due', words.others);
    else tell(left.length ? outcome : 'sent', (here ?? left.at(-1))?.at ?? Date.now());
    await list();
    // The server's page with the steps as they are now.
    if (taps.length && before.length > left.length && !left.some(one => one.tap)) location.reload();
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
  const photo = async (action, title, file) => {
    const others = (await phone.unsent(person)).reduce((sum, one) => sum + (one.photo?.size ?? 0), 0);
    if (others + Math.min(file.size, 2e6) > MOST) return show('trouble', say('full', MOST / 1e6));
    if (file.size > 20e6) return show('trouble', words.large);
    const sending = {id: phone.id(), person, form: action, title, photo: file, name: file.name, shown: location.pathname,
      at: Date.now()};
    sending.number = await phone.queue(sending);
    if (await send() === 'sent') return true;
    await phone.replace({...sending, photo: await smaller(file).catch(() => file)});
    await list();
  };
  document.querySelectorAll('form[data-phone-photo]').forEach(taken => taken.addEventListener('submit', event => {
    const file = taken.elements.namedItem('photo').files[0];
    if (!able || !file) return;
    event.preventDefault();
    photo(taken.getAttribute('action'), taken.dataset.title, file)
      .then(sent => sent ? location.reload() : taken.reset()).catch(() => taken.submit());
  }));
  // Photos that are chosen within the form are on the phone as soon as they are chosen.
  document.querySelectorAll('input[data-phone-photos]').forEach(input => input.addEventListener('change', async () => {
    if (!able) return;
    const files = [...input.files];
    input.value = '';
    const sent = [];
    for (const file of files) sent.push(await photo(input.dataset.phonePhotos, input.dataset.title, file));
    if (sent.every(Boolean) && !document.querySelector('#phone-both, #phone-problems li')) location.reload();
  }));
  taps.forEach(tap => tap.addEventListener('submit', event => {
    event.preventDefault();
    // A tap that comes before the phone's store is open waits for it, instead of going where there is no signal.
    opened.then(() => tapped(tap)).catch(() => tap.submit());
  }));

  // Copies of these pages for later, where the address allows it.
  const copies = async () => {
    const links = [...document.querySelectorAll('a[data-copy]')];
    const files = [...document.querySelectorAll('link[href], script[src]')].map(one => one.href || one.src);
    const wanted = [location.href.replace(/[?#].*/, ''), ...(home.endsWith('/') ? [] : [new URL(home, location).href]), ...links.map(link => link.href), ...files];
    const there = await phone.copies([home, ...links.map(link => link.dataset.copy)], await phone.missing(wanted));
    if (there === null) find('phone-pages').textContent = words.nohttps;
    else if (there) find('phone-pages').textContent = words.pages;
  };

  const opened = form ? restore() : phone.waiting(person);
  const begin = async () => {
    const old = Number(document.documentElement.dataset.kept);
    if (old) find('phone-old').textContent = say('old', when(old));
    try {
      await opened;
      able = true;
    } catch {
      return show('risk', words.keepsnothing);
    }
    await list();
    await phone.keepSending(send);
    if (!old) copies().catch(() => {});
  };
  begin();
})();
