(function () {
  "use strict";
  var main = document.getElementById("main");
  var form = document.getElementById("form");
  var frame = document.getElementById("sheet");
  var status = document.getElementById("status");
  var note = document.getElementById("note");
  var clear = document.getElementById("clear");
  var back = document.getElementById("back");
  var working = document.getElementById("working");
  var find = document.getElementById("find");
  var which = document.getElementById("which");
  var rows = document.getElementById("layer-rows");
  var records = [];
  var kept = {};
  // Which of the records of a file stands in the form; -1 if it is of no file.
  var at = -1;
  var unsaved = false;
  // Forms that were put away whole, the last one last: by opening, dropping, clearing.
  var past = [];
  var mostPast = 10;
  var latest = 0;
  var opening = 0;
  var timer = 0;
  // What waits for a sheet that is up to date.
  var after = null;
  var feet = new CSSStyleSheet();
  document.adoptedStyleSheets = [feet];

  // Who writes in French marks decimals by a comma; what a file says stays as the file has it.
  var isComma = document.documentElement.lang === "fr";

  function isFigure(field) {
    return "number" in field.dataset && "typed" in field.dataset;
  }

  // Elsewhere a comma marks decimals where it cannot part thousands: 41,2 and 0,125, not 1,250.
  function decimals(said) {
    return said.replace(/(^|[^\d.,])(\d+),(\d+)(?![\d.,])/g, function (all, before, whole, rest) {
      var isThousands = rest.length === 3 && whole.length <= 3 && whole[0] !== "0";
      return isThousands ? all : before + whole + "." + rest;
    });
  }

  function text(field) {
    var said = field.value.trim();
    if (!isFigure(field)) { return said; }
    return isComma ? said.replace(/(\d),(?=\d)/g, "$1.") : decimals(said);
  }

  // Beside such commas 1,250 may be either.
  function isEither() {
    return !isComma && Array.from(form.querySelectorAll("input")).some(function (field) {
      return isFigure(field) && decimals(field.value.trim()) !== field.value.trim();
    });
  }

  function addLayer() {
    var row = document.getElementById("layer-row").content.cloneNode(true);
    row.querySelector("span").textContent = main.dataset.layer.replace("#", rows.children.length + 1);
    rows.appendChild(row);
  }

  // The record as JSON: keys nested by their dots, every value as it was typed.
  function record(value) {
    var out = {};
    form.querySelectorAll("[name]").forEach(function (field) {
      var said = (value || text)(field);
      if (said === "") { return; }
      var parts = field.name.split(".");
      var at = out;
      parts.slice(0, -1).forEach(function (part) { at = at[part] = at[part] || {}; });
      at[parts[parts.length - 1]] = said;
    });
    var layers = [];
    rows.querySelectorAll(".layer").forEach(function (row) {
      var layer = {};
      row.querySelectorAll("input").forEach(function (input) {
        if (text(input) !== "") { layer[input.dataset.part] = text(input); }
      });
      // A layer of which something is known is kept: what is not yet known is said to be.
      if (layer.from || layer.to || layer.material) {
        layer.from = layer.from || "unknown";
        layer.to = layer.to || "unknown";
        layer.material = layer.material || "";
        layers.push(layer);
      }
    });
    if (layers.length) { out.layers = layers; }
    Object.keys(kept).forEach(function (key) { if (!(key in out)) { out[key] = kept[key]; } });
    return out;
  }

  function ask(path, body, then, refused) {
    fetch(path, { method: "POST", headers: { "X-Desk-Token": main.dataset.token }, body: body })
      .then(function (answer) { return answer.ok || answer.status === 413 ? answer.json() : { problem: main.dataset.stale }; })
      .then(function (answer) {
        if (!answer.problem) {
          then(answer);
        } else if (refused) {
          refused(answer.problem);
        } else {
          status.textContent = answer.problem;
        }
      })
      .catch(function () {
        status.textContent = main.dataset.lost;
        if (refused) { refused(main.dataset.lost); }
      });
  }

  // While an answer is outstanding the sheet is of before the last change, and says so.
  function behind(is) {
    working.hidden = !is;
    document.getElementById("beside").classList.toggle("behind", is);
    if (!is && after) {
      var then = after;
      after = null;
      then();
    }
  }

  // Beside a field: what was read where something stands, else the unit that a bare number is in.
  function unit(field, reading) {
    var place = document.getElementById(field.id + "-unit");
    if (!place) { return; }
    var units = place.dataset.units.split("|");
    var chosen = document.getElementById("record-units").value;
    var one = units.length < 2 || chosen === "" ? units.join(" | ") : units[chosen === "metric" ? 1 : 0];
    var isTold = reading && field.value.trim() !== "" && reading !== field.value.trim();
    var said = isTold ? main.dataset.read.replace("#", reading) : one;
    if (place.textContent !== said) { place.textContent = said; }
  }

  function all(then) { form.querySelectorAll("[name]").forEach(then); }

  // From a finding of the sheet back to the entries that it hangs on.
  function go(field) {
    var group = field.closest("details");
    if (group) { group.open = true; }
    field.scrollIntoView({ block: "center" });
    field.focus({ preventScroll: true });
  }

  function label(field) { return form.querySelector('label[for="' + field.id + '"]').textContent; }

  function backlinks(sheet, places) {
    Object.keys(places).forEach(function (anchor) {
      var finding = sheet.getElementById(anchor);
      if (!finding) { return; }
      var line = sheet.createElement("p");
      line.className = "tools";
      places[anchor].forEach(function (key) {
        var field = form.querySelector('[name="' + key + '"]');
        if (!field) { return; }
        var button = sheet.createElement("button");
        button.type = "button";
        button.textContent = main.dataset.entry.replace("#", label(field));
        button.addEventListener("click", function () { go(field); });
        line.appendChild(button);
      });
      if (line.children.length) { finding.appendChild(line); }
    });
  }

  // From what the sheet asks for to the field that takes it.
  function asksLead(sheet) {
    sheet.querySelectorAll("[data-entry]").forEach(function (asked) {
      var key = asked.dataset.entry;
      var field = key === "layers" ? document.getElementById("layer-more") : form.querySelector('[name="' + key + '"]');
      if (!field) { return; }
      var button = sheet.createElement("button");
      button.type = "button";
      button.className = "to-entry";
      button.dataset.entry = key;
      button.textContent = asked.textContent;
      button.setAttribute("aria-label", main.dataset.entry.replace("#", asked.textContent));
      button.addEventListener("click", function () { go(field); });
      asked.replaceWith(button);
    });
  }

  // What there is to say of single entries stands beside them, and each group says how much.
  function beside(notes, readings) {
    all(function (field) { unit(field, readings[field.name]); });
    form.querySelectorAll("[name]").forEach(function (field) {
      var said = notes[field.name] || [];
      var place = document.getElementById(field.id + "-note");
      var all = said.join(" ");
      if (place && place.textContent !== all) { place.textContent = all; }
    });
    form.querySelectorAll("details").forEach(function (group) {
      var many = Array.from(group.querySelectorAll(".beside-it")).filter(function (n) { return n.textContent !== ""; }).length;
      group.querySelector("summary .many").textContent = many === 0 ? "" : "(" + main.dataset.notes.replace("#", many) + ")";
    });
  }

  function tell(text) {
    note.textContent = text || "";
    note.hidden = !text;
  }

  function check() {
    var mine = ++latest;
    var asked = record();
    // Of a form that says nothing there is nothing to say.
    if (Object.keys(asked).length === 0) {
      frame.onload = null;
      frame.srcdoc = "";
      status.textContent = main.dataset.waiting;
      document.getElementById("bare").textContent = "";
      beside({}, {});
      behind(false);
      return;
    }
    // A record needs a number; a form that has none yet is checked all the same.
    asked.record = asked.record || {};
    asked.record.id = asked.record.id || main.dataset.unnumbered;
    behind(true);
    ask(isEither() ? "check?comma=either" : "check", JSON.stringify(asked), function (answer) {
      if (mine !== latest) { return; }
      var top = frame.contentWindow ? frame.contentWindow.scrollY : 0;
      frame.onload = function () {
        var own = new frame.contentWindow.CSSStyleSheet();
        own.replaceSync(answer.foot);
        frame.contentDocument.adoptedStyleSheets = [own];
        backlinks(frame.contentDocument, answer.places);
        asksLead(frame.contentDocument);
        frame.contentWindow.scrollTo(0, top);
        behind(mine !== latest);
      };
      feet.replaceSync(answer.foot);
      frame.srcdoc = answer.sheet;
      beside(answer.notes, answer.readings);
      document.getElementById("bare").textContent = answer.bare;
      status.textContent = main.dataset.said.replace("##", answer.untold).replace("#", answer.findings);
    });
  }

  function soon() {
    // An answer that is on its way is of before this change.
    latest++;
    behind(true);
    clearTimeout(timer);
    timer = setTimeout(check, 250);
  }

  function fill(source, typed) {
    form.reset();
    form.querySelectorAll("[data-typed]").forEach(function (field) { delete field.dataset.typed; });
    rows.textContent = "";
    kept = {};
    Object.keys(source).forEach(function (head) {
      var part = source[head];
      if (head === "layers") {
        part.forEach(function (layer) {
          addLayer();
          rows.lastElementChild.querySelectorAll("input").forEach(function (input) {
            input.value = layer[input.dataset.part] || "";
          });
        });
      } else if (part && typeof part === "object" && !Array.isArray(part)) {
        Object.keys(part).forEach(function (tail) { set(head + "." + tail, part[tail]); });
      } else {
        kept[head] = part;
      }
    });
    addLayer();
    groups().forEach(function (group) {
      group.open = Array.from(group.querySelectorAll("[name]")).some(function (f) { return f.value !== ""; });
    });
    (typed || []).forEach(function (name) { form.querySelector('[name="' + name + '"]').dataset.typed = ""; });
    check();
  }

  function set(name, text) {
    var field = form.querySelector('[name="' + name + '"]');
    if (!field) { return; }
    field.value = text;
    delete field.dataset.typed;
    // A choice that the list lacks stays as it was written.
    if (field.tagName === "SELECT" && field.value !== String(text)) {
      var same = Array.from(field.options).filter(function (o) {
        return o.value.toLowerCase() === String(text).trim().toLowerCase();
      })[0];
      if (same) { field.value = same.value; } else { field.add(new Option(text, text, true, true)); }
    }
  }

  function groups() { return form.querySelectorAll("details"); }

  function isEmpty() { return Object.keys(record()).length === 0; }

  function mark() {
    document.getElementById("kept").textContent = unsaved ? main.dataset.unsaved : "";
    back.hidden = past.length === 0;
  }

  // The form as it stands, to be shown again: what is typed is not yet read.
  function raw() { return record(function (field) { return field.value.trim(); }); }

  function typed() {
    return Array.from(form.querySelectorAll("[name][data-typed]")).map(function (f) { return f.name; });
  }

  // The form back into its place among the records of its file.
  function park() {
    if (at >= 0) {
      records[at].record = raw();
      records[at].typed = typed();
      records[at].unsaved = unsaved;
      which.options[at].textContent = named(records[at]);
    }
  }

  function named(one) { return one.unsaved ? main.dataset.changed.replace("#", one.name) : one.name; }

  function isUnsaved() {
    return unsaved || records.some(function (one, i) { return i !== at && one.unsaved; });
  }

  function whole() {
    park();
    return { records: records, at: at, form: raw(), typed: typed(), unsaved: unsaved, asks: isUnsaved() };
  }

  // What is put away can be brought back, until the page is left.
  function putAway(asks) {
    if (isEmpty() && records.length === 0) { return false; }
    var one = whole();
    one.asks = asks && one.asks;
    past.push(one);
    if (past.length > mostPast) { past.shift(); }
    return true;
  }

  function show(one) {
    records = one.records;
    at = one.at;
    which.textContent = "";
    records.forEach(function (each, i) { which.add(new Option(named(each), i)); });
    if (at >= 0) { which.value = at; }
    document.getElementById("which-label").hidden = records.length < 2;
    fill(one.form, one.typed);
    unsaved = one.unsaved;
    mark();
  }

  function open(files) {
    var file = files[0];
    var mine = ++opening;
    var more = Array.from(files).slice(1).map(function (each) { return each.name; }).join(", ");
    var alone = more ? main.dataset.one.replace("##", more).replace("#", file.name) : "";
    if (file.size > Number(main.dataset.most)) {
      tell(main.dataset.large.replace("#", file.name));
      return;
    }
    tell(main.dataset.reading.replace("#", file.name));
    main.setAttribute("aria-busy", "true");
    ask("read?name=" + encodeURIComponent(file.name), file, function (answer) {
      if (mine !== opening) { return; }
      main.removeAttribute("aria-busy");
      var isKept = putAway(true);
      show({ records: answer.records, at: 0, form: answer.records[0].record, unsaved: false });
      tell([answer.note, alone, isKept ? main.dataset.replaced.replace("#", back.textContent) : ""]
        .filter(Boolean).join(" "));
    }, function (problem) {
      if (mine !== opening) { return; }
      main.removeAttribute("aria-busy");
      tell(problem);
    });
  }

  form.addEventListener("input", function (event) {
    if (event.target === find) { return; }
    event.target.dataset.typed = "";
    unsaved = true;
    mark();
    if (event.target.id === "record-units") { all(function (field) { unit(field, ""); }); }
    if (event.target.name) { unit(event.target, ""); }
    soon();
  });
  form.addEventListener("submit", function (event) {
    event.preventDefault();
    check();
  });
  document.getElementById("layer-more").addEventListener("click", function () {
    addLayer();
    rows.lastElementChild.querySelector("input").focus();
  });
  document.getElementById("file").addEventListener("change", function (event) {
    if (event.target.files.length) { open(event.target.files); }
    // The same file can be chosen once more.
    event.target.value = "";
  });
  which.addEventListener("change", function () {
    park();
    at = Number(which.value);
    fill(records[at].record, records[at].typed);
    unsaved = Boolean(records[at].unsaved);
    mark();
  });
  clear.addEventListener("click", function () {
    tell("");
    putAway(false);
    show({ records: [], at: -1, form: {}, unsaved: false });
    form.querySelector("details").open = true;
  });
  back.addEventListener("click", function () {
    var was = past.pop();
    tell("");
    // What stands there now is not lost by it either.
    if (isUnsaved() && !isEmpty()) { past.unshift(whole()); }
    show(was);
    if (back.hidden) { clear.focus(); }
  });
  // The browser asks before it leaves what nobody has saved.
  window.addEventListener("beforeunload", function (event) {
    if (isUnsaved() || past.some(function (one) { return one.asks; })) {
      event.preventDefault();
      event.returnValue = "";
    }
  });

  all(function (field) {
    if (field.id !== "record-units") { document.getElementById("find-all").appendChild(new Option("", label(field))); }
  });
  function seek() {
    var sought = find.value.trim().toLowerCase();
    if (sought === "") { return; }
    var named = Array.from(form.querySelectorAll("[name]"));
    var found = named.filter(function (f) { return label(f).toLowerCase() === sought; })[0] ||
      named.filter(function (f) { return label(f).toLowerCase().indexOf(sought) >= 0; })[0];
    if (found) {
      tell("");
      go(found);
    } else {
      tell(main.dataset.missed.replace("#", find.value.trim()));
    }
  }
  document.getElementById("find-go").addEventListener("click", seek);
  find.addEventListener("keydown", function (event) {
    if (event.key === "Enter") {
      event.preventDefault();
      seek();
    }
  });
  var every = document.getElementById("all");
  every.addEventListener("click", function () {
    var isOpen = Array.from(groups()).some(function (group) { return !group.open; });
    groups().forEach(function (group) { group.open = isOpen; });
    every.textContent = isOpen ? main.dataset.close : main.dataset.open;
  });
  document.getElementById("print").addEventListener("click", function () {
    var print = function () { frame.contentWindow.print(); };
    if (working.hidden) { print(); } else { after = print; }
  });
  document.getElementById("save").addEventListener("click", function () {
    var out = record();
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([JSON.stringify(out, null, 2) + "\n"], { type: "application/json" }));
    link.download = ((out.record && out.record.id) || "record").replace(/[^A-Za-z0-9_-]+/g, "-") + ".json";
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);
    unsaved = false;
    park();
    mark();
    document.getElementById("kept").textContent = main.dataset.saved.replace("#", link.download);
  });
  ["dragover", "dragleave", "drop"].forEach(function (kind) {
    document.addEventListener(kind, function (event) {
      event.preventDefault();
      main.classList.toggle("dropping", kind === "dragover");
      if (kind === "drop" && event.dataTransfer.files.length) { open(event.dataTransfer.files); }
    });
  });
  // The browser's own printing prints the sheet, not the form: a frame is cut at its edge, so its
  // content stands on the page itself meanwhile.
  var paper = document.createElement("div");
  paper.id = "paper";
  document.body.appendChild(paper);
  window.addEventListener("beforeprint", function () {
    var sheet = frame.contentDocument && frame.contentDocument.body;
    if (!sheet || sheet.children.length === 0) { return; }
    paper.textContent = "";
    if (!working.hidden) {
      var late = document.createElement("p");
      late.className = "cut";
      late.textContent = working.textContent;
      paper.appendChild(late);
    }
    Array.from(sheet.children).forEach(function (part) {
      if (part.tagName !== "SCRIPT") { paper.appendChild(document.importNode(part, true)); }
    });
    paper.querySelectorAll("details.prints").forEach(function (d) { d.open = true; });
    document.body.classList.add("on-paper");
  });
  window.addEventListener("afterprint", function () {
    paper.textContent = "";
    document.body.classList.remove("on-paper");
  });
  addLayer();
  check();
})();
