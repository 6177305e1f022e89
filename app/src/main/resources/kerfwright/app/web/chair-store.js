// What must not be lost: the state of a run and the entries not yet in the record, in this device's
// database. An entry and the state that says it was made are written in one transaction. What the
// device cannot keep stays on this page, is counted as such, and is tried again until it is kept or
// sent.
const DATABASE = "chair";
const RUNS = "runs";
const OUT = "out";
const OLD_STATE = "chair.run.";
const OLD_OUT = "chair.out.";
const KEPT_MS = 14 * 24 * 3600 * 1000;
const PAGES = "chairside-1";

let database = null;
const entries = new Map();
const unkept = new Set();
let unsaved = null;

let line = Promise.resolve();

/** One piece of work after the other, so that none reads what another is about to change. */
function inTurn(work) {
  const mine = line.then(work);
  line = mine.catch(() => {});
  return mine;
}

function done(request) {
  return new Promise((yes, no) => {
    request.onsuccess = () => yes(request.result);
    request.onerror = () => no(request.error);
    request.onblocked = () => no(new Error("blocked"));
  });
}

async function connect() {
  const request = indexedDB.open(DATABASE, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore(RUNS);
    request.result.createObjectStore(OUT);
  };
  database = await done(request);
  database.onclose = () => { database = null; };
}

/** Runs the changes in one transaction; true when the device has written all of them. */
async function write(changes) {
  try {
    if (!database) await connect();
    await new Promise((yes, no) => {
      const work = database.transaction([RUNS, OUT], "readwrite", { durability: "strict" });
      work.oncomplete = yes;
      work.onabort = () => no(work.error || new Error("not written"));
      changes(work.objectStore(RUNS), work.objectStore(OUT));
    });
    return true;
  } catch (full) {
    return false;
  }
}

async function read(what) {
  if (!database) await connect();
  const work = database.transaction([RUNS, OUT], "readonly");
  return what(work.objectStore(RUNS), work.objectStore(OUT));
}

/** Opens the store, and tells what it holds of this run. */
export async function open(run) {
  try {
    await takeOver();
    await refresh();
    await tidy(run);
    return (await read((runs) => done(runs.get(run)))) || null;
  } catch (unusable) {
    return null;
  }
}

/** What was kept in the small storage of earlier versions moves here before it is let go there. */
async function takeOver() {
  for (const key of Object.keys(localStorage)) {
    const of = [OLD_STATE, OLD_OUT].find((start) => key.startsWith(start));
    if (!of) continue;
    const value = JSON.parse(localStorage.getItem(key));
    const moved = await write((runs, out) =>
      (of === OLD_OUT ? out : runs).put(value, key.substring(of.length)));
    if (moved) localStorage.removeItem(key);
    else if (of === OLD_OUT) hold(value);
  }
}

async function refresh() {
  const kept = await read((runs, out) => done(out.getAll()));
  for (const id of [...entries.keys()]) if (!unkept.has(id)) entries.delete(id);
  kept.forEach((one) => entries.set(one.id, one));
}

/** Forgets runs of long ago and their pages; never one with entries that wait. */
async function tidy(run, all) {
  const busy = new Set([run, ...waiting().map((one) => one.run)]);
  const old = (state) => all || !(Math.abs(Date.now() - (state.savedAt || 0)) <= KEPT_MS);
  await write((runs) => {
    runs.openCursor().onsuccess = (event) => {
      const at = event.target.result;
      if (!at) return;
      if (!busy.has(at.key) && old(at.value)) at.delete();
      at.continue();
    };
  });
  if (!globalThis.caches) return;
  const keys = await read((runs) => done(runs.getAllKeys()));
  const known = new Set([...keys, ...busy]);
  const pages = await caches.open(PAGES);
  for (const page of await pages.keys()) {
    const path = new URL(page.url).pathname;
    if (path.startsWith("/chairside/run/") && !known.has(path.split("/").pop())) {
      await pages.delete(page);
    }
  }
}

