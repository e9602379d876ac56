// The app on this device: kept for use without a signal, a new version only when it is asked for.

let waiting, told = () => { };

export async function install(newer) {
  told = newer;
  if (!('serviceWorker' in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register('service-worker.js', { updateViaCache: 'none' });
    look(registration);
    registration.addEventListener('updatefound', () => look(registration));
    navigator.serviceWorker.ready.then(r => r.active?.postMessage('rest'));
    addEventListener('visibilitychange', () => { if (!document.hidden) registration.update().catch(() => { }); });
  } catch { }
}

function look(registration) {
  if (registration.waiting && navigator.serviceWorker.controller) offer(registration.waiting);
  const worker = registration.installing;
  worker?.addEventListener('statechange', () => {
    if (worker.state === 'installed' && navigator.serviceWorker.controller) offer(worker);
  });
}

function offer(worker) {
  waiting = worker;
  told();
}

export function take() {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting?.postMessage('take');
}

// Asks the browser not to clear what is kept here. Asked once something of one's own is kept.
export async function persist() {
  try { return await navigator.storage?.persist?.() ?? false; } catch { return false; }
}

// What is kept and what there is room for, bytes; noughts where the browser does not say.
export async function room() {
  try {
    const told = await navigator.storage.estimate();
    return { usage: told.usage ?? 0, quota: told.quota ?? 0, persisted: await navigator.storage.persisted() };
  } catch { return { usage: 0, quota: 0, persisted: false }; }
}

export function theme(name) {
  if (name === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = name;
  try { localStorage.setItem('pattress-theme', name === 'auto' ? '' : name); } catch { }
}

export function themeNow() {
  return document.documentElement.dataset.theme || 'auto';
}
