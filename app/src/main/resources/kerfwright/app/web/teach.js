// Lectures: steps by key and button without loading anew; every step has its own address without this.
"use strict";
document.documentElement.classList.add("scripted");
const hall = document.querySelector("main[data-frames]");
const many = hall ? Number(hall.dataset.frames) : 0;
if (many > 1) {
  const back = document.getElementById("back");
  const next = document.getElementById("next");
  const shown = () => [...document.querySelectorAll(".frame")].findIndex((one) => !one.hidden) + 1;
  const show = (step) => {
    const to = Math.max(1, Math.min(many, step));
    document.querySelectorAll(".frame").forEach((one, i) => { one.hidden = i + 1 !== to; });
    document.getElementById("at").textContent = to;
    back.setAttribute("aria-disabled", to === 1);
    next.setAttribute("aria-disabled", to === many);
    const here = new URL(location);
    here.searchParams.set("step", to);
    history.replaceState(null, "", here);
  };
  show(shown());
  back.addEventListener("click", (event) => { event.preventDefault(); show(shown() - 1); });
  next.addEventListener("click", (event) => { event.preventDefault(); show(shown() + 1); });
  document.addEventListener("keydown", (event) => {
    if (event.target.closest("input, select, textarea, summary") || event.altKey || event.ctrlKey || event.metaKey) return;
    const way = { ArrowRight: 1, PageDown: 1, ArrowLeft: -1, PageUp: -1, Home: -many, End: many }[event.key];
    if (way) { event.preventDefault(); show(shown() + way); }
  });
}
document.addEventListener("input", (event) => {
  const told = event.target.dataset.shows && document.getElementById(event.target.dataset.shows);
  if (told) told.textContent = event.target.dataset.comma === "true" ? event.target.value.replace(".", ",") : event.target.value;
});
// a number is read aloud by the voice of this machine, where it has one
document.addEventListener("click", (event) => {
  const button = event.target.closest("[data-read]");
  if (!button) return;
  const said = new SpeechSynthesisUtterance(document.querySelector(button.dataset.read).innerText);
  said.lang = document.documentElement.lang;
  speechSynthesis.cancel();
  speechSynthesis.speak(said);
});
const voices = () => {
  const any = "speechSynthesis" in window && speechSynthesis.getVoices().some((one) => one.localService);
  document.querySelectorAll("[data-read]").forEach((one) => { one.hidden = !any; });
};
voices();
if ("speechSynthesis" in window) speechSynthesis.addEventListener("voiceschanged", voices);
document.addEventListener("htmx:afterSwap", voices);
