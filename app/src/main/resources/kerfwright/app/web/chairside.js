// A run at the chair: begins, times, logs and swaps steps. Whatever is done is written to this
// device first and sent to the record when the connection is there.
import * as store from "./chair-store.js";
import { listen } from "./chair-keys.js";
import { beep, soundOff, soundOn } from "./chair-pace.js";
import * as show from "./chair-show.js";
import { differs } from "./chair-differs.js";
import { handpieces } from "./chair-handpiece.js";
import { swaps } from "./chair-swap.js";

const HOLD_MS = 6000;
const SEND_EVERY_MS = 4000;
const one = (id) => document.getElementById(id);
const run = document.body.dataset.run;
const served = {
  version: Number(document.body.dataset.version),
  sheet: JSON.parse(one("sheet").value),
};

let state = await store.open(run);
if (state && !state.sheet) state.sheet = served.sheet;
if (!state) {
  state = {
    version: served.version,
    sheet: served.sheet,
    at: 0,
    steps: {},
    out: [],
    by: document.body.dataset.by,
    sound: false,
  };
} else if (served.version > state.version && Object.keys(state.steps).length === 0) {
  state = { ...state, version: served.version, sheet: served.sheet };
}
// who did it is whoever is signed in; what they logged before is tried again
const signed = document.body.dataset.signed;
if (signed) {
  state.by = signed;
  await store.again((entry) => entry.by === signed);
}
// what another device has logged of this run stands here as logged
for (const done of JSON.parse(one("done").value)) {
  const of = state.steps[done.order] || (state.steps[done.order] = {});
  if (of.entry) continue;
  Object.assign(of, { entry: done.entry, item: done.item, handpiece: done.handpiece, spentMs: done.spentMs });
  const step = state.sheet.steps.find((each) => each.order === done.order);
  if (step) state.handpieces = { ...state.handpieces, [step.handpieceId]: done.handpiece };
}
const open = state.sheet.steps.findIndex((step) => !(state.steps[step.order] || {}).entry);
if (state.steps[now().order]?.entry && open > state.at) state.at = open;
let last = { where: "", cutting: true };
let lost = false;
let locked = false;
let logging = false;
let undoTold = false;

function keep() {
  store.save(run, state).then(link);
}

function now() {
  return state.sheet.steps[state.at];
}

function mine() {
  return state.steps[now().order] || (state.steps[now().order] = {});
}

function elapsedS(of) {
  const running = of.begunAt ? Date.now() - of.begunAt : 0;
  return ((of.spentMs || 0) + running) / 1000;
}

function go(index) {
  stopClock();
  state.at = Math.max(0, Math.min(state.sheet.steps.length - 1, index));
  one("told").textContent = "";
  alarm("");
  keep();
  draw();
}

function stopClock() {
  const of = mine();
  if (of.begunAt) {
    of.spentMs = (of.spentMs || 0) + Date.now() - of.begunAt;
    delete of.begunAt;
  }
}

function forward() {
  const of = mine();
  if (of.blocked) return;
  if (of.entry) {
    if (state.at + 1 < state.sheet.steps.length) go(state.at + 1);
    else finish();
  } else if (of.begunAt) {
    log();
  } else {
    release();
    of.begunAt = Date.now();
    alarm("");
    keep();
    draw();
  }
}

function back() {
  if (mine().begunAt) {
    stopClock();
    keep();
    draw();
  } else if (state.at > 0) {
    go(state.at - 1);
  }
}

/**
 * Writes the step down: on this device first, in the record a moment later, so that it can be taken
 * back. The step counts as logged when the device has written it; where the device cannot, it is
 * sent at once and stays on this page until the record has it.
 */
async function log() {
  const step = now();
  const of = mine();
  if (of.entry || of.blocked || logging) return;
  if (!step.item) {
    alarm(show.say("unknownItem", step.label));
    return;
  }
  stopClock();
  const seconds = Math.round(elapsedS(of) * 10) / 10;
  const entry = {
    id: store.newId(),
    run,
    case: state.sheet.case,
    tooth: state.sheet.tooth,
    step: step.order,
    item: step.item,
    handpiece: which.chosen(step),
    setRpm: step.setRpm,
    totalSeconds: seconds > 0 ? seconds : null,
    mm3: step.mm3,
    by: state.by,
    at: new Date().toISOString(),
    holdUntil: Date.now() + HOLD_MS,
  };
  logging = true;
  of.entry = entry.id;
  of.item = step.item;
  of.handpiece = entry.handpiece;
  of.loggedAt = state.at;
  state.last = { id: entry.id, order: step.order };
  if (state.at + 1 < state.sheet.steps.length) state.at += 1;
  const keeping = store.log(entry, run, state);
  link();
  const kept = await keeping;
  logging = false;
  draw();
  one("told").focus({ preventScroll: true });
  if (!kept) send();
}