/** Of a run that is through and in the record the marks are enough: the sheet comes with its page. */
function slim(run, state) {
  const through = state.sheet && state.sheet.steps.every((step) => (state.steps[step.order] || {}).entry);
  const waits = waiting().some((one) => one.run === run);
  const kept = { ...state, savedAt: Date.now() };
  if (through && !waits && !state.unsettled) delete kept.sheet;
  return kept;
}

/** Writes a state, with changes of entries if there are any; room is made where it lacks. */
async function keep(run, state, changes = () => {}) {
  const all = (runs, out) => {
    runs.put(slim(run, state), run);
    changes(out);
  };
  let kept = await write(all);
  if (!kept && database) {
    await tidy(run, true).catch(() => {});
    kept = await write(all);
  }
  unsaved = kept ? null : { run, state };
  return kept;
}

export function save(run, state) {
  return inTurn(() => keep(run, state));
}

function hold(entry) {
  entries.set(entry.id, entry);
  unkept.add(entry.id);
}

/** Makes an entry; false where it stands on this page alone. */
export function log(entry, run, state) {
  hold(entry);
  return inTurn(async () => {
    const kept = await keep(run, state, (out) => out.put(entry, entry.id));
    if (kept) unkept.delete(entry.id);
    return kept;
  });
}

/** Takes an entry back that nobody has sent. */
export function takeBack(id, run, state) {
  return inTurn(() => {
    entries.delete(id);
    unkept.delete(id);
    return keep(run, state, (out) => out.delete(id));
  });
}

async function put(entry) {
  entries.set(entry.id, entry);
  if (await write((runs, out) => out.put(entry, entry.id))) unkept.delete(entry.id);
  else unkept.add(entry.id);
}

async function drop(id) {
  entries.delete(id);
  unkept.delete(id);
  // where it stays, it is sent again, and the record knows it by its id
  await write((runs, out) => out.delete(id));
}

/** Entries that wait, in the order they were made. */
export function waiting() {
  return [...entries.values()].sort((a, b) => a.at.localeCompare(b.at) || a.step - b.step);
}

/** How many entries stand on this page alone, and whether its state does. */
export function onThisPageAlone() {
  return { entries: unkept.size, state: unsaved !== null };
}

/** Tries to keep what could not be kept. */
async function settle() {
  if (unsaved) await keep(unsaved.run, unsaved.state);
  for (const id of [...unkept]) await put(entries.get(id));
}

let sending = false;

/**
 * Sends what waits, save what may still be taken back. An entry leaves the outbox only when the
 * record says that it stands. Tells whether the connection held.
 */
export async function send(now) {
  if (sending) return { connected: null };
  sending = true;
  try {
    if (!now) {
      await inTurn(async () => {
        await settle();
        await refresh().catch(() => {});
      });
    }
    const held = (one) => !now && !unkept.has(one.id) && (one.holdUntil || 0) > Date.now();
    const due = waiting().filter((one) => !one.refused && !held(one));
    if (due.length === 0) return { connected: null };
    const answer = await fetch("/chairside/log", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      keepalive: true,
      body: JSON.stringify(due.slice(0, 50)),
    });
    if (answer.status === 401) return { connected: false, locked: true };
    if (!answer.ok) return { connected: false };
    const told = await answer.json();
    await inTurn(async () => {
      for (const one of told) {
        const entry = due.find((sent) => sent.id === one.id);
        if (one.stands) await drop(one.id);
        else if (entry) await put({ ...entry, refused: one.reason });
      }
    });
    return { connected: true };
  } catch (lost) {
    return { connected: false };
  } finally {
    sending = false;
  }
}

/** From now on no entry is taken back. */
export function release() {
  return change((one) => one.holdUntil, { holdUntil: 0 });
}

function change(which, to) {
  return inTurn(async () => {
    for (const one of waiting()) if (which(one)) await put({ ...one, ...to });
  });
}

/** Entries the record refused are tried again when somebody asks for it. */
export function again(which = () => true) {
  return change((one) => one.refused && which(one), { refused: "" });
}

/** A random UUID, also where the page is not a secure context. */
export function newId() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const b = crypto.getRandomValues(new Uint8Array(16));
  b[6] = (b[6] & 15) | 64;
  b[8] = (b[8] & 63) | 128;
  const hex = [...b].map((one) => one.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}
