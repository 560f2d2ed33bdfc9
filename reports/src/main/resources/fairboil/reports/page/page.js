"use strict";
// The page is whole without this: it only makes tables easier to search.
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
