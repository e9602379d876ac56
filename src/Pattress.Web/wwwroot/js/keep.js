// What is kept on this device, in IndexedDB: "jobs" by id, "desk" for which one was open, "photos" of walls.

let opened, told = () => { };
const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel('pattress') : null;
tabs?.addEventListener('message', event => told(event.data));

// Says when another tab has kept a job.
export function onKept(heard) {
  told = heard;
}

function database() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open('pattress', 2);
    request.onupgradeneeded = event => {
      if (event.oldVersion < 1) {
        request.result.createObjectStore('jobs', { keyPath: 'id' });
        request.result.createObjectStore('desk');
      }
      request.result.createObjectStore('photos', { keyPath: 'id' }).createIndex('wall', 'wall');
    };
    request.onsuccess = () => {
      // Another tab brings a newer version: let go, and open again at the next need.
      request.result.onversionchange = () => { request.result.close(); opened = undefined; };
      resolve(request.result);
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
  opened.catch(() => { opened = undefined; });
  return opened;
}

// Resolves when the transaction is complete, which is when the data is on the device.
async function write(store, change) {
  const db = await database();
  return await new Promise((resolve, reject) => {
    const transaction = db.transaction(store, 'readwrite', { durability: 'strict' });
    let answer, refused;
    transaction.oncomplete = () => resolve(answer);
    transaction.onabort = () => reject(refused ?? named(transaction.error));
    change(transaction.objectStore(store), a => { answer = a; }, why => { refused = why; transaction.abort(); });
  });
}

// The name first, since only the text of an error reaches the app.
function named(error) {
  return new Error(`${error?.name ?? 'aborted'}: ${error?.message ?? ''}`);
}

async function read(store, ask) {
  const db = await database();
  return await new Promise((resolve, reject) => {
    const request = ask(db.transaction(store).objectStore(store));
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(named(request.error));
  });
}

// Keeps a job if nobody kept it since revision base; base below 0 keeps it whatever there is. Gives the new revision.
export async function keep(id, title, text, standing, base) {
  const revision = await write('jobs', (store, done, refuse) => {
    const asked = store.get(id);
    asked.onsuccess = () => {
      const now = asked.result?.revision ?? 0;
      if (base >= 0 && now !== base) return refuse(new Error('elsewhere'));
      try { store.put({ id, title, text, standing, revision: now + 1, at: Date.now() }); } catch (error) { return refuse(named(error)); }
      done(now + 1);
    };
  });
  tabs?.postMessage(id);
  return revision;
}

export async function kept(id) {
  return (await read('jobs', s => s.get(id)))?.text ?? null;
}

export async function revision(id) {
  return (await read('jobs', s => s.get(id)))?.revision ?? 0;
}

export async function keptJobs() {
  const jobs = await read('jobs', s => s.getAll());
  const word = text => (text ?? '').replace(/\s/g, ' ');
  return jobs.sort((a, b) => b.at - a.at).map(j => [j.id, j.at, word(j.standing), word(j.title)].join('\t')).join('\n');
}

// A job, and the photos of its walls.
export async function forget(id) {
  await write('jobs', s => s.delete(id));
  await write('photos', s => {
    s.index('wall').openCursor(IDBKeyRange.bound(id + '/', id + '/\uffff')).onsuccess = event => {
      const photo = event.target.result;
      photo?.delete();
      photo?.continue();
    };
  });
}

export async function lastOpened() {
  return (await read('desk', s => s.get('last'))) ?? null;
}

export async function setLastOpened(id) {
  await write('desk', s => s.put(id, 'last'));
}

// The user's own trials from all jobs, as their document.
export async function keptTrials() {
  return (await read('desk', s => s.get('trials'))) ?? null;
}

export async function keepTrials(text) {
  await write('desk', s => s.put(text, 'trials'));
}

// A photo: { id, wall, blob, width, height, marks }, where wall is "job/wall" and marks are the two scaled points.
export async function keepPhoto(photo) {
  await write('photos', s => s.put(photo));
}

export async function photos(wall) {
  return await read('photos', s => s.index('wall').getAll(wall));
}

export async function forgetPhoto(id) {
  await write('photos', s => s.delete(id));
}
