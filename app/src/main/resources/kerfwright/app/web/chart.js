// Charts: where this script runs, uPlot draws on the screen what stands as a drawing on paper; read by pointer or arrow keys.
"use strict";
(() => {
  const DASHES = [[], [2.5, 3.5]];
  const drawn = new Set();

  /** A colour of the page as it is now, light or dim. */
  function colour(figure, name) {
    figure.style.setProperty("color", `var(${name})`);
    const found = getComputedStyle(figure).color;
    figure.removeAttribute("style");
    return found;
  }
  function written(number, comma) {
    const digits = Math.abs(number) >= 10 ? 3 : 2;
    const rounded = Math.abs(number) >= 1000 ? Math.round(number) : Number(Number(number.toPrecision(digits)).toFixed(3)) || 0;
    const plain = String(rounded).replace("-", "\u2212");
    const text = Math.abs(rounded) >= 10000 ? plain.replace(/\B(?=(\d{3})+$)/g, "\u00a0") : plain;
    return comma ? text.replace(".", ",") : text;
  }
  /** Places along a line, each as near its wish as room allows. */
  function apart(wishes, room, from, to) {
    let edge = from;
    const places = wishes.map((wish) => { const at = Math.max(wish, edge + room / 2); edge = at + room / 2; return at; });
    edge = to;
    for (let i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(places[i], edge - room / 2);
      edge = places[i] - room / 2;
    }
    return places;
  }

  function draw(figure) {
    const data = JSON.parse(figure.dataset.chart);
    const plot = document.createElement("div");
    const told = document.createElement("p");
    const size = parseFloat(getComputedStyle(document.documentElement).fontSize) * 0.8;
    const font = `${size}px ${getComputedStyle(document.body).fontFamily}`;
    const of = (name) => () => colour(figure, name);
    const figures = (chart, values) => values.map((value) => (value === null ? "" : written(value, data.comma)));
    const lineColours = ["--ink", "--accent"];
    const lines = data.lines.map((line, i) => ({ label: line.name, stroke: of(lineColours[i % 2]), width: 2.4, pxAlign: 0, dash: DASHES[i % 2], spanGaps: true, points: { show: false } }));
    const edges = data.band ? ["high", "low"] : [];
    const values = uPlot.join(data.lines.map((line, i) => [line.x, ...(i === 0 ? edges.map((edge) => data.band[edge]) : []), line.y]));
    // the band lies below the lines
    const series = [{}, ...edges.map((label) => ({ label, class: "chart-edge", points: { show: false }, spanGaps: true })), ...lines];
    let chart;
    let place = 0;
    let read = 0;

    /** Limit, beginnings of parts and single points, on the same canvas. */
    function marks(u) {
      const { ctx, bbox } = u;
      const ratio = uPlot.pxRatio;
      const x = (value) => u.valToPos(value, "x", true);
      const y = (value) => u.valToPos(value, "y", true);
      const stroke = (name, wide, dash, points) => {
        ctx.strokeStyle = colour(figure, name);
        ctx.lineWidth = wide * ratio;
        ctx.setLineDash(dash.map((one) => one * ratio));
        ctx.beginPath();
        points.forEach(([px, py], i) => (i ? ctx.lineTo(px, py) : ctx.moveTo(px, py)));
        ctx.stroke();
      };
      const text = (words, px, py, align, name) => {
        ctx.fillStyle = colour(figure, name);
        ctx.textAlign = align;
        ctx.fillText(words, px, py);
      };
      const disc = (px, py, radius, name) => {
        ctx.fillStyle = colour(figure, name);
        ctx.beginPath();
        ctx.arc(px, py, radius * ratio, 0, 2 * Math.PI);
        ctx.fill();
      };
      const right = bbox.left + bbox.width;
      const bottom = bbox.top + bbox.height;
      ctx.save();
      ctx.font = `600 ${size * ratio}px ${getComputedStyle(document.body).fontFamily}`;
      ctx.textBaseline = "alphabetic";
      if (data.lowest < 0) stroke("--quiet", 1, [4, 3], [[bbox.left, y(0)], [right, y(0)]]);
      const room = Math.min(2.1 * size * ratio, (bbox.width + size * ratio) / Math.max(1, data.begins.length));
      const places = apart(data.begins.map(x), room, bbox.left - room / 2, right + room / 2);
      data.begins.forEach((begin, i) => {
        const top = size * 1.2 * ratio;
        stroke("--quiet", 1, [4, 3], [[places[i], top], [x(begin), bbox.top], [x(begin), bottom]]);
        disc(places[i], top, room / 2 / ratio - 1, "--accent");
        text(String(i + 1), places[i], top + size * 0.36 * ratio, "center", "--on-accent");
      });
      if (data.level) {
        stroke("--accent", 1.8, [9, 5], [[bbox.left, y(data.level.y)], [right, y(data.level.y)]]);
        const wide = ctx.measureText(data.level.name).width + 4 * ratio;
        ctx.fillStyle = colour(figure, "--card");
        // on the left, where nothing has warmed yet: it would hide the band on the right
        const begin = bbox.left + 6 * ratio;
        ctx.fillRect(begin, y(data.level.y) - (size + 7) * ratio, wide, (size + 5) * ratio);
        text(data.level.name, begin, y(data.level.y) - 6 * ratio, "left", "--accent");
      }
      let above = 0;
      data.spots.forEach((spot, i) => {
        const left = x(spot.x) > bbox.left + bbox.width / 2;
        const before = data.spots[i - 1];
        const crowded = before && Math.abs(x(before.x) - x(spot.x)) < 8 * size * ratio && Math.abs(y(before.y) - y(spot.y)) < 2 * size * ratio;
        above = crowded ? above + 1.3 * size : 8;
        disc(x(spot.x), y(spot.y), 6, i % 2 ? "--ink" : "--accent");
        if (i % 2) disc(x(spot.x), y(spot.y), 3, "--card");
        text(spot.name, x(spot.x) + (left ? -10 : 10) * ratio, y(spot.y) - above * ratio, left ? "right" : "left", "--ink");
      });
      ctx.restore();
    }
    const wide = () => Math.max(200, plot.clientWidth);
    const high = () => Math.round(Math.min(460, Math.max(230, wide() * 0.5))) + (data.begins.length ? 3.3 * size : 0);
    const axis = (more) => ({ stroke: of("--quiet"), font, values: figures, grid: { stroke: of("--line"), width: 1 }, ticks: { show: false }, ...more });
    function build() {
      chart?.destroy();
      chart = new uPlot({
        width: wide(),
        height: high(),
        padding: [data.begins.length ? 3.3 * size : size, size, 0, 0],
        legend: { show: false },
        scales: { x: { time: false, range: [0, data.end] }, y: { range: [data.lowest, data.highest] } },
        axes: [
          axis({ label: data.across, labelFont: font, labelSize: 1.7 * size, size: 2.1 * size, space: 5 * size }),
          axis({ space: 2.6 * size, size: (u, all) => (1 + Math.max(1, ...(all || [""]).map((one) => one.length))) * 0.62 * size + 4 }),
        ],
        series,
        bands: data.band ? [{ series: [1, 2], fill: of("--band") }] : [],
        cursor: {
          y: false,
          drag: { x: false, y: false },
          bind: Object.fromEntries(["mousedown", "mouseup", "click", "dblclick", "mousemove", "mouseleave", "mouseenter"].map((name) => [name, () => null])),
          points: { size: 11, width: 2, stroke: of("--card"), fill: of("--accent") },
        },
        hooks: { draw: [marks], ready: [() => move(place)] },
      }, values, plot);
      chart.over.addEventListener("pointermove", follow);
      chart.over.addEventListener("pointerdown", follow);
    }
    /** Reads the chart at a place across. */
    function move(x, point) {
      place = Math.max(0, Math.min(data.end, x));
      const i = point ?? chart.valToIdx(place);
      read = i;
      chart.setCursor({ left: chart.valToPos(figure.dataset.slider ? place : values[0][i], "x"), top: 0 });
      if (figure.dataset.slider) return;
      const words = [data.across + ": " + written(values[0][i], data.comma)];
      data.lines.forEach((line, k) => {
        const value = values[k + 1 + edges.length][i];
        if (value !== null && value !== undefined) words.push(line.name + ": " + written(value, data.comma));
      });
      told.textContent = words.join("; ");
      plot.setAttribute("aria-valuenow", String(i));
      plot.setAttribute("aria-valuetext", told.textContent);
    }
    function follow(event) {
      const x = chart.posToVal(event.clientX - chart.over.getBoundingClientRect().left, "x");
      move(x);
      figure.dispatchEvent(new CustomEvent("chart-read", { detail: Math.max(0, Math.min(data.end, x)) }));
    }
    function key(event) {
      const last = values[0].length - 1;
      const to = { ArrowRight: read + 1, ArrowUp: read + 1, ArrowLeft: read - 1, ArrowDown: read - 1, PageUp: read + 10, PageDown: read - 10, Home: 0, End: last }[event.key];
      if (to === undefined) return;
      event.preventDefault();
      const point = Math.max(0, Math.min(last, to));
      move(values[0][point], point);
    }

    const upright = document.createElement("p");
    upright.className = "chart-upright";
    upright.textContent = data.upright;
    plot.className = "chart-plot";
    plot.setAttribute("aria-label", data.title + ". " + data.about);
    figure.append(upright, plot);
    if (data.band || data.lines.length > 1) {
      const legend = document.createElement("p");
      legend.className = "chart-key";
      data.lines.forEach((line, i) => {
        const one = document.createElement("span");
        one.className = (data.band && i === 0 ? "band " : "") + "line-" + i;
        one.textContent = data.band && i === 0 ? data.band.name : line.name;
        legend.append(one);
      });
      figure.append(legend);
    }
    if (figure.dataset.slider) {
      plot.setAttribute("role", "img");
    } else {
      plot.setAttribute("role", "slider");
      plot.setAttribute("tabindex", "0");
      plot.setAttribute("aria-valuemin", "0");
      plot.setAttribute("aria-valuemax", String(values[0].length - 1));
      plot.addEventListener("keydown", key);
      told.className = "chart-told";
      figure.append(told);
    }
    figure.classList.add("charted");
    build();
    new ResizeObserver(() => {
      if (!figure.isConnected || plot.clientWidth === 0 || chart.width === wide()) return;
      chart.setSize({ width: wide(), height: high() });
      move(place);
    }).observe(plot);
    figure.chart = { data, move };
    drawn.add({ figure, build });
  }

  function drawAll() {
    drawn.forEach((one) => one.figure.isConnected || drawn.delete(one));
    document.querySelectorAll("figure[data-chart]:not(.charted)").forEach(draw);
  }
  drawAll();
  document.addEventListener("htmx:load", drawAll);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => drawn.forEach((one) => one.build()));
})();
