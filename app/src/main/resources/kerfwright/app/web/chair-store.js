// What must not be lost: the state of a run and the entries not yet in the record. Every entry has a
// place of its own, so that two open pages cannot overwrite each other's.
const STATE = "chair.run.";
const OUT = "chair.out.";
const KEPT_MS = 14 * 24 * 3600 * 1000;

export function load(run) {
  const text = localStorage.getItem(STATE + run);
  return text ? JSON.parse(text) : null;
}

export function save(run, state) {
  localStorage.setItem(STATE + run, JSON.stringify({ ...state, savedAt: Date.now() }));
}

/** Forgets runs of long ago; entries are never forgotten. */
export function tidy() {
  for (const key of Object.keys(localStorage)) {
    if (key.startsWith(STATE)) {
      const savedAt = JSON.parse(localStorage.getItem(key)).savedAt || 0;
      if (Date.now() - savedAt > KEPT_MS) localStorage.removeItem(key);
    }
  }
}

export function put(entry) {
  localStorage.setItem(OUT + entry.id, JSON.stringify(entry));
}

export function drop(id) {
  localStorage.removeItem(OUT + id);
}

/** Entries that wait, in the order they were made. */
export function waiting() {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(OUT))
    .map((key) => JSON.parse(localStorage.getItem(key)))
    .sort((a, b) => a.at.localeCompare(b.at) || a.step - b.step);
}

let sending = false;

/**
 * Sends what waits, save what may still be taken back. An entry leaves the outbox only when the
 * record says that it stands. Tells what is left and whether the connection held.
 */
export async function send(now) {
  const due = waiting().filter((one) => !one.refused && (now || (one.holdUntil || 0) <= Date.now()));
  if (due.length === 0 || sending) return { connected: null };
  sending = true;
  try {
    const answer = await fetch("/chairside/log", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      keepalive: true,
      body: JSON.stringify(due.slice(0, 50)),
    });
    if (!answer.ok) return { connected: false };
    for (const one of await answer.json()) {
      if (one.stands) {
        drop(one.id);
      } else {
        const entry = due.find((sent) => sent.id === one.id);
        if (entry) put({ ...entry, refused: one.reason });
      }
    }
    return { connected: true };
  } catch (lost) {
    return { connected: false };
  } finally {
    sending = false;
  }
}

/** Entries the record refused are tried again when somebody asks for it. */
export function again() {
  waiting().filter((one) => one.refused).forEach((one) => put({ ...one, refused: "" }));
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
