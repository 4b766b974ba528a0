// What a phone keeps until the server has it: drafts by person and form, and sendings in their order. Knows no page.
window.plumbrowPhone = (() => {
  'use strict';
  let opened;
  const open = () => opened ||= new Promise((done, failed) => {
    const asked = indexedDB.open('plumbrow', 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore('drafts', {keyPath: ['person', 'form']});
      asked.result.createObjectStore('sendings', {keyPath: 'number', autoIncrement: true});
    };
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => failed(asked.error);
  });

  // One transaction; the requests that work returns are answered when it is on the disk.
  const step = async work => {
    const db = await open();
    return new Promise((done, failed) => {
      const all = db.transaction(['drafts', 'sendings'], 'readwrite', {durability: 'strict'});
      const asked = work(all.objectStore('drafts'), all.objectStore('sendings'));
      all.oncomplete = () => done(Array.isArray(asked) ? asked.map(one => one.result) : asked?.result);
      all.onabort = () => failed(all.error);
    });
  };
  const of = person => one => one.person === person;

  // What the server answered decides in one transaction what the phone may forget.
  const settle = (one, answer) => step((drafts, sendings) => {
    const stored = answer.said === 'stored' || answer.said === 'already';
    sendings.get(one.number).onsuccess = ({target: {result: now}}) => {
      // Changed while it was on its way: it goes again, under its id.
      if (now && now.changed !== one.changed) return;
      sendings.delete(one.number);
      settled(one, answer, stored, drafts, sendings);
    };
  });
  const settled = (one, answer, stored, drafts, sendings) => {
    if (one.photo) {
      if (!stored) drafts.put({...one, ...answer, at: one.at, page: one.form, form: one.form + '#' + one.id});
      return;
    }
    drafts.get([one.person, one.form]).onsuccess = ({target: {result: draft}}) => {
      sendings.getAll().onsuccess = ({target: {result: all}}) => {
        const later = all.filter(of(one.person)).filter(next => next.form === one.form);
        if (stored) {
          // What was written on top of this one stands on the version that it has made.
          later.filter(next => next.version === one.version)
            .forEach(next => sendings.put({...next, version: answer.version}));
          if (!draft?.fields) drafts.put({person: one.person, form: one.form, sent: Date.now()});
          else if (draft.version === one.version) drafts.put({...draft, version: answer.version});
        } else if (!later.length) {
          const typed = draft?.fields ? draft : one;
          // The time stays that of what was typed; theirs, where there is a conflict, is a text.
          drafts.put({...one, ...typed, ...answer, at: typed.at, theirsAt: answer.at, now: answer.version, version: typed.version});
        }
      };
    };
  };

  const ask = async (address, seconds, options) => {
    try {
      const reply = await fetch(address, {...options, signal: AbortSignal.timeout(seconds * 1000)});
      const json = (reply.headers.get('content-type') || '').startsWith('application/json');
      return {status: reply.status, json: json ? await reply.json() : null};
    } catch {
      return null;
    }
  };
  // A page in place of an answer: the sign-in page, a token that has ended, or trouble on the way.
  const held = reply => !reply ? 'no-signal' : reply.status >= 500 ? 'busy' : 'sign-in';

  const body = one => {
    const form = one.photo ? new FormData() : new URLSearchParams();
    Object.entries({...one.fields, sending: one.id, person: one.person, version: one.version ?? 0, then: one.then ?? '',
      written: new Date(one.at).toISOString(), sent: new Date().toISOString()}).forEach(field => form.append(...field));
    if (one.photo) form.append('photo', one.photo, one.name);
    return form;
  };

  const waiting = async person => (await step((drafts, sendings) => sendings.getAll())).filter(of(person));

  // What must keep its order is of one line; where one of it is stuck, what comes after it waits.
  const line = one => one.line ?? one.form;
  const sendAll = async (person, told) => {
    const stuck = new Set();
    let here;
    for (;;) {
      const one = (await waiting(person)).find(next => !stuck.has(line(next)));
      if (!one) return stuck.size ? 'busy' : 'sent';
      here ||= await ask('/phone', 15);
      if (!here?.json) return held(here);
      if (here.json.person !== person) return 'other';
      const reply = await ask(one.form + '/sending', one.photo ? 180 : 30,
        {method: 'POST', body: body(one), headers: {[here.json.header]: here.json.token}});
      if (reply?.status === 413) reply.json = {said: 'refused', problems: [{field: '', sentence: ''}]};
      if (reply?.json?.said === 'not-theirs') return 'other';
      if (reply?.json?.said) {
        await settle(one, reply.json);
        told(one, reply.json);
      } else if (held(reply) === 'busy') {
        stuck.add(line(one));
      } else {
        return held(reply);
      }
    }
  };

  const pause = seconds => new Promise(over => setTimeout(over, seconds * 1000));
  // Asked of the worker itself: a page that was loading while the worker began is not its own, and fetches past it. The newest
  // is asked, though it may not have begun: one that another takes the place of just then never answers.
  const copied = (worker, wanted) => new Promise(done => {
    const {port1, port2} = new MessageChannel();
    port1.onmessage = done;
    worker.postMessage(wanted, [port2]);
  });

  // One page of this phone sends at a time; the server would bear two.
  const alone = work => navigator.locks ? navigator.locks.request('plumbrow-sending', work) : work();

  return {
    draft: (person, form) => step(drafts => drafts.get([person, form])),
    keep: draft => step(drafts => drafts.put(draft)),
    forget: (person, form) => step(drafts => drafts.delete([person, form])),
    // From here on it is on its way, and no draft any more.
    queue: sending => step((drafts, sendings) => {
      drafts.delete([sending.person, sending.form]);
      return sendings.add(sending);
    }),
    replace: sending => step((drafts, sendings) => {
      sendings.get(sending.number).onsuccess = ({target}) => target.result && sendings.put(sending);
    }),
    // What is otherwise by now, with the time of the change as changed; also when the first was sent meanwhile.
    change: sending => step((drafts, sendings) => sendings.put(sending)),
    // What was tapped and is not so, before it is sent. If it is on its way right now, that ends first.
    withdraw: sending => alone(() => step((drafts, sendings) => sendings.delete(sending.number))),
    waiting,
    unsent: async person => {
      const [drafts, sendings] = await step((d, s) => [d.getAll(), s.getAll()]);
      return [...drafts.filter(one => one.fields || one.photo), ...sendings].filter(of(person));
    },
    throwAway: person => step((drafts, sendings) => {
      [drafts, sendings].forEach(store => store.openCursor().onsuccess = ({target: {result: at}}) => {
        if (at?.value.person === person) at.delete();
        at?.continue();
      });
    }),
    send: (person, told) => alone(() => sendAll(person, told)),
    // Now, and whenever there may be signal again. It listens first: signal that comes back during the first try is not missed.
    keepSending: send => {
      const again = () => document.visibilityState === 'visible' && send();
      addEventListener('online', again);
      document.addEventListener('visibilitychange', again);
      setInterval(again, 20000);
      return send();
    },
    // Copies of these addresses for later: whether all are there; null where this page's own address does not allow it. The
    // first of the scopes is this page's. What was too slow is asked for again: without it the page does not open where there
    // is no signal.
    copies: async (scopes, wanted) => {
      if (!navigator.serviceWorker) return null;
      const [place] = await Promise.all([...new Set(scopes)].map(scope => navigator.serviceWorker.register('/phone-worker.js', {scope})));
      for (let tries = 0; tries < 6; tries++) {
        if (tries) await pause(5);
        await Promise.race([copied(place.installing || place.waiting || place.active, wanted), pause(12)]);
        if ((await Promise.all(wanted.map(one => caches.match(one)))).every(Boolean)) return true;
      }
      return false;
    },
    missing: async addresses => {
      if (!window.caches) return addresses;
      const there = await Promise.all(addresses.map(one => caches.match(one)));
      return addresses.filter((one, i) => !there[i]);
    },
    // What this page says, from its template.
    texts: () => {
      const words = Object.fromEntries([...document.getElementById('phone-words').content.children]
        .map(one => [one.dataset.word, one.textContent]));
      return {words, say: (word, ...values) => values.reduce((text, value, i) => text.replaceAll('{' + i + '}', value), words[word])};
    },
    id: () => crypto.randomUUID?.() ?? '10000000-1000-4000-8000-100000000000'.replace(/[018]/g,
      digit => (digit ^ crypto.getRandomValues(new Uint8Array(1))[0] & 15 >> digit / 4).toString(16))
  };
})();
