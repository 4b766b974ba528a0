// Lets the survey or the day log of a project open without signal: the network first, else the copy of when there was signal,
// marked with its time. Touches nothing else; the pages of other rooms go by.
const PAGES = 'plumbrow-pages';
const FILES = 'plumbrow-files';
const DAYS = 14;
const KEPT = 'x-kept-at';

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));

const within = (seconds, work) => Promise.race([work, new Promise((_, late) => setTimeout(late, seconds * 1000))]);

const marked = async (copy, change) => {
  const headers = new Headers(copy.headers);
  ['content-encoding', 'content-length'].forEach(name => headers.delete(name));
  return new Response(change(await copy.text(), headers), {status: 200, headers});
};

const page = async request => {
  const pages = await caches.open(PAGES);
  try {
    const answer = await within(8, fetch(request));
    if (answer.ok && !answer.redirected) {
      const at = String(Date.now());
      await pages.put(request.url, await marked(answer.clone(), (text, headers) => {
        headers.set(KEPT, at);
        return text;
      }));
    }
    return answer;
  } catch {
    const copy = await pages.match(request.url);
    const at = Number(copy?.headers.get(KEPT));
    if (!copy || Date.now() - at > DAYS * 86400000) return Response.error();
    return marked(copy, text => text.replace('<html', '<html data-kept="' + at + '"'));
  }
};

const file = async request => {
  const files = await caches.open(FILES);
  try {
    const answer = await within(8, fetch(request));
    if (answer.ok) await files.put(request.url, answer.clone());
    return answer;
  } catch {
    return await files.match(request.url) ?? Response.error();
  }
};

const answered = request => {
  const {origin, pathname, search} = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return null;
  if (/^\/projects\/[^/]+\/(survey(\/[a-z-]+)?|day-log(\/(wrong|reversal-time|people|near-miss|entries\/[0-9a-f-]{36}))?|day-one)$|^\/crews\/[^/]+\/(week|reports\/[^/]+\/[\d-]+)$/.test(pathname) && !search) return page(request);
  return /\.(css|js|svg|png)$/.test(pathname) ? file(request) : null;
};

self.addEventListener('fetch', event => {
  const answer = answered(event.request);
  if (answer) event.respondWith(answer);
});

// A page asks for copies of these addresses, and is told when there are.
self.addEventListener('message', event => event.waitUntil(
  Promise.allSettled(event.data.map(one => answered(new Request(one))))
    .then(() => event.ports[0].postMessage('kept'))));
