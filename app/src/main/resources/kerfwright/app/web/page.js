// Small comforts; every page works without this file.
"use strict";
document.addEventListener("change", (event) => {
  if (event.target.name === "tooth_pick") {
    const typed = document.querySelector("input[name=tooth]");
    if (typed) typed.value = "";
  }
});
document.addEventListener("input", (event) => {
  if (event.target.name === "tooth" && event.target.value.trim() !== "") {
    document.querySelectorAll("input[name=tooth_pick]:checked").forEach((one) => { one.checked = false; });
  }
});
document.querySelectorAll("[data-print]").forEach((button) => {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
});
// what may take more than a moment says so; the words stand in data-busy
const busy = (words) => setTimeout(() => {
  const told = document.createElement("p");
  told.className = "busy";
  told.setAttribute("role", "status");
  told.textContent = words;
  document.body.append(told);
}, 400);
document.addEventListener("click", (event) => {
  const link = event.target.closest("a[data-busy]");
  if (link && event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey) busy(link.dataset.busy);
});
document.addEventListener("submit", (event) => {
  if (event.target.dataset.busy) busy(event.target.dataset.busy);
});
window.addEventListener("pageshow", () => document.querySelectorAll(".busy").forEach((one) => one.remove()));
// on paper the reasons stand open
let opened = [];
window.addEventListener("beforeprint", () => {
  opened = [...document.querySelectorAll("details.why:not([open])")];
  opened.forEach((one) => { one.open = true; });
});
window.addEventListener("afterprint", () => opened.forEach((one) => { one.open = false; }));
