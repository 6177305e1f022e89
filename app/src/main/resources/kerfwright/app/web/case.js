// The plan beside the form follows every change, at most every 90 ms, and never misses the last one.
"use strict";
(() => {
  const PAUSE_MS = 90;
  let due = false;
  let last = -PAUSE_MS;
  const follow = () => {
    if (due) return;
    due = true;
    setTimeout(() => {
      due = false;
      last = performance.now();
      document.body.dispatchEvent(new CustomEvent("case-changed"));
    }, Math.max(0, PAUSE_MS - (performance.now() - last)));
  };
  const changed = (event) => {
    if (event.target instanceof Element && event.target.closest("form.case")) follow();
  };
  document.addEventListener("input", changed);
  document.addEventListener("change", changed);
  // an answer for other rows of layers than are there by now is let go: the next is on its way
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.target.id !== "preview") return;
    const asked = new URL(event.detail.xhr.responseURL).searchParams.getAll("layer_material").length;
    const there = document.querySelectorAll("#layer-box select[name=layer_material]").length;
    if (asked !== there) event.detail.shouldSwap = false;
  });
  // usual values for fields that hold something else by now, or that somebody is in (a boundary of
  // the section is one), are let go:
  // what was typed stays, typed before this file ran included; left again, the fields ask anew
  const TYPED = "select, input:not([type=radio], [type=checkbox], [type=hidden])";
  const HELD = TYPED + ", .boundary";
  let asked = new URLSearchParams();
  let left = null;
  const stillAsAsked = (box) => {
    const fields = [...box.querySelectorAll(TYPED)];
    const names = new Set(fields.map((field) => field.name));
    return [...names].every((name) => {
      const now = fields.filter((field) => field.name === name).map((field) => field.value);
      const then = asked.getAll(name);
      return now.length === then.length && now.every((value, i) => value === then[i]);
    });
  };
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.target.id === "asked") asked = new URL(event.detail.xhr.responseURL).searchParams;
  });
  document.addEventListener("htmx:oobBeforeSwap", (event) => {
    const box = event.detail.target;
    const within = document.activeElement.matches(HELD) && box.contains(document.activeElement);
    if (within) left = box;
    if (within || !stillAsAsked(box)) event.detail.shouldSwap = false;
  });
  document.addEventListener("focusout", (event) => {
    if (!left || left.contains(event.relatedTarget)) return;
    left = null;
    document.getElementById("procedure").dispatchEvent(new Event("change", { bubbles: true }));
  });
  // nothing moves under a finger that presses the button: what comes meanwhile is let go
  let pressed = false;
  document.addEventListener("pointerdown", (event) => {
    pressed = event.target instanceof Element && event.target.closest("form.case p.actions button") !== null;
  });
  for (const end of ["pointerup", "pointercancel"]) {
    document.addEventListener(end, () => setTimeout(() => { pressed = false; }, 0));
  }
  for (const swap of ["htmx:beforeSwap", "htmx:oobBeforeSwap"]) {
    document.addEventListener(swap, (event) => {
      if (!pressed) return;
      event.detail.shouldSwap = false;
      if (event.detail.target.id === "preview") follow();
    });
  }
  // typed before this ran, or brought back by the browser
  const typed = document.querySelectorAll("form.case input:not([type=radio], [type=checkbox], [type=hidden])");
  if ([...typed].some((field) => field.value !== field.defaultValue)) follow();
})();

