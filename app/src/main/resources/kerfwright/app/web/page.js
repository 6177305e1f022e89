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
// on paper the reasons stand open
let opened = [];
window.addEventListener("beforeprint", () => {
  opened = [...document.querySelectorAll("details.why:not([open])")];
  opened.forEach((one) => { one.open = true; });
});
window.addEventListener("afterprint", () => opened.forEach((one) => { one.open = false; }));
