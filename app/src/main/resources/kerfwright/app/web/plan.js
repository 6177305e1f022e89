// The plan page: moving along the heat curve shows step and depth; copying link and text.
"use strict";
(() => {
  const SVG = "http://www.w3.org/2000/svg";
  const trace = document.getElementById("trace");
  const slider = document.getElementById("scrub");
  const figure = document.getElementById("chart-heat");

  function said(of, name, ...values) {
    return values.reduce((text, value, i) => text.replace("{" + i + "}", value), of.dataset[name]);
  }

  function mark(svg, kind) {
    const line = document.createElementNS(SVG, "path");
    line.setAttribute("class", kind);
    svg.append(line);
    return line;
  }

  if (trace && slider && figure.chart) {
    const data = JSON.parse(trace.value);
    const { x: times, y: typical } = figure.chart.data.lines[0];
    const { low, high } = figure.chart.data.band;
    const told = document.getElementById("scrub-told");
    const stages = [...document.querySelectorAll(".hero .depth-scale")];
    const level = stages.length > 0 && mark(stages[0].closest("svg"), "scrub-line");
    slider.max = String(Math.floor(figure.chart.data.end));
    slider.closest("[hidden]").hidden = false;

    const at = (values, s) => {
      const i = Math.max(0, times.findIndex((t) => t >= s));
      if (i === 0) return values[0];
      const share = (s - times[i - 1]) / (times[i] - times[i - 1]);
      return values[i - 1] + Math.min(1, share) * (values[i] - values[i - 1]);
    };
    const written = (number, digits) => {
      const text = number.toFixed(digits).replace(/^-(?=[0.]+$)/, "").replace("-", "\u2212");
      return figure.chart.data.comma ? text.replace(".", ",") : text;
    };
    const reached = (s) =>
      data.steps.reduce((deepest, step) => {
        if (s < step.fromS) return deepest;
        const share = Math.min(1, (s - step.fromS) / Math.max(1e-9, step.toS - step.fromS));
        return Math.max(deepest, step.fromMm + share * (step.toMm - step.fromMm));
      }, 0);

    const show = () => {
      const s = Number(slider.value);
      figure.chart.move(s);
      const mm = reached(s);
      const step = data.steps.find((one) => s >= one.fromS && s <= one.toS);
      const begun = data.steps.filter((one) => s >= one.fromS).pop() || data.steps[0];
      const place = stages.find((one) => one.dataset.steps.split(" ").includes(String(begun.order)));
      document.querySelectorAll(".hero .frame.now").forEach((one) => one.classList.remove("now"));
      if (level && place) {
        const of = place.dataset;
        const svg = place.closest("svg");
        const there = Number(of.zero) + Number(of.perMm) * mm;
        level.setAttribute("d", of.side === "true" ? "M" + there + " " + of.from + "V" + of.to : "M0 " + there + "H" + svg.viewBox.baseVal.width);
        svg.append(level);
        svg.closest(".frame").classList.add("now");
      }
      document.querySelectorAll("section.step").forEach((card) => {
        card.classList.toggle("now", Boolean(step) && card.dataset.order === String(step.order));
      });
      const doing = step
        ? said(told, "step", step.order, step.name)
        : said(told, s > data.steps[data.steps.length - 1].toS ? "after" : "change");
      const words = said(told, "told", written(s, 0), written(at(typical, s), 1), written(at(low, s), 1), written(at(high, s), 1), doing, written(mm, 1));
      told.textContent = words;
      slider.setAttribute("aria-valuetext", words);
    };
    slider.addEventListener("input", show);
    figure.addEventListener("chart-read", (event) => {
      slider.value = String(event.detail);
      show();
    });
    show();
  }

  const copied = document.getElementById("copied");
  const copy = async (text) => {
    try {
      await navigator.clipboard.writeText(text);
      copied.textContent = copied.dataset.done;
    } catch (denied) {
      copied.textContent = copied.dataset.failed;
    }
  };
  document.querySelectorAll("[data-copy-link]").forEach((button) => {
    button.hidden = false;
    button.addEventListener("click", () => copy(location.href));
  });
  document.querySelectorAll("[data-copy-text]").forEach((link) => {
    link.addEventListener("click", async (event) => {
      event.preventDefault();
      const answer = await fetch(link.href);
      copy(await answer.text());
    });
  });
  document.documentElement.classList.add("scripted");

  // one question at a time, where it was asked
  const closed = () => document.querySelectorAll(".ask-here").forEach((one) => one.replaceChildren());
  document.addEventListener("htmx:beforeSwap", (event) => {
    if (event.detail.target.classList.contains("ask-here")) closed();
  });
  document.addEventListener("htmx:afterSettle", (event) => {
    const form = document.getElementById("what-if");
    if (!form || !event.detail.target.closest(".ask-here")) return;
    form.querySelector("[data-close-ask]").hidden = false;
    form.scrollIntoView({ block: "nearest" });
  });
  document.addEventListener("click", (event) => {
    if (!event.target.closest("[data-close-ask]")) return;
    const asked = event.target.closest("section.step").querySelector(".ask");
    closed();
    asked.focus();
  });
  document.addEventListener("input", (event) => {
    const of = event.target.dataset;
    if (!of.shows) return;
    const number = Number(event.target.value);
    const grouped = number.toLocaleString("en").replaceAll(",", "\u00a0");
    const written = String(number).replace(".", of.comma === "true" ? "," : ".");
    document.getElementById(of.shows).textContent = number >= 10000 ? grouped : written;
  });
})();
