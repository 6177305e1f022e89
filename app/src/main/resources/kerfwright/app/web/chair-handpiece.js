// Which handpiece of the drawer a step turns in: chosen by itself where one is there, another one by
// a tap or its scanned label. The choice holds for every step of that kind.
import { say } from "./chair-show.js";

const one = (id) => document.getElementById(id);

export function handpieces(chair) {
  const all = () => chair.state().sheet.handpieces || {};

  function of(kind) {
    return (all()[kind] || { pieces: [] }).pieces;
  }

  /** The id of the one chosen for a kind; empty where none is told. */
  function chosen(kind) {
    const own = (chair.state().handpieces || {})[kind];
    return own === undefined ? (all()[kind] || { chosen: "" }).chosen : own;
  }

  function choose(item) {
    const state = chair.state();
    state.handpieces = { ...state.handpieces, [chair.now().handpieceId]: item };
    chair.kept();
  }

  function label(kind) {
    const piece = of(kind).find((known) => known.item === chosen(kind));
    return piece ? piece.label : "";
  }

  function draw() {
    const kind = chair.now().handpieceId;
    const button = one("which");
    button.hidden = of(kind).length === 0;
    button.textContent = label(kind) || say("whichNone");
    button.setAttribute("aria-label", say("whichNow", button.textContent));
  }

  function open() {
    const kind = chair.now().handpieceId;
    const choice = (item, words) => {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "button";
      button.textContent = words;
      button.setAttribute("aria-pressed", String(chosen(kind) === item));
      button.addEventListener("click", () => {
        choose(item);
        one("handpieces").close();
      });
      return button;
    };
    one("handpieces-of").textContent = chair.now().handpiece;
    one("handpiece-list").replaceChildren(
      ...of(kind).map((piece) => choice(piece.item, piece.label)),
      choice("", say("whichNone")),
    );
    one("handpieces").showModal();
  }

  one("which").addEventListener("click", open);

  return {
    draw,
    /** The id an entry of this step names, or null. */
    chosen: (step) => chosen(step.handpieceId) || null,
    /** Takes a scanned label; false where it is of no handpiece of this run. */
    scanned(code) {
      const is = (piece) => piece.codes.some((known) => known.toUpperCase() === code.toUpperCase());
      const kind = Object.keys(all()).find((each) => of(each).some(is));
      if (!kind) return false;
      const piece = of(kind).find(is);
      if (kind !== chair.now().handpieceId) {
        chair.alarm(say("wrongHandpiece", piece.label, chair.now().handpiece));
        return true;
      }
      choose(piece.item);
      one("handpieces").close();
      chair.alarm("");
      one("told").textContent = say("rightHandpiece", piece.label);
      return true;
    },
  };
}