/** Writes down what happened beside the cuts, as safely as a step. */
async function event(what, about) {
  const entry = {
    id: store.newId(),
    run,
    step: now().order,
    event: what,
    label: "",
    ...about,
    by: state.by,
    at: new Date().toISOString(),
  };
  await store.log(entry, run, state);
  send();
}

function takeBack() {
  const waits = state.last && store.waiting().find((entry) => entry.id === state.last.id);
  if (!waits || (waits.holdUntil || 0) <= Date.now()) return;
  const index = state.sheet.steps.findIndex((step) => step.order === state.last.order);
  const of = state.steps[state.last.order];
  delete of.entry;
  delete state.last;
  stopClock();
  state.at = Math.max(0, index);
  store.takeBack(waits.id, run, state).then(link);
  draw();
}

/** From now on what was logged is not taken back. */
function release() {
  store.release().then(send);
}

async function send() {
  const answer = await store.send(false);
  const { connected } = answer;
  locked = Boolean(answer.locked);
  if (connected !== null) lost = !connected;
  if (store.waiting().length === 0) {
    lost = false;
    if (connected) keep();
  }
  link();
  swap.settle();
}

function link() {
  const waits = store.waiting();
  if (logging) {
    one("link").textContent = show.say("waiting", waits.length);
    one("link").dataset.state = "waiting";
    return;
  }
  const refused = waits.filter((entry) => entry.refused);
  const held = waits.filter((entry) => !entry.refused);
  one("refused").hidden = refused.length === 0;
  if (refused.length > 0) {
    one("refused-words").textContent = show.say("refused", refused.length, refused[0].refused);
  }
  const alone = store.onThisPageAlone();
  const full = alone.entries > 0 || alone.state;
  if (one("full").hidden === full) {
    one("full").hidden = !full;
    one("full").textContent = full ? show.say("full") : "";
  }
  const words = alone.entries > 0
    ? show.say("unkept", alone.entries)
    : locked
    ? show.say("locked", held.length)
    : lost
    ? show.say("offline", held.length)
    : held.length > 0
      ? show.say("waiting", held.length)
      : show.say("safe");
  if (one("link").textContent !== words) one("link").textContent = words;
  one("unlock").hidden = !locked;
  one("link").dataset.state = lost || full ? "lost" : held.length > 0 ? "waiting" : "safe";
  const mayUndo = !logging && waits.some((w) => state.last && w.id === state.last.id && w.holdUntil > Date.now());
  one("undo").hidden = !mayUndo;
  const toldLogged = mayUndo && alone.entries === 0;
  if (toldLogged) one("told").textContent = show.say("loggedStep", state.last.order);
  else if (undoTold) one("told").textContent = "";
  undoTold = toldLogged;
}

function alarm(words) {
  one("alarm").hidden = !words;
  one("alarm-words").textContent = words;
}

function finish() {
  one("end-list").replaceChildren(
    ...state.sheet.steps.map((step) => {
      const item = document.createElement("li");
      const of = state.steps[step.order] || {};
      item.textContent =
        step.order + ". " + step.label + ", " + step.material + ": " +
        (of.entry ? show.say("endLogged", Math.round(elapsedS(of))) : show.say("endOpen"));
      return item;
    }),
  );
  release();
  one("end").showModal();
}

/** A scanned label that is the instrument wanted next moves on; a wrong one is told. */
function scanned(code) {
  if (document.querySelector("dialog[open]:not(#swap, #handpieces)")) return;
  const is = (step) => step.codes.some((known) => known.toUpperCase() === code.toUpperCase());
  const next = state.sheet.steps[state.at + 1];
  const of = mine();
  if (swap.scanned(code) || which.scanned(code)) return;
  if (is(now()) && !of.begunAt && !of.entry) {
    of.inHand = true;
    alarm("");
    one("told").textContent = show.say("rightOne", now().label);
    keep();
  } else if (next && is(next) && (of.begunAt || of.entry)) {
    const moved = of.entry ? Promise.resolve(go(state.at + 1)) : log();
    moved.then(() => { one("told").textContent = show.say("rightOne", next.label); });
  } else {
    const wanted = of.begunAt || of.entry ? next || now() : now();
    alarm(show.say("wrongOne", code, wanted.label));
    beep(220, 2);
  }
}