// The layers of a new case as a section to scale: a boundary is dragged, or moved by the arrow keys,
// and the fields follow; what is typed moves the boundary.
(() => {
  const SVG = "http://www.w3.org/2000/svg";
  const GRID = 0.05;
  const COARSE = 0.5;
  const LEAST = 0.05;
  const MOST = 20;
  const TALL = 280;
  const MOST_PER_MM = 70;
  /** From one grip to the next, px: each is reached with a gloved finger. */
  const APART = 48;
  /** Where the lines to the grips begin and how far they reach sideways, px. */
  const LINE = 40;
  let box = document.getElementById("stack");
  if (!box) return;
  let perMm = 40;
  let held = null;

  const said = (name, ...values) =>
    values.reduce((text, value, i) => text.replace("{" + i + "}", value), box.dataset[name]);
  const number = (text) => {
    const value = Number(text.trim().replace(",", "."));
    return text.trim() !== "" && Number.isFinite(value) && value > 0 ? value : null;
  };
  const written = (mm) => String(Math.round(mm * 1000) / 1000);
  const shown = (mm) => (box.dataset.comma === "true" ? written(mm).replace(".", ",") : written(mm));

  /** Ground and hatching of a material, the same as in the sections of a plan. */
  function filled(id) {
    const svg = document.createElementNS(SVG, "svg");
    svg.setAttribute("class", "stack-fill");
    const fill = box.dataset.fills.split(";").map((one) => one.split(" ")).find((one) => one[0] === id);
    if (!fill) return svg;
    for (const [name, value] of [["class", fill[2]], ["fill", "url(#" + fill[1] + ")"]]) {
      const rect = document.createElementNS(SVG, "rect");
      rect.setAttribute("width", "100%");
      rect.setAttribute("height", "100%");
      rect.setAttribute(name, value);
      svg.append(rect);
    }
    return svg;
  }

  /** Rows with a thickness, outermost first. */
  function rows() {
    return [...document.querySelectorAll("#layer-box fieldset.layer")]
      .map((row) => {
        const field = (name) => row.querySelector("input[name=layer_" + name + "]");
        const material = row.querySelector("select");
        return {
          material: material.value,
          name: material.value ? material.selectedOptions[0].textContent.trim() : said("unnamed"),
          fields: { low: field("low"), typical: field("typical"), high: field("high") },
          mm: number(field("typical").value),
        };
      })
      .filter((row) => row.mm !== null);
  }

  function set(row, mm) {
    const by = mm - row.mm;
    row.fields.typical.value = written(mm);
    for (const end of ["low", "high"]) {
      const value = number(row.fields[end].value);
      if (value !== null) row.fields[end].value = written(Math.max(GRID / 5, value + by));
    }
    row.mm = mm;
  }

  /** Moves the lower side of a layer; what lies below moves with it and stays as thick as it is. */
  function move(index, mm) {
    const row = rows()[index];
    const to = Math.round(Math.max(LEAST, Math.min(MOST, mm)) / GRID) * GRID;
    if (Math.abs(to - row.mm) < GRID / 10) return;
    set(row, to);
    draw();
    row.fields.typical.dispatchEvent(new Event("input", { bubbles: true }));
  }

  function handle(all, index) {
    const row = all[index];
    const below = all[index + 1];
    let one = box.querySelector("[data-boundary='" + index + "']");
    if (!one) {
      one = document.createElement("button");
      one.type = "button";
      one.className = "boundary";
      one.dataset.boundary = index;
      one.setAttribute("role", "slider");
      one.setAttribute("aria-orientation", "vertical");
      one.addEventListener("keydown", keyed);
      one.addEventListener("pointerdown", grabbed);
      box.append(one);
    }
    one.setAttribute("aria-label", below ? said("between", row.name, below.name) : said("under", row.name));
    one.setAttribute("aria-valuemin", LEAST);
    one.setAttribute("aria-valuemax", MOST);
    one.setAttribute("aria-valuenow", written(row.mm));
    one.setAttribute("aria-valuetext", said("thick", row.name, shown(row.mm)));
    return one;
  }

  function leader(from, to) {
    const line = document.createElementNS(SVG, "polyline");
    line.setAttribute("points", [[0, from], [LINE / 5, from], [LINE * 4 / 5, to], [LINE, to]].join(" "));
    return line;
  }

  function keyed(event) {
    const steps = { ArrowDown: GRID, ArrowRight: GRID, ArrowUp: -GRID, ArrowLeft: -GRID, PageDown: COARSE, PageUp: -COARSE };
    const by = steps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const index = Number(event.currentTarget.dataset.boundary);
    move(index, rows()[index].mm + by);
  }

  function grabbed(event) {
    const index = Number(event.currentTarget.dataset.boundary);
    held = { index, fromY: event.clientY, mm: rows()[index].mm };
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.addEventListener("pointermove", dragged);
    event.currentTarget.addEventListener("pointerup", dropped, { once: true });
    event.currentTarget.addEventListener("pointercancel", dropped, { once: true });
  }

  function dragged(event) {
    if (held) move(held.index, held.mm + (event.clientY - held.fromY) / perMm);
  }

  function dropped(event) {
    event.currentTarget.removeEventListener("pointermove", dragged);
    held = null;
    draw();
  }

  function draw() {
    // usual values bring a new section of the form along
    box = document.getElementById("stack") || box;
    const all = rows();
    box.hidden = all.length === 0;
    if (all.length === 0) return;
    const total = all.reduce((sum, row) => sum + row.mm, 0);
    // the scale holds while a boundary is held, so that it stays under the finger
    if (!held) perMm = Math.min(MOST_PER_MM, TALL / total);
    const layers = box.querySelector(".stack-layers");
    while (layers.children.length > all.length) layers.lastChild.remove();
    while (layers.children.length < all.length) layers.append(document.createElement("div"));
    box.querySelectorAll(".boundary").forEach((one) => {
      if (Number(one.dataset.boundary) >= all.length) one.remove();
    });
    const leaders = box.querySelector(".stack-leaders");
    leaders.replaceChildren();
    let depth = 0;
    let grip = -APART;
    all.forEach((row, i) => {
      const layer = layers.children[i];
      layer.className = "stack-layer";
      layer.style.height = row.mm * perMm + "px";
      layer.textContent = row.mm * perMm >= 22 ? row.name + " " + shown(row.mm) + " mm" : "";
      layer.prepend(filled(row.material));
      depth += row.mm;
      const one = handle(all, i);
      // the boundary is drawn where it is; its grip gives way to the one above, and a line leads back
      grip = Math.max(depth * perMm, grip + APART);
      one.style.top = grip + "px";
      one.textContent = shown(row.mm) + " mm";
      leaders.append(leader(depth * perMm, grip));
    });
    box.style.height = Math.max(total * perMm + 60, grip + APART / 2 + 4, 120) + "px";
  }

  document.addEventListener("input", (event) => {
    if (!held && event.target.closest("#layer-box")) draw();
  });
  document.addEventListener("htmx:afterSettle", draw);
  draw();
})();
