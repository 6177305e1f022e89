// Puts one step on the screen.
import { clock, phase, calm, place } from "./chair-pace.js";

const SVG = "http://www.w3.org/2000/svg";
const RING_WORDS = 16;
const LONG = 60;
const one = (id) => document.getElementById(id);

export function say(name, ...values) {
  const text = document.body.dataset[name] || "";
  return values.reduce((said, value, i) => said.replace("{" + i + "}", value), text);
}

function text(id, words) {
  const at = one(id);
  if (at.textContent !== words) at.textContent = words;
}

function drawing(id, svg) {
  const at = one(id);
  at.innerHTML = svg || "";
  at.hidden = !svg;
}

/** The words of a drawing are said in the figures already: the drawing gets their room. */
function nearer(svg, wide, tall) {
  if (!svg) return;
  svg.setAttribute("viewBox", "0 0 " + wide + " " + tall);
  svg.setAttribute("width", wide);
  svg.setAttribute("height", tall);
}

function list(id, lines) {
  const at = one(id);
  at.replaceChildren(
    ...lines.map((line) => {
      const item = document.createElement("li");
      item.textContent = line;
      return item;
    }),
  );
  at.hidden = lines.length === 0;
}

/** The layers with the instrument in its place; the depth reached moves through them with the time. */
function stack(sheet, now) {
  const at = one("stack");
  at.innerHTML = now.stage ? (sheet.stackKey || "") + now.stage : "";
  at.hidden = !now.stage;
  const of = at.querySelector(".depth-scale");
  if (!of) return;
  const mark = document.createElementNS(SVG, "path");
  mark.id = "reached";
  of.closest("svg").append(mark);
}

function reached(now, elapsedS, logged) {
  const mark = one("reached");
  if (!mark || now.toMm === undefined) return;
  const of = mark.closest("svg").querySelector(".depth-scale").dataset;
  const share = logged ? 1 : Math.min(1, elapsedS / now.band.typical);
  const mm = now.fromMm + share * Math.max(0, now.toMm - now.fromMm);
  const there = (Number(of.zero) + Number(of.perMm) * mm).toFixed(1);
  const wide = mark.closest("svg").viewBox.baseVal.width;
  const d = of.side === "true" ? "M" + there + " " + of.from + "V" + of.to : "M0 " + there + "H" + wide;
  if (mark.getAttribute("d") !== d) mark.setAttribute("d", d);
}

/** The step itself; called when it changes. */
export function step(sheet, state) {
  const now = sheet.steps[state.at];
  const mine = state.steps[now.order] || {};
  text("step-no", say("stepOf", now.order, sheet.steps.length));
  text("step-what", now.what + ": " + now.material);
  text("label", now.label);
  text("short", (now.stays ? say("stays") + " " : "") + now.short);
  text("number", now.number);
  text("ring-words", now.ring ? say("ring", now.ring) : "");
  drawing("silhouette", now.silhouette);
  text("rpm", now.rpm);
  text("handpiece", now.handpiece);
  text("stroke", now.stroke);
  stack(sheet, now);
  const seen = one("silhouette").querySelector("svg");
  if (seen) nearer(seen, seen.viewBox.baseVal.width, seen.viewBox.baseVal.height - RING_WORDS);
  text("load", now.load);
  text("scales", now.scales);
  text("water", now.water);
  text("depth", now.depth);
  text("time", now.time);
  text("cue", now.cue);
  one("stage-step").classList.toggle("long", now.cue.length > LONG);
  text("stop-if", now.stopIf || "");
  one("stop-line").hidden = !now.stopIf;
  const between = (order) => (sheet.cues || []).filter((cue) => cue.afterStep === order).map((cue) => cue.text);
  list("cues-before", state.at === 0 ? between(0) : []);
  list("cues-after", between(now.order));
  list("step-cautions", [...(now.unplanned ? [say("unplanned")] : []), ...now.cautions]);
  one("stage-step").classList.toggle("logged", Boolean(mine.entry));
  dots(sheet, state);
  band(now.band);
}

function dots(sheet, state) {
  one("dots").querySelectorAll("button").forEach((dot, i) => {
    const order = sheet.steps[i].order;
    const done = Boolean((state.steps[order] || {}).entry);
    dot.setAttribute("aria-current", i === state.at ? "step" : "false");
    dot.classList.toggle("done", done);
    dot.querySelector(".tick").textContent = done ? "\u2713" : String(order);
    dot.setAttribute("aria-label", say(done ? "dotDone" : "dot", order));
  });
}

/** One button a step; made again after a swap, which may change how many there are. */
export function makeDots(sheet, go) {
  one("dots").replaceChildren(
    ...sheet.steps.map((_, i) => {
      const item = document.createElement("li");
      const dot = document.createElement("button");
      const tick = document.createElement("span");
      dot.type = "button";
      tick.className = "tick";
      dot.append(tick);
      dot.addEventListener("click", () => go(i));
      item.append(dot);
      return item;
    }),
  );
}

function band(of) {
  const end = (of.high == null ? of.typical : of.high) * 1.25;
  one("band").dataset.end = end;
  const at = (id, from, to) => {
    one(id).style.left = (100 * from) / end + "%";
    one(id).style.width = (100 * Math.max(0, to - from)) / end + "%";
  };
  at("band-range", of.low == null ? of.typical : of.low, of.high == null ? of.typical : of.high);
  at("band-typical", of.typical, of.typical);
}

/** What moves with the time; called for every frame. */
export function time(now, elapsedS, running, logged) {
  const where = place(elapsedS, now.band);
  reached(now, elapsedS, logged);
  text("elapsed", clock(elapsedS));
  const share = Math.min(1, elapsedS / Number(one("band").dataset.end));
  one("band-now").style.transform = "scaleX(" + calm(share) + ")";
  const stage = one("stage-step");
  stage.dataset.place = where;
  stage.dataset.running = String(running);
  text(
    "where",
    logged
      ? say("logged")
      : elapsedS === 0
        ? say("readyWords")
        : say(where === "over" ? "placeOver" : where === "early" ? "placeEarly" : "placeBand"),
  );
  one("change").hidden = logged || where !== "over";
  const rhythm = phase(elapsedS, now.cutS, now.pauseS);
  one("rhythm").classList.toggle("timed", running);
  text("phase", running ? say(rhythm.cutting ? "cut" : "lift") : now.pace);
  text("phase-left", running ? String(Math.ceil(rhythm.left)) : "");
  const filled = rhythm.cutting ? rhythm.share : 1 - rhythm.share;
  one("pace-now").style.transform = "scaleX(" + (running ? calm(filled) : 0) + ")";
  one("pace-bar").classList.toggle("lifted", running && !rhythm.cutting);
  return { where, cutting: rhythm.cutting };
}
