"use strict";
(function () {
  var PAGE = 20;
  var WITHOUT_TOOLS = 8;
  var lists = [];

  function make(name, text, inside) {
    var element = document.createElement(name);
    if (text) { element.textContent = text; }
    inside.appendChild(element);
    return element;
  }

  function labelled(name, text, inside) {
    var label = make("label", text + " ", inside);
    return make(name, "", label);
  }

  function button(text, inside, act) {
    var made = make("button", text, inside);
    made.type = "button";
    made.addEventListener("click", act);
    return made;
  }

  // Numbers sort as numbers, all else by its letters.
  function order(a, b) {
    var x = parseFloat(a);
    var y = parseFloat(b);
    if (!isNaN(x) && !isNaN(y) && x !== y) { return x - y; }
    return a < b ? -1 : a > b ? 1 : 0;
  }

  function list(table) {
    var body = table.tBodies[0];
    var given = Array.prototype.slice.call(body.rows);
    if (given.length < WITHOUT_TOOLS) { return; }
    var words = table.dataset;
    var rows = given.map(function (row, place) {
      return { row: row, place: place, text: row.textContent.toLowerCase() };
    });
    var from = 0;
    var size = PAGE;
    var turned = 1;
    var tools = document.createElement("div");
    tools.className = "tools";
    table.parentNode.insertBefore(tools, table);
    var filter = labelled("input", words.filter, tools);
    filter.type = "search";
    var sort = labelled("select", words.sort, tools);
    make("option", words.given, sort).value = "-1";
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (cell, place) {
      make("option", cell.textContent, sort).value = String(place);
    });
    button(words.turn, tools, function () { turned = -turned; from = 0; show(); });
    var pager = document.createElement("div");
    pager.className = "tools";
    table.parentNode.insertBefore(pager, table.nextSibling);
    var status = make("p", "", pager);
    status.setAttribute("role", "status");
    var before = button(words.before, pager, function () { from = Math.max(0, from - size); show(); });
    var after = button(words.after, pager, function () { from += size; show(); });
    var all = button(words.all, pager, function () { size = Infinity; from = 0; show(); });

    // Counts and shares are asked for to see the most; all else reads from its beginning.
    function isCount(column) {
      return column >= 0 && given.every(function (row) {
        var cell = row.cells[column];
        return cell.classList.contains("number") || cell.dataset.sort !== undefined;
      });
    }

    function value(item, column) {
      var cell = item.row.cells[column];
      return cell.dataset.sort === undefined ? cell.textContent.trim() : cell.dataset.sort;
    }

    function show() {
      var column = parseInt(sort.value, 10);
      var wanted = filter.value.trim().toLowerCase();
      var found = rows.filter(function (item) { return item.text.indexOf(wanted) >= 0; });
      found.sort(function (a, b) {
        var by = column < 0 ? 0 : order(value(a, column), value(b, column));
        return turned * (by || (column < 0 ? a.place - b.place : 0)) || a.place - b.place;
      });
      Array.prototype.forEach.call(table.tHead.rows[0].cells, function (cell, place) {
        if (place === column) {
          cell.setAttribute("aria-sort", turned > 0 ? "ascending" : "descending");
        } else {
          cell.removeAttribute("aria-sort");
        }
      });
      if (from >= found.length) { from = 0; }
      var shown = found.slice(from, from + size);
      var piece = document.createDocumentFragment();
      shown.forEach(function (item) { piece.appendChild(item.row); });
      body.textContent = "";
      body.appendChild(piece);
      var first = shown.length === 0 ? 0 : from + 1;
      status.textContent = found.length === 0
        ? words.nothing.replace("#", function () { return filter.value.trim(); })
        : words.shown.replace("##", String(found.length))
        .replace("#", first + "–" + (from + shown.length));
      before.disabled = from === 0;
      after.disabled = from + shown.length >= found.length;
      all.disabled = shown.length === found.length;
      pager.hidden = false;
    }

    filter.addEventListener("input", function () { from = 0; show(); });
    sort.addEventListener("change", function () {
      turned = isCount(parseInt(sort.value, 10)) ? -1 : 1;
      from = 0;
      show();
    });
    lists.push({
      whole: function () { size = Infinity; from = 0; show(); },
      cut: function () { size = PAGE; show(); }
    });
    show();
  }

  Array.prototype.forEach.call(document.querySelectorAll("table[data-list]"), list);

  // What is on another page of a list prints too, and every entry given. All else that is closed
  // is left out, and its summary says so.
  var closed = [];
  window.addEventListener("beforeprint", function () {
    closed = Array.prototype.slice.call(document.querySelectorAll("details.prints:not([open])"));
    closed.forEach(function (d) { d.open = true; });
    lists.forEach(function (each) { each.whole(); });
  });
  window.addEventListener("afterprint", function () {
    closed.forEach(function (d) { d.open = false; });
    lists.forEach(function (each) { each.cut(); });
  });
})();
