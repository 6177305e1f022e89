// Another instrument for the step: chosen from what the sheet offers or scanned. With a connection
// the rest is planned again at once; without one the step goes on with what is known of the other
// instrument, and the rest is planned when the connection is back.
import { say } from "./chair-show.js";

const one = (id) => document.getElementById(id);

export function swaps(chair) {
  let working = false;

  function done(state, order) {
    return state.sheet.steps
      .filter((step) => step.order < order)
      .map((step) => ({ label: step.label, handpieceId: step.handpieceId }));
  }

  function items(state) {
    return Object.values(state.steps).filter((of) => of.entry)
      .flatMap((of) => (of.handpiece ? [of.item, of.handpiece] : [of.item]));
  }

  /** The sheet with the other instrument in this step, as far as it is known without planning. */
  function provisional(sheet, order, other) {
    return {
      ...sheet,
      steps: sheet.steps.map((step) =>
        step.order !== order
          ? step
          : {
              ...step,
              ...other,
              stays: false,
              stage: "",
              time: say("about", Math.round(other.typical)),
              band: { low: null, typical: other.typical, high: null },
              cue: step.cue,
              cautions: [],
              unplanned: true,
              others: step.others.filter((one) => one.label !== other.label),
            },
      ),
    };
  }

  async function ask(state, order, label, out, seen) {
    const answer = await fetch("/chairside/run/" + chair.run + "/swap", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ step: order, label, done: done(state, order), out, items: items(state), seen }),
    });
    if (!answer.ok) throw new Error(String(answer.status));
    return answer.json();
  }

  /** What was done stays as it was shown; from this step on the new sheet counts. */
  function joined(state, fresh, order) {
    const before = state.sheet.steps.filter((step) => step.order < order);
    return { ...fresh, steps: [...before, ...fresh.steps.filter((step) => step.order >= order)] };
  }

  /** Why the planned one is not taken, in one tap; false while that is open. */
  function reason() {
    const why = document.querySelector("#swap input[name=why]:checked");
    const pieces = document.querySelector("#swap input[name=pieces]:checked");
    const words = !why ? say("whyFirst") : why.value === "broken" && !pieces ? say("piecesFirst") : "";
    one("swap-fault").textContent = words;
    one("swap-fault").hidden = !words;
    if (words) return "";
    return why.value === "broken" && pieces.value === "missing" ? "pieces-missing" : why.value;
  }

  /** Plans the rest with what was seen in the tooth; tells why it cannot. */
  async function planRest(seen) {
    const state = chair.state();
    const now = chair.now();
    try {
      const answer = await ask(state, now.order, now.label, state.out, seen);
      if (answer.refused) return answer.refused.join(" ");
      chair.change({ ...state, version: answer.version, sheet: joined(state, answer.sheet, now.order) });
      return "";
    } catch (lost) {
      return say("seenOffline");
    }
  }

  async function take(other) {
    if (working) return;
    const why = reason();
    if (!why) return;
    working = true;
    const item = chair.now().item;
    const order = chair.now().order;
    const gone = chair.now().label;
    const state = chair.state();
    const out = [...new Set([...state.out, gone])].filter((label) => label !== other.label);
    busy(true);
    try {
      const answer = await ask(state, order, other.label, out);
      if (answer.refused) {
        one("swap-fault").textContent = say("swapRefused", other.label, answer.refused.join(" "));
        one("swap-fault").hidden = false;
        return;
      }
      chair.stopClock();
      chair.change({
        ...state,
        out,
        version: answer.version,
        sheet: joined(state, answer.sheet, order),
      });
      gave(why, gone, item);
      one("told").textContent = say("swapped", other.label);
    } catch (lost) {
      if (!other.setRpm) {
        one("swap-fault").textContent = say("swapNeedsConnection", other.label);
        one("swap-fault").hidden = false;
        return;
      }
      chair.stopClock();
      chair.change({
        ...state,
        out,
        unsettled: { order, label: other.label },
        sheet: provisional(state.sheet, order, other),
      });
      gave(why, gone, item);
      one("told").textContent = say("swappedOffline", other.label);
    } finally {
      busy(false);
      working = false;
    }
  }

  function gave(why, label, item) {
    one("swap").close();
    chair.event(why, { label, item });
    chair.alarm(why === "pieces-missing" ? say("piecesAlarm", label) : "");
  }

  function busy(on) {
    one("swap-busy").hidden = !on;
    one("swap-list").querySelectorAll("button").forEach((button) => { button.disabled = on; });
  }

  /** Plans again what was swapped without a connection; a refusal stops the step. */
  async function settle() {
    const state = chair.state();
    const open = state.unsettled;
    if (!open || working) return;
    working = true;
    try {
      const answer = await ask(state, open.order, open.label, state.out);
      const now = chair.state();
      const next = { ...now };
      delete next.unsettled;
      if (answer.refused) {
        next.steps = { ...now.steps };
        const of = { ...(now.steps[open.order] || {}) };
        if (!of.entry) of.blocked = true;
        next.steps[open.order] = of;
        chair.change(next);
        chair.alarm(say("swapRefused", open.label, answer.refused.join(" ")));
      } else {
        next.version = answer.version;
        next.sheet = joined(now, answer.sheet, open.order);
        chair.change(next);
      }
    } catch (lost) {
      // asked again with the next connection
    } finally {
      working = false;
    }
  }

  function open() {
    const step = chair.now();
    one("swap-fault").hidden = true;
    document.querySelectorAll("#swap input[type=radio]").forEach((radio) => { radio.checked = false; });
    one("pieces").hidden = true;
    one("swap-of").textContent = say("swapOf", step.label);
    one("swap-list").replaceChildren(
      ...step.others.map((other) => {
        const item = document.createElement("li");
        const button = document.createElement("button");
        button.type = "button";
        button.className = "swap-choice";
        const label = document.createElement("b");
        label.textContent = other.label;
        const words = document.createElement("span");
        words.textContent = other.short;
        const why = document.createElement("span");
        why.className = "quiet";
        why.textContent = other.why;
        const drawing = document.createElement("span");
        drawing.innerHTML = other.silhouette;
        button.append(label, words, drawing, why);
        button.addEventListener("click", () => take(other));
        item.append(button);
        return item;
      }),
    );
    one("swap-none").hidden = step.others.length > 0;
    one("swap").showModal();
  }

  one("open-swap").addEventListener("click", open);
  document.querySelectorAll("#swap input[name=why]").forEach((radio) =>
    radio.addEventListener("change", () => {
      one("pieces").hidden = radio.value !== "broken";
      one("swap-fault").hidden = true;
    }),
  );
  one("swap-type").addEventListener("submit", (event) => {
    event.preventDefault();
    byCode(one("swap-typed").value.trim());
  });

  function byCode(code) {
    if (!code) return;
    const is = (other) => other.codes.some((known) => known.toUpperCase() === code.toUpperCase());
    const other = chair.now().others.find(is);
    take(other || { label: code });
  }

  return {
    settle,
    planRest,
    /** A label scanned while the choice is open is the choice. */
    scanned(code) {
      if (!one("swap").open) return false;
      byCode(code);
      return true;
    },
  };
}
