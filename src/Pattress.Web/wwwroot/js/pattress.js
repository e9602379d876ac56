// The few things that only the browser can do. No request is ever made from here.

export function placeOn(elementId, clientX, clientY) {
  const svg = document.getElementById(elementId)?.querySelector('svg');
  if (!svg) return [0, 0];
  const at = new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [at.x, at.y];
}

export function room() {
  const main = document.querySelector('main');
  const letter = parseFloat(getComputedStyle(document.documentElement).fontSize) * 0.8;
  if (!main) return [Math.max(240, document.documentElement.clientWidth - 24), letter];
  const style = getComputedStyle(main);
  return [main.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight), letter];
}

let waiting = 0;

export function onResize(resized) {
  addEventListener('resize', () => {
    clearTimeout(waiting);
    waiting = setTimeout(resized, 120);
  });
}

export function openDialog(elementId) {
  const dialog = document.getElementById(elementId);
  if (dialog && !dialog.open) dialog.showModal();
}

export function closeDialog(elementId) {
  document.getElementById(elementId)?.close();
}

export function save(fileName, text) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

export async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

export function language(tag, title) {
  document.documentElement.lang = tag;
  document.title = title;
}

// Jobs are kept in IndexedDB: store "jobs" by id, store "desk" for which one was open.

let opened;

function database() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open('pattress', 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('jobs', { keyPath: 'id' });
      request.result.createObjectStore('desk');
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
  opened.catch(() => { opened = undefined; });
  return opened;
}

// Resolves when the transaction is complete, which is when the data is on the device.
async function write(store, change) {
  const db = await database();
  await new Promise((resolve, reject) => {
    const transaction = db.transaction(store, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
    transaction.onerror = () => reject(transaction.error);
    change(transaction.objectStore(store));
  });
}

async function read(store, ask) {
  const db = await database();
  return await new Promise((resolve, reject) => {
    const request = ask(db.transaction(store).objectStore(store));
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export async function keep(id, title, text) {
  await write('jobs', s => s.put({ id, title, text, at: Date.now() }));
}

export async function kept(id) {
  return (await read('jobs', s => s.get(id)))?.text ?? null;
}

export async function keptJobs() {
  const jobs = await read('jobs', s => s.getAll());
  return jobs.sort((a, b) => b.at - a.at).map(j => `${j.id}\t${j.title.replace(/\s/g, ' ')}`).join('\n');
}

export async function forget(id) {
  await write('jobs', s => s.delete(id));
}

export async function lastOpened() {
  return (await read('desk', s => s.get('last'))) ?? null;
}

export async function setLastOpened(id) {
  await write('desk', s => s.put(id, 'last'));
}