function draw() {
  const of = mine();
  show.step(state.sheet, state);
  which.draw();
  const at = state.at;
  const end = at + 1 >= state.sheet.steps.length;
  one("forward-words").textContent = of.blocked
    ? show.say("blocked")
    : of.entry
      ? show.say(end ? "toEnd" : "next")
      : of.begunAt
        ? show.say("logAndOn", now().order)
        : show.say("begin");
  one("back-words").textContent = of.begunAt ? show.say("stop") : show.say("back");
  one("back").disabled = !of.begunAt && at === 0;
  one("forward").disabled = Boolean(of.blocked);
  one("log").disabled = Boolean(of.entry) || Boolean(of.blocked);
  one("open-swap").disabled = Boolean(of.entry);
  one("by").textContent = state.by;
  one("sound").setAttribute("aria-pressed", String(state.sound));
  link();
}

function frame() {
  const of = mine();
  const running = Boolean(of.begunAt);
  const seen = show.time(now(), elapsedS(of), running, Boolean(of.entry));
  if (running && state.sound) {
    if (seen.where === "over" && last.where !== "over") beep(988, 3);
    else if (seen.cutting !== last.cutting) beep(seen.cutting ? 587 : 784, 1);
  }
  last = seen;
  // nothing moves while no cut is timed: a tablet need not redraw for that
  if (running) requestAnimationFrame(frame);
  else setTimeout(frame, 200);
}

const which = handpieces({
  state: () => state,
  now,
  alarm,
  kept() {
    keep();
    draw();
  },
});
const swap = swaps({
  run,
  state: () => state,
  change(next) {
    state = next;
    keep();
    show.makeDots(state.sheet, go);
    draw();
  },
  stopClock,
  now,
  mine,
  alarm,
  event,
});
differs({
  state: () => state,
  now,
  event,
  planRest: swap.planRest,
  stop() {
    stopClock();
    keep();
    draw();
  },
});

one("forward").addEventListener("click", forward);
one("back").addEventListener("click", back);
one("log").addEventListener("click", log);
one("undo").addEventListener("click", takeBack);
one("alarm-close").addEventListener("click", () => alarm(""));
one("again").addEventListener("click", () => store.again().then(send));
one("sound").addEventListener("click", () => {
  state.sound = !state.sound && soundOn();
  if (!state.sound) soundOff();
  else beep(587, 1);
  keep();
  draw();
});
document.querySelectorAll("[data-opens]").forEach((button) =>
  button.addEventListener("click", () => one(button.dataset.opens).showModal()),
);
document.querySelectorAll("[data-closes]").forEach((button) =>
  button.addEventListener("click", () => button.closest("dialog").close()),
);
document.querySelectorAll("[data-by]").forEach((button) =>
  button.addEventListener("click", () => {
    if (button === document.body) return;
    state.by = button.dataset.by;
    keep();
    draw();
    button.closest("dialog").close();
  }),
);
one("by-other")?.addEventListener("submit", (event) => {
  const typed = one("by-typed").value.normalize("NFC").trim().toUpperCase();
  if (/^[\p{L}\p{N}.-]{1,12}$/u.test(typed)) {
    state.by = typed;
    keep();
    draw();
    event.target.closest("dialog").close();
  } else {
    one("by-fault").hidden = false;
  }
  event.preventDefault();
});
listen({ forward, back, scan: scanned });
window.addEventListener("online", send);
window.addEventListener("beforeunload", (event) => {
  if (store.onThisPageAlone().entries > 0) event.preventDefault();
});
window.addEventListener("pagehide", () => store.send(true));
setInterval(send, SEND_EVERY_MS);
setInterval(link, 500);
show.makeDots(state.sheet, go);
keep();
draw();
frame();
send();
one("stage-step").hidden = false;
if (open < 0) finish();
document.body.dataset.ready = "yes";

if (navigator.wakeLock) {
  const awake = () => navigator.wakeLock.request("screen").catch(() => {});
  document.addEventListener("visibilitychange", () => !document.hidden && awake());
  awake();
}
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/chairside/worker.js").catch(() => {});
  navigator.serviceWorker.addEventListener("message", (event) => {
    if (event.data.kept) document.body.dataset.kept = "yes";
  });
  navigator.serviceWorker.ready.then((worker) => {
    const needed = performance.getEntriesByType("resource").map((entry) => entry.name);
    const own = needed.filter((url) => /\/(static\/|theme\.css)/.test(new URL(url).pathname));
    worker.active.postMessage({ keep: [location.pathname, ...own] });
  });
}
