// Appointments are dragged or moved with the arrow keys; what a move would break is asked for at once.
"use strict";
(() => {
  const STEP = 5;
  let held = null;
  const lanesOf = (visit) => visit.closest("svg.lanes");
  const clock = (minute) => `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
  const perMinute = (svg) => Number(svg.dataset.perMin) * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
  const form = () => document.getElementById("move");

  function show(visit, minutes, chair) {
    const start = Number(visit.dataset.start) + minutes;
    if (!form() || start < 0 || start >= 1440) return;
    form().elements.booking.value = visit.dataset.booking;
    form().elements.start.value = clock(start);
    form().elements.chair.value = chair;
    form().requestSubmit();
  }
  function place(visit, minutes, rows) {
    const svg = lanesOf(visit);
    visit.setAttribute("transform", `translate(${minutes * Number(svg.dataset.perMin)} ${rows})`);
  }
  function laneAt(svg, y) {
    return [...svg.querySelectorAll("[data-lane]")].find((lane) => {
      const box = lane.getBoundingClientRect();
      return y >= box.top && y <= box.bottom;
    });
  }
  document.addEventListener("pointerdown", (event) => {
    const visit = event.target.closest?.("#board .visit");
    if (!visit || event.button !== 0) return;
    held = { visit, x: event.clientX, y: event.clientY, minutes: 0, chair: visit.dataset.chair, moved: false };
    visit.setPointerCapture(event.pointerId);
  });
  document.addEventListener("pointermove", (event) => {
    if (!held) return;
    const svg = lanesOf(held.visit);
    if (!svg) { held = null; return; }
    held.minutes = Math.round((event.clientX - held.x) / perMinute(svg) / STEP) * STEP;
    const lane = laneAt(svg, event.clientY);
    if (lane) held.chair = lane.dataset.lane;
    const from = svg.querySelector(`[data-lane="${CSS.escape(held.visit.dataset.chair)}"]`);
    const to = svg.querySelector(`[data-lane="${CSS.escape(held.chair)}"]`);
    const rows = from && to ? Number(to.getAttribute("y")) - Number(from.getAttribute("y")) : 0;
    held.moved = held.moved || held.minutes !== 0 || rows !== 0;
    held.visit.classList.toggle("dragged", held.moved);
    place(held.visit, held.minutes, rows);
  });
  function drop() {
    if (!held) return;
    const { visit, minutes, chair, moved } = held;
    held = null;
    visit.classList.remove("dragged");
    if (moved) show(visit, minutes, chair);
  }
  document.addEventListener("pointerup", drop);
  document.addEventListener("pointercancel", () => {
    if (held) held.visit.removeAttribute("transform");
    held = null;
  });
  document.addEventListener("keydown", (event) => {
    const visit = event.target.closest?.("#board .visit");
    if (!visit) return;
    const svg = lanesOf(visit);
    let minutes = Number(visit.dataset.moved || 0);
    let chair = visit.dataset.to || visit.dataset.chair;
    const chairs = [...svg.querySelectorAll("[data-lane]")].map((lane) => lane.dataset.lane);
    if (event.key === "ArrowLeft") minutes -= STEP;
    else if (event.key === "ArrowRight") minutes += STEP;
    else if (event.key === "ArrowUp") chair = chairs[Math.max(0, chairs.indexOf(chair) - 1)];
    else if (event.key === "ArrowDown") chair = chairs[Math.min(chairs.length - 1, chairs.indexOf(chair) + 1)];
    else if (event.key === "Escape") { minutes = 0; chair = visit.dataset.chair; }
    else if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    visit.dataset.moved = minutes;
    visit.dataset.to = chair;
    const top = (name) => Number(svg.querySelector(`[data-lane="${CSS.escape(name)}"]`).getAttribute("y"));
    place(visit, minutes, top(chair) - top(visit.dataset.chair));
    clearTimeout(visit.soon);
    visit.soon = setTimeout(() => show(visit, minutes, chair), event.key === "Enter" ? 0 : 350);
  });
  document.addEventListener("htmx:afterSwap", (event) => {
    const effect = document.getElementById("effect");
    if (effect && effect.contains(event.target) || event.target === effect) effect.scrollIntoView({ block: "nearest" });
  });
})();
