"use strict";
// The page is whole without this: it makes tables easier to search and lets charts tell their points.
(() => {
  const collator = new Intl.Collator("en", { numeric: true });
  const enoughToFilter = 8;

  const text = (cell) => cell.textContent.trim();
  const isEmpty = (cell) => cell.querySelector(".none") !== null;

  const compare = (a, b) =>
    a.dataset.sort !== undefined && b.dataset.sort !== undefined
      ? Number(a.dataset.sort) - Number(b.dataset.sort)
      : collator.compare(text(a), text(b));

  const sort = (body, index, direction) => {
    const rows = [...body.rows];
    rows.sort((one, other) => {
      const a = one.cells[index];
      const b = other.cells[index];
      if (isEmpty(a) || isEmpty(b)) {
        return isEmpty(a) - isEmpty(b);
      }
      return direction * compare(a, b);
    });
    body.append(...rows);
  };

  const makeSortable = (table) => {
    const heads = [...table.tHead.rows[0].cells];
    heads.forEach((head, index) => {
      const button = document.createElement("button");
      button.type = "button";
      button.append(...head.childNodes);
      head.append(button);
      button.addEventListener("click", () => {
        const ascending = head.getAttribute("aria-sort") !== "ascending";
        heads.forEach((other) => other.removeAttribute("aria-sort"));
        head.setAttribute("aria-sort", ascending ? "ascending" : "descending");
        sort(table.tBodies[0], index, ascending ? 1 : -1);
      });
    });
  };

  const makeFilterable = (table) => {
    const rows = [...table.tBodies[0].rows];
    const line = document.createElement("p");
    const label = document.createElement("label");
    const input = document.createElement("input");
    const status = document.createElement("span");
    line.className = "filter";
    input.type = "search";
    status.setAttribute("role", "status");
    label.append("Show rows with ", input);
    line.append(label, status);
    input.addEventListener("input", () => {
      const wanted = input.value.trim().toLowerCase();
      rows.forEach((row) => {
        row.hidden = !row.textContent.toLowerCase().includes(wanted);
      });
      const shown = rows.filter((row) => !row.hidden).length;
      status.textContent = wanted === "" ? "" : `${shown} of ${rows.length} rows`;
    });
    table.parentElement.before(line);
  };

  // A chart with points is one stop of the keyboard; arrow keys go from point to point, left to right.
  const makeTelling = (svg) => {
    const plot = svg.parentElement;
    const label = document.createElement("p");
    const points = [...svg.children].sort((a, b) => a.cx.baseVal.value - b.cx.baseVal.value);
    label.className = "tip";
    label.hidden = true;
    label.setAttribute("aria-hidden", "true");
    plot.append(label);
    svg.removeAttribute("aria-hidden");
    svg.setAttribute("role", "group");
    svg.setAttribute("aria-label", "Points of the chart: arrow keys go from one to the next");

    const hide = () => {
      label.hidden = true;
    };
    const tell = (point) => {
      const spot = point.getBoundingClientRect();
      const frame = plot.getBoundingClientRect();
      label.textContent = point.getAttribute("aria-label");
      label.hidden = false;
      const left = spot.left - frame.left + spot.width / 2 - label.offsetWidth / 2;
      const above = spot.top - frame.top - label.offsetHeight - 6;
      label.style.left = `${Math.max(0, Math.min(left, frame.width - label.offsetWidth))}px`;
      label.style.top = `${above < 0 ? spot.bottom - frame.top + 6 : above}px`;
    };
    const go = (from, to) => {
      from.tabIndex = -1;
      to.tabIndex = 0;
      to.focus();
    };

    points.forEach((point, index) => {
      const title = point.firstElementChild;
      point.setAttribute("role", "img");
      point.setAttribute("aria-label", title.textContent);
      title.remove();
      point.tabIndex = index === 0 ? 0 : -1;
      point.addEventListener("pointerenter", () => tell(point));
      point.addEventListener("focus", () => tell(point));
      point.addEventListener("blur", hide);
    });
    svg.addEventListener("keydown", (event) => {
      const at = points.indexOf(document.activeElement);
      const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
      if (event.key === "Escape") {
        hide();
      } else if (step !== undefined && at >= 0) {
        event.preventDefault();
        go(points[at], points[(at + step + points.length) % points.length]);
      }
    });
    plot.addEventListener("pointerleave", hide);
    document.addEventListener("keydown", (event) => {
      if (event.key === "Escape") {
        hide();
      }
    });
  };

  document.querySelectorAll("svg.tips").forEach(makeTelling);

  for (const table of document.querySelectorAll("table.list")) {
    const rows = table.tBodies[0].rows.length;
    if (rows > 1) {
      makeSortable(table);
    }
    if (rows > enoughToFilter) {
      makeFilterable(table);
    }
  }
})();
