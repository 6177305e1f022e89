// When the tooth differs from the plan, or something stops the work: what to do stands there at
// once, one tap writes it down, and a layer seen early or late plans the rest anew.
import { say } from "./chair-show.js";

const one = (id) => document.getElementById(id);

export function differs(chair) {
  function show(what) {
    chair.stop();
    document.querySelectorAll("#differs .branch").forEach((branch) => {
      branch.hidden = branch.id !== "branch-" + what;
    });
    document.querySelectorAll("[data-branch]").forEach((button) => {
      button.setAttribute("aria-pressed", String(button.dataset.branch === what));
    });
    if (what === "seen") borders();
  }

  /** What may be seen: the border next below where the step works comes first. */
  function borders() {
    one("seen-fault").hidden = true;
    one("borders").replaceChildren(
      ...(chair.state().sheet.borders || []).map((border) => {
        const label = document.createElement("label");
        label.className = "pick";
        const radio = document.createElement("input");
        radio.type = "radio";
        radio.name = "border";
        radio.value = border.border;
        const words = document.createElement("span");
        words.textContent = border.words;
        label.append(radio, words);
        return label;
      }),
    );
  }

  async function seen(event) {
    event.preventDefault();
    const border = document.querySelector("input[name=border]:checked");
    const mm = Number(one("seen-mm").value.trim().replace(",", "."));
    const fault = (words) => {
      one("seen-fault").textContent = words;
      one("seen-fault").hidden = false;
    };
    if (!border || !(mm > 0 && mm <= 20)) {
      fault(say("mmFirst"));
      return;
    }
    const refused = await chair.planRest({ border: Number(border.value), mm });
    if (refused) {
      fault(refused);
      return;
    }
    chair.event("seen", { mm, label: "" });
    one("differs").close();
    one("told").textContent = say("plannedAnew");
  }

  document.querySelectorAll("[data-branch]").forEach((button) =>
    button.addEventListener("click", () => show(button.dataset.branch)),
  );
  document.querySelectorAll("[data-event]").forEach((button) =>
    button.addEventListener("click", () => {
      const what = button.dataset.event;
      chair.event(what, { label: what === "fracture" ? chair.now().label : "" });
      one("differs").close();
      one("told").textContent = say("eventKept");
    }),
  );
  one("branch-seen").addEventListener("submit", seen);
  const exposure = document.querySelector("[data-branch=exposure]");
  exposure.hidden = Boolean(chair.state().sheet.entersPulp);
}
