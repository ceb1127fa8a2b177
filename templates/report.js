(function () {
  "use strict";

  var KM_PER_MILE = 1.609344;
  var unit = { own: "km", shown: "km" };

  function all(selector, root) {
    return Array.prototype.slice.call((root || document).querySelectorAll(selector));
  }

  function make(name, className, text) {
    var element = document.createElement(name);
    if (className) {
      element.className = className;
    }
    if (text) {
      element.textContent = text;
    }
    return element;
  }

  function button(className, text, action) {
    var made = make("button", className, text);
    made.type = "button";
    made.addEventListener("click", action);
    return made;
  }

  function plain(text) {
    return text.replace(/\s+/g, " ").trim();
  }

  // Links into closed sections.

  function reveal(target) {
    for (var at = target; at; at = at.parentElement) {
      if (at.tagName === "DETAILS") {
        at.open = true;
      }
    }
  }

  function revealAsked() {
    var target = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (target) {
      reveal(target);
      target.scrollIntoView();
    }
  }

  // The clipboard.

  function copy(text, from) {
    function done(ok) {
      var before = from.textContent;
      from.textContent = ok ? "Copied" : "Not copied";
      setTimeout(function () {
        from.textContent = before;
      }, 1500);
    }
    if (navigator.clipboard) {
      navigator.clipboard.writeText(text).then(
        function () {
          done(true);
        },
        function () {
          done(copyBySelection(text));
        });
    } else {
      done(copyBySelection(text));
    }
  }

  function copyBySelection(text) {
    var area = make("textarea");
    area.value = text;
    document.body.appendChild(area);
    area.select();
    var ok = document.execCommand("copy");
    area.remove();
    return ok;
  }

  // A row of tab-separated cells for each row of a table, as spreadsheets take them.
  function tableText(table) {
    return all("tr", table)
      .filter(function (row) {
        return !row.classList.contains("opened");
      })
      .map(function (row) {
        return Array.prototype.map
          .call(row.cells, function (cell) {
            return plain(cell.textContent) + "\t".repeat(cell.colSpan - 1);
          })
          .join("\t");
      })
      .join("\n");
  }

  function copyableTables() {
    all("table").forEach(function (table) {
      var caption = table.querySelector("caption");
      if (!caption || table.classList.contains("origins")) {
        return;
      }
      caption.appendChild(document.createTextNode(" "));
      var tool = button("tool", "Copy", function () {
        copy(tableText(table), tool);
      });
      tool.setAttribute("aria-label", "Copy the table: " + plain(caption.firstChild.textContent));
      caption.appendChild(tool);
    });
  }

  // What is known of a number, below it.

  function entry(list, term, nodes) {
    var row = make("div");
    row.appendChild(make("dt", "", term));
    var data = make("dd");
    nodes.forEach(function (node) {
      data.appendChild(node);
    });
    row.appendChild(data);
    list.appendChild(row);
  }

  function copies(nodes) {
    return Array.prototype.map.call(nodes, function (node) {
      return node.cloneNode(true);
    });
  }

  function marksOf(row) {
    var marks = [];
    all(".marks a", row).forEach(function (link) {
      link.textContent.split(",").forEach(function (run) {
        var ends = run.trim().split("\u2013").map(Number);
        for (var i = ends[0]; i <= ends[ends.length - 1]; i++) {
          marks.push(i);
        }
      });
    });
    return marks;
  }

  // From the row of the list of all numbers, so that the page has each fact once.
  function about(anchor) {
    var row = document.getElementById(anchor);
    var list = make("dl", "about");
    if (!row) {
      return list;
    }
    entry(list, plain(row.cells[0].firstChild.textContent), copies(row.cells[1].querySelectorAll(".value, .interval")).map(spaced));
    entry(list, "Method", [document.createTextNode(plain(row.cells[2].textContent))]);
    entry(list, "Rows", copies(row.querySelectorAll(".row")).map(spaced));
    marksOf(row).forEach(function (mark) {
      var caveat = document.getElementById("caveat-" + mark);
      if (caveat) {
        entry(list, "Caveat " + mark, copies(caveat.childNodes).slice(1));
      }
    });
    var link = make("a", "", row.querySelector(".id").textContent);
    link.href = "#" + anchor;
    entry(list, "Id", [link, document.createTextNode(" "), linkTool(anchor)]);
    return list;
  }

  function spaced(node) {
    var span = make("span");
    span.appendChild(node);
    span.appendChild(document.createTextNode(" "));
    return span;
  }

  function linkTool(anchor) {
    var tool = button("", "Copy link", function () {
      copy(location.href.split("#")[0] + "#" + anchor, tool);
    });
    return tool;
  }

  function toggleBelow(link) {
    var row = link.closest("tr");
    var anchor = link.getAttribute("href").slice(1);
    var below = row.nextElementSibling;
    var open = below && below.classList.contains("opened");
    var same = open && below.getAttribute("data-of") === anchor;
    if (open) {
      below.remove();
      all("a.value", row).forEach(function (other) {
        other.setAttribute("aria-expanded", "false");
      });
    }
    if (same) {
      return;
    }
    var opened = make("tr", "opened");
    opened.setAttribute("data-of", anchor);
    var cell = make("td");
    cell.colSpan = 99;
    cell.appendChild(about(anchor));
    opened.appendChild(cell);
    row.after(opened);
    link.setAttribute("aria-expanded", "true");
  }

  function numbersOpen() {
    all("td a.value").forEach(function (link) {
      link.setAttribute("role", "button");
      link.setAttribute("aria-expanded", "false");
      link.addEventListener("click", function (event) {
        event.preventDefault();
        toggleBelow(link);
      });
      link.addEventListener("keydown", function (event) {
        if (event.key === " ") {
          event.preventDefault();
          toggleBelow(link);
        }
      });
    });
    all(".item .about").forEach(function (list) {
      var link = list.querySelector("a");
      link.after(document.createTextNode(" "), linkTool(link.getAttribute("href").slice(1)));
    });
  }

  // Kilometres or miles.

  function swapUnits(root) {
    all("[data-other]", root).forEach(function (element) {
      var shown = element.textContent;
      element.textContent = element.getAttribute("data-other");
      element.setAttribute("data-other", shown);
    });
  }

  function unitTool(tools, changed) {
    if (!document.querySelector("[data-other]")) {
      return;
    }
    var other = unit.own === "km" ? "mi" : "km";
    var tool = button("tool", "Numbers in " + other, function () {
      swapUnits(document);
      unit.shown = unit.shown === unit.own ? other : unit.own;
      tool.textContent = "Numbers in " + (unit.shown === unit.own ? other : unit.own);
      tool.setAttribute("aria-label", tool.textContent + "; charts and sentences stay in " + unit.own);
      changed();
    });
    tools.appendChild(tool);
  }

  // A reading line on charts, and sessions switched on and off.

  function nearest(points, x) {
    var best = null;
    points.forEach(function (point) {
      if (best === null || Math.abs(point[0] - x) < Math.abs(best[0] - x)) {
        best = point;
      }
    });
    return best;
  }

  function place(x, unitOfX) {
    return unitOfX === "min" ? duration(Math.round(60 * x)) : Math.round(10 * x) / 10 + "\u00a0" + unitOfX;
  }

  function reading(line, x, reach, unitOfX) {
    var points = line.points;
    if (!points.length || x < points[0][0] - 1e-9 || x > points[points.length - 1][0] + 1e-9) {
      return "not recorded here";
    }
    var point = nearest(points, x);
    if (Math.abs(point[0] - x) > reach) {
      return "no reading near";
    }
    var at = Math.abs(point[0] - x) < 1e-9 ? "" : " at " + place(point[0], unitOfX);
    var name = line.unit && "\u00a0" + line.unit;
    return point[1] + name + at + (point[2] ? " (" + point[2] + name + ")" : "");
  }

  function chart(data) {
    var figure = data.closest("figure");
    var card = figure.querySelector(".card");
    var read = JSON.parse(data.textContent);
    var reach = (read.axis[1] - read.axis[0]) / 25;
    var off = {};
    var places = [];
    var rule = make("div", "reading-line");
    var out = make("output");
    var slider = make("input");
    var panel = make("div", "readout");

    function prepare() {
      var at = {};
      read.lines.forEach(function (line) {
        if (!off[line.color]) {
          line.points.forEach(function (point) {
            at[point[0]] = true;
          });
        }
      });
      places = Object.keys(at).map(Number).sort(function (a, b) {
        return a - b;
      });
      slider.max = String(Math.max(0, places.length - 1));
    }

    function plotShown() {
      var narrow = card.querySelector(".narrow");
      return narrow && getComputedStyle(narrow).display !== "none" ? read.narrow : read.wide;
    }

    function show() {
      var x = places[Number(slider.value)];
      if (x === undefined) {
        return;
      }
      out.textContent = "";
      out.appendChild(make("b", "", place(x, read.unit)));
      read.lines.forEach(function (line) {
        if (!off[line.color]) {
          out.appendChild(make("span", "", line.name + " " + reading(line, x, reach, read.unit)));
        }
      });
      slider.setAttribute("aria-valuetext", plain(out.textContent));
      var plot = plotShown();
      var share = (x - read.axis[0]) / (read.axis[1] - read.axis[0]);
      rule.style.left = 100 * (plot[0] + share * plot[2]) + "%";
      rule.style.top = 100 * plot[1] + "%";
      rule.style.height = 100 * plot[3] + "%";
      rule.hidden = false;
    }

    function follow(event) {
      var box = card.getBoundingClientRect();
      var plot = plotShown();
      var share = ((event.clientX - box.left) / box.width - plot[0]) / plot[2];
      var x = read.axis[0] + share * (read.axis[1] - read.axis[0]);
      var best = 0;
      places.forEach(function (other, i) {
        if (Math.abs(other - x) < Math.abs(places[best] - x)) {
          best = i;
        }
      });
      slider.value = String(best);
      show();
    }

    function session(line) {
      var label = make("label");
      var box = make("input");
      box.type = "checkbox";
      box.checked = true;
      box.addEventListener("change", function () {
        off[line.color] = !box.checked;
        all('[stroke="' + line.color + '"], [fill="' + line.color + '"]', card).forEach(function (shape) {
          shape.style.visibility = box.checked ? "" : "hidden";
        });
        prepare();
        slider.value = "0";
        show();
      });
      label.append(box, " " + line.name);
      panel.appendChild(label);
    }

    slider.type = "range";
    slider.min = "0";
    slider.value = "0";
    slider.setAttribute("aria-label", "Read the chart at");
    slider.addEventListener("input", show);
    slider.addEventListener("focus", show);
    prepare();
    out.textContent = "Move along the chart to read it.";
    rule.hidden = true;
    card.appendChild(rule);
    card.addEventListener("pointermove", follow);
    card.addEventListener("pointerdown", follow);
    panel.append(slider, out);
    var sessions = read.lines.filter(function (line) {
      return line.color;
    });
    if (sessions.length > 1) {
      sessions.forEach(session);
    }
    card.after(panel);
  }

  // How long a stop takes.

  function two(number) {
    return (number < 10 ? "0" : "") + number;
  }

  function duration(seconds) {
    var hours = Math.floor(seconds / 3600);
    var minutes = Math.floor((seconds % 3600) / 60);
    var rest = seconds % 60;
    var parts = [];
    if (hours) {
      parts.push(hours + "\u00a0h");
    }
    if (minutes) {
      parts.push(minutes + "\u00a0min");
    }
    if (rest || !parts.length) {
      parts.push(rest + "\u00a0s");
    }
    return parts.join("\u00a0");
  }

  function stops(form) {
    var times = JSON.parse(document.getElementById("stop-times").textContent);
    var soc = form.elements.soc;
    var distance = form.elements.distance;
    var out = form.querySelector("output");
    unit.own = times.distance_unit;
    unit.shown = unit.own;

    function perShown() {
      return unit.shown === unit.own ? 1 : unit.own === "km" ? KM_PER_MILE : 1 / KM_PER_MILE;
    }

    // Between two distances of the table linear; a charge is a whole per cent, as displays show it.
    function at(from, own) {
      var row = times.seconds[from - times.first_soc];
      var steps = own / times.distance_step;
      if (!row || !(steps > 0) || steps > row.length + 1e-9) {
        return null;
      }
      var below = Math.min(Math.floor(steps), row.length - 1);
      var share = steps - below;
      var one = below === 0 ? [0, 0, 0] : row[below - 1];
      return row[below].map(function (end, i) {
        return share === 0 ? one[i] : one[i] + share * (end - one[i]);
      });
    }

    function most(from) {
      var row = times.seconds[from - times.first_soc];
      return row ? Math.floor((row.length * times.distance_step) / perShown() + 1e-9) : 0;
    }

    function why(from) {
      var last = times.first_soc + times.seconds.length - 1;
      return most(from)
        ? "Not recorded: from " + from + "\u00a0% this session shows the time for " + most(from) + "\u00a0" + unit.shown + " at most."
        : "Not recorded: this session shows times for plugging in at " + times.first_soc + "\u00a0% to " + last + "\u00a0%.";
    }

    function show() {
      var from = Math.round(Number(soc.value));
      var time = soc.value === "" ? null : at(from, Number(distance.value) * perShown());
      all(".distance-unit", form).forEach(function (name) {
        name.textContent = unit.shown;
      });
      out.textContent = "";
      if (!time) {
        out.textContent = Number(distance.value) > 0 ? why(from) : "Give a distance above 0.";
        return;
      }
      var half = (time[2] - time[1]) / 2;
      var step = half < 100 ? 1 : half < 1000 ? 10 : 60;
      out.append(
        make("b", "figure-value", duration(Math.round(time[0] / step) * step)),
        " ",
        make("span", "between",
          duration(Math.floor(time[1] / step + 1e-6) * step) + " to " + duration(Math.ceil(time[2] / step - 1e-6) * step)));
    }

    form.addEventListener("input", show);
    form.addEventListener("submit", function (event) {
      event.preventDefault();
    });
    form.hidden = false;
    show();
    return function () {
      distance.value = String(Math.round((Number(distance.value) * (unit.shown === unit.own ? (unit.own === "km" ? KM_PER_MILE : 1 / KM_PER_MILE) : 1 / perShown()))));
      show();
    };
  }

  var form = document.querySelector("form.stop");
  var unitChanged = form ? stops(form) : function () {};
  copyableTables();
  numbersOpen();
  all("script.readings").forEach(chart);
  var tools = document.querySelector(".ways");
  if (tools) {
    unitTool(tools, unitChanged);
  }
  window.addEventListener("hashchange", revealAsked);
  revealAsked();
})();
