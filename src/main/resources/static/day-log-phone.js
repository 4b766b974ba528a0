// The day log on a phone: each tap is on the phone's disk before it is called kept, goes out when there is signal, and the
// page goes on to the next step meanwhile. Without script, or where the browser keeps nothing, the forms go as ever.
(() => {
  'use strict';
  const phone = window.plumbrowPhone;
  const find = id => document.getElementById(id);
  const box = find('phone');
  const {person, zone, log} = box.dataset;
  const make = (tag, text, more) => Object.assign(document.createElement(tag), {textContent: text}, more);
  const {words, say} = phone.texts();
  const clock = window.plumbrowClock;
  const signing = window.plumbrowSigning(log, say);
  const time = at => new Intl.DateTimeFormat('en-US', {timeZone: zone, hour: 'numeric', minute: '2-digit'})
    .format(at + clock.ahead).replace(/[AP]M/, half => half.toLowerCase());
  const correct = window.plumbrowCorrect(phone, words, say, time);
  const correcting = () => Boolean(find('phone-waiting').querySelector('form'));
  const forms = () => [...document.querySelectorAll('form[data-phone]')];
  const address = form => form.getAttribute('action');
  const kept = Number(document.documentElement.dataset.kept);
  const stays = 'stay' in document.body.dataset;
  let keepsNothing = false;
  let dirty = false;
  let storing = 0; // taps on their way to the phone's disk

  const shapes = {sent: 'done', 'sign-in': 'risk', other: 'risk', busy: 'due', 'no-signal': 'due', refused: 'trouble', queued: 'part'};
  const show = (outcome, text) => {
    box.hidden = false;
    find('phone-shape').firstElementChild.setAttribute('href', '#m-' + shapes[outcome]);
    if (find('phone-state').textContent !== text) find('phone-state').textContent = text;
    find('phone-in').hidden = outcome !== 'sign-in' && outcome !== 'other';
  };
  const mine = one => one.form === log || (one.page ?? one.form).startsWith(log + '/');

  // The button of a line that somebody stands on stays in focus when the lines are drawn anew.
  const focused = () => {
    const line = document.activeElement?.closest('#phone-waiting li');
    const place = line ? [...line.querySelectorAll('button')].indexOf(document.activeElement) : -1;
    return place < 0 ? null : () => find(line.id)?.querySelectorAll('button')[place]?.focus();
  };

  // What is on the phone and not at the server: on its way, typed only, or sent back.
  const list = async () => {
    const all = (await phone.unsent(person)).filter(mine);
    const at = focused();
    // What somebody is putting right just now is not drawn anew under their hands.
    if (!correcting()) find('phone-waiting').replaceChildren(...all.map(one => {
      const line = make('li', '', {id: 'waits-' + (one.number ?? one.form)});
      const away = () => make('button', words.away, {type: 'button', className: 'quiet',
        onclick: () => phone.forget(person, one.form).then(() => location.reload())});
      line.append(make('b', one.title), ', ' + time(one.at) + ': ', one.number && correct.mayBe(one) ? correct.tell(one) + '; ' : '');
      if (one.said) line.append(words.refused + ' ' + one.problems.map(no => no.sentence || words.large).join(' ') + ' ', away());
      else if (one.number) line.append(words.queued + ' ', ...(correct.mayBe(one) ? [putRight(one, line), ' '] : []), make('button', words.withdraw, {type: 'button', className: 'quiet',
        onclick: () => phone.withdraw(one).then(() => location.reload())}));
      else line.append(words.typed);
      return line;
    }));
    at?.();
    find('phone-list').hidden = !all.length && !correcting();
    find('phone-count').textContent = say('count', all.length);
    if (all.some(one => one.said)) {
      find('phone-list').open = true;
      show('refused', words.sentback);
    }
    return all;
  };

  const putRight = (one, line) => make('button', words.correct, {type: 'button', className: 'quiet', onclick: ({target}) => {
    target.disabled = true;
    correct.open(one, line, async done => {
      draw(await list());
      const told = () => show('queued', say('corrected', time(Date.now())));
      if (done) told();
      (find(line.id)?.querySelector('button') ?? find('phone-list').querySelector('summary')).focus();
      if (done && await send() === 'no-signal') told();
      if (!done && !(await list()).length) renew([]);
    });
  }});

  // Where one stands when what waits is counted too. Only the server can say whether a hold point is open.
  const thumb = document.querySelector('.thumbs > .done');
  const online = thumb && {form: thumb.getAttribute('form'), text: thumb.textContent};
  const draw = all => {
    const waits = all.filter(one => one.number && !one.said);
    const turn = waits.findLast(one => one.form === log + '/reverse' || one.form === log + '/reverse-mistake');
    const isTapped = (form, one) => one.form === address(form) && (!form.elements.part || form.elements.part.value === one.fields.part)
      && (!turn || !form.closest('[data-later=reverse]') || one.number > turn.number);
    const isPassed = form => {
      const tapped = waits.findLast(one => isTapped(form, one));
      return Boolean(tapped) && holds(form, tapped.fields);
    };
    const reversed = turn ? turn.form === log + '/reverse' : Boolean(box.dataset.reversing);
    const off = waits.find(one => one.form === log + '/steps/4/done');
    if (off) clock.off(off.at + clock.ahead);
    const set = waits.findLast(one => one.form === log + '/reversal-time');
    if (set) clock.decide(decideBy(set));
    openWith(waits.find(one => one.form === log));
    let here = null;
    for (const part of document.querySelectorAll('.now')) {
      const taps = [...part.querySelectorAll('form[data-tap]')];
      taps.forEach((form, at) => {
        form.hidden = isPassed(form) || ('after' in form.dataset && !taps.slice(0, at).every(isPassed));
        const limits = form.querySelector('[data-limits]');
        if (limits) limits.hidden = form.hidden || !waits.some(one => isTapped(form, one));
      });
      const left = taps.some(form => !form.hidden);
      const open = !here && (part.dataset.later === 'reverse' ? reversed && left : !reversed && (left || !taps.length));
      part.hidden = !open;
      if (open) here = part;
    }
    document.querySelectorAll('[data-reversed]').forEach(part => { part.hidden = !reversed; });
    under(here, waits);
    const now = find('reverse-now');
    if (now) now.hidden = reversed || !(now.dataset.may || off);
  };
  // On the way back the loads wait for readings within their limits; the server looks again, and at all of them together.
  const holds = (form, fields) => [...form.querySelectorAll('[data-reading]')].every(({dataset: {reading, least, most, must}}) => {
    const read = (fields[reading] ?? '').replace(/,/g, '').trim();
    return read !== '' && (!must || read === must) && (!least || (Number(read) >= Number(least) && Number(read) <= Number(most)));
  });
  // The steps of a log that is opened on this phone and not yet at the server.
  const openWith = opening => {
    document.querySelectorAll('[data-opened]').forEach(part => { part.hidden = !opening; });
    const form = find('open-form');
    if (!form) return;
    form.hidden = Boolean(opening);
    document.querySelector('.thumb').hidden = !opening;
    if (!opening || form.dataset.opened) return;
    form.dataset.opened = 'yes';
    const steps = document.querySelector(`template[data-service="${opening.fields.service}"]`);
    if (steps) form.after(steps.content.cloneNode(true));
  };
  // By the usual minutes where none are typed; on the day of the log, which a phone that keeps it lives on.
  const decideBy = ({fields, at}) => {
    const minutes = text => text.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
    const now = new Intl.DateTimeFormat('en-GB', {timeZone: zone, hour: '2-digit', minute: '2-digit'}).format(at + clock.ahead);
    const needed = minutes(fields.neededBy || now) - minutes(now);
    const before = Object.entries({undoMinutes: 20, bringBackMinutes: 15, reserveMinutes: 10})
      .reduce((sum, [field, usual]) => sum + Number(fields[field] || usual), 0);
    return at + clock.ahead + ((needed < -720 ? needed + 1440 : needed) - before) * 60000;
  };
  // The one button at the thumb belongs to the part at which one stands.
  const under = (part, waits) => {
    if (!thumb) return;
    const form = part?.querySelector('form[data-tap]:not([hidden])');
    const own = form?.querySelector('.done');
    const close = !part && waits.length > 0 && find('close-form');
    const closed = waits.some(one => one.form === log + '/close');
    thumb.hidden = closed || (part ? !form : !close && forms().some(one => one.id === online.form && one.id !== 'close-form'));
    thumb.setAttribute('form', own ? form.id ||= 'tap-' + forms().indexOf(form) : close ? 'close-form' : online.form);
    thumb.textContent = own ? own.textContent : close ? thumb.parentElement.dataset.close : online.text;
    if (own) own.parentElement.hidden = true;
  };

  const send = async () => {
    const before = (await phone.waiting(person)).filter(mine);
    if (!before.length) return 'nothing';
    const outcome = await phone.send(person, () => {});
    const all = await list();
    const left = all.filter(one => one.number && !one.said);
    if (!all.some(one => one.said)) show(left.length ? outcome : 'sent', say(left.length ? outcome : 'sent', time(left.at(-1)?.at ?? Date.now())));
    draw(all);
    if (!left.length) renew(all); // also when another page of this phone has sent it
    return outcome;
  };
  // The server's page as it is now; never over what somebody is typing or has just tapped. Nothing can be tapped while it
  // comes: a tap would go down with the page it was made on.
  const renew = all => {
    find('phone-renew').hidden = !dirty && !correcting();
    if (dirty || storing || correcting() || all.some(one => one.said)) return;
    document.querySelector('main').inert = true;
    if (location.pathname === log || stays) location.reload();
    else location.assign(log);
  };

  // A page that one comes back to can be tapped again.
  addEventListener('pagehide', () => { document.querySelector('main').inert = false; });

  const taken = (form, action) => {
    const id = phone.id();
    const fields = Object.fromEntries([...new FormData(form)].filter(([name]) => name !== '_csrf' && name !== 'photo'));
    return {id, person, form: action, title: form.dataset.title, version: Number(fields.version ?? 0), fields: {...fields, entry: id},
      asks: correct.asked(form), shown: location.pathname, at: Date.now()};
  };
  const tap = async (form, action, file) => {
    const sending = {...taken(form, action), ...(file ? {photo: file, name: file.name} : {line: log})};
    try {
      await phone.queue(sending);
      if (action !== address(form)) await phone.forget(person, address(form));
    } finally {
      storing -= 1;
    }
    dirty = false;
    if (file || stays) form.reset();
    show('queued', say('kept', time(sending.at)));
    draw(await list());
    const outcome = await send();
    if (outcome === 'no-signal' && location.pathname !== log && !stays && await window.caches?.match(new URL(log, location).href)) location.assign(log);
  };

  document.addEventListener('submit', event => {
    const {target: form, submitter} = event;
    if (!form.matches('form[data-phone]')) return;
    const file = form.elements.photo?.files[0];
    if (keepsNothing || (form.elements.photo && !file)) return;
    event.preventDefault();
    storing += 1;
    // A tap that comes before the phone's store is open waits for it, instead of going where there is no signal.
    opened.then(async () => {
      const wrong = signing.against(form, (await phone.waiting(person)).filter(mine));
      if (wrong) {
        storing -= 1;
        return signing.mark(form, wrong);
      }
      const tapped = tap(form, submitter?.getAttribute('formaction') ?? address(form), file);
      signing.unmark(form);
      await tapped;
    })
      .catch(() => {
        keepsNothing = true;
        form.requestSubmit(submitter);
      });
  });
  document.addEventListener('input', ({target: {form}}) => {
    if (!form?.matches('form[data-phone]')) return;
    dirty = true;
    // What is typed before the phone's store is open waits for it.
    if (!form.elements.photo) opened.then(() => phone.keep(taken(form, address(form)))).catch(() => {});
  });

  const fill = (form, fields) => [...form.elements].filter(one => one.name && one.type !== 'hidden' && one.type !== 'file')
    .forEach(one => {
      if (one.type === 'radio' || one.type === 'checkbox') one.checked = fields[one.name] === one.value;
      else one.value = fields[one.name] ?? one.value;
    });
  const restore = async () => {
    for (const form of forms()) {
      const draft = await phone.draft(person, address(form));
      if (draft?.fields && (!draft.fields.part || draft.fields.part === form.elements.part?.value)) {
        fill(form, draft.fields);
        dirty = true;
      }
    }
  };

  const open = async () => {
    find('open-form')?.querySelectorAll('[type=radio]').forEach(one => { one.required = true; });
    await restore();
    draw(await list());
  };
  const opened = open();

  const copies = async () => {
    const files = [...document.querySelectorAll('link[rel=stylesheet], link[rel=icon], script[src]')].map(one => one.href || one.src);
    const pages = ['', '/wrong', '/reversal-time', '/people', '/near-miss'].map(one => log + one).map(one => new URL(one, location).href);
    const entries = await phone.missing([...document.querySelectorAll('.steps a[href*="/entries/"]')].map(one => one.href));
    const there = await phone.copies([log], [...pages, ...entries, ...files]);
    if (there === null) find('phone-pages').textContent = words.nohttps;
    if (!there) return;
    find('phone-pages').textContent = words.pages;
    find('phone-home').hidden = matchMedia('(display-mode: standalone)').matches;
  };

  // Some browsers let the page offer it; in the others it is in their menu.
  addEventListener('beforeinstallprompt', event => {
    event.preventDefault();
    const offer = find('phone-home').querySelector('button');
    offer.hidden = false;
    offer.onclick = () => event.prompt();
  });
  addEventListener('appinstalled', () => { find('phone-home').hidden = true; });

  const begin = async () => {
    box.hidden = false;
    if (kept) find('phone-old').textContent = say('old', time(kept));
    const wrong = Math.round(Math.abs(clock.ahead) / 60000);
    if (wrong) find('phone-clock').textContent = say(clock.ahead > 0 ? 'behind' : 'fast', wrong);
    try {
      await opened;
    } catch {
      keepsNothing = true;
      return show('other', words.keepsnothing);
    }
    await phone.keepSending(send);
    if (!kept) copies().catch(() => {});
  };
  begin();
})();
