(function () {
  "use strict";

  // What a row is sorted by in a column: a number, a text, or nothing where a value was withheld.
  function keyOf(row, column, numeric) {
    var cell = row.cells[column];
    var written = cell.hasAttribute("data-sort") ? cell.getAttribute("data-sort") : cell.textContent.trim();
    if (written === "") {
      return null;
    }
    return numeric ? parseFloat(written) : written;
  }

  function compare(a, b, sign) {
    if (a === null || b === null) {
      return a === b ? 0 : a === null ? 1 : -1;
    }
    return a < b ? -sign : a > b ? sign : 0;
  }

  function sort(table, heads, column) {
    var head = heads[column];
    var sign = head.getAttribute("aria-sort") === "ascending" ? -1 : 1;
    var numeric = head.getAttribute("data-type") === "number";
    var body = table.tBodies[0];
    var rows = Array.prototype.map.call(body.rows, function (row, index) {
      return { row: row, key: keyOf(row, column, numeric), index: index };
    });
    rows.sort(function (a, b) {
      return compare(a.key, b.key, sign) || a.index - b.index;
    });
    rows.forEach(function (each) {
      body.appendChild(each.row);
    });
    Array.prototype.forEach.call(heads, function (other) {
      other.removeAttribute("aria-sort");
    });
    head.setAttribute("aria-sort", sign > 0 ? "ascending" : "descending");
  }

  function prepare(table) {
    var heads = table.tHead.rows[0].cells;
    Array.prototype.forEach.call(heads, function (head, column) {
      if (head.hasAttribute("data-fixed")) {
        return;
      }
      var button = document.createElement("button");
      button.type = "button";
      while (head.firstChild) {
        button.appendChild(head.firstChild);
      }
      head.appendChild(button);
      button.addEventListener("click", function () {
        sort(table, heads, column);
      });
    });
    table.classList.add("sorts");
  }

  Array.prototype.forEach.call(document.querySelectorAll("table.sortable"), prepare);
})();
