(function () {
  "use strict";
  var main = document.getElementById("main");
  var form = document.getElementById("form");
  var frame = document.getElementById("sheet");
  var status = document.getElementById("status");
  var note = document.getElementById("note");
  var clear = document.getElementById("clear");
  var put = null;
  var isAlone = false;
  var which = document.getElementById("which");
  var rows = document.getElementById("layer-rows");
  var records = [];
  // Which record of the file stands in the form, and which have changes that no file holds.
  var shown = 0;
  var unsaved = {};
  var slow = 0;
  var kept = {};
  var latest = 0;
  var timer = 0;

  // Who writes in French marks decimals by a comma; what a file says stays as the file has it.
  var isComma = document.documentElement.lang === "fr";

  function text(field) {
    var said = field.value.trim();
    var isFigure = isComma && "number" in field.dataset && "typed" in field.dataset;
    return isFigure ? said.replace(/(\d),(?=\d)/g, "$1.") : said;
  }

  function addLayer() {
    var row = document.getElementById("layer-row").content.cloneNode(true);
    row.querySelector("span").textContent = main.dataset.layer.replace("#", rows.children.length + 1);
    rows.appendChild(row);
  }

  // The record as JSON: keys nested by their dots, every value as it was typed.
  function record() {
    var out = {};
    form.querySelectorAll("[name]").forEach(function (field) {
      var said = text(field);
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
      .then(function (answer) { return answer.ok ? answer.json() : { problem: main.dataset.stale }; })
      .then(function (answer) {
        if (!answer.problem) {
          then(answer);
        } else if (refused) {
          refused(answer.problem);
        } else {
          behind(answer.problem);
        }
      })
      .catch(function () { behind(main.dataset.lost); });
  }

  // What is wrong stands in the status, and the sheet shows that it is of an earlier form.
  function behind(problem) {
    clearTimeout(slow);
    status.textContent = problem;
    frame.classList.add("old");
  }

  // What there is to say of single entries stands beside them, and each group says how much.
  function beside(notes) {
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
      clearTimeout(slow);
      frame.onload = null;
      frame.srcdoc = "";
      frame.classList.remove("old");
      status.textContent = main.dataset.waiting;
      beside({});
      return;
    }
    // A record needs a number; a form that has none yet is checked all the same.
    asked.record = asked.record || {};
    asked.record.id = asked.record.id || main.dataset.unnumbered;
    clearTimeout(slow);
    slow = setTimeout(function () { status.textContent = main.dataset.busy; }, 800);
    ask("check", JSON.stringify(asked), function (answer) {
      if (mine !== latest) { return; }
      clearTimeout(slow);
      frame.classList.remove("old");
      var at = frame.contentWindow ? frame.contentWindow.scrollY : 0;
      frame.onload = function () { frame.contentWindow.scrollTo(0, at); };
      frame.srcdoc = answer.sheet;
      beside(answer.notes);
      status.textContent = main.dataset.said.replace("##", answer.untold).replace("#", answer.findings);
    });
  }

  function soon() {
    clearTimeout(timer);
    timer = setTimeout(check, 250);
  }

  function fill(source) {
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
    form.querySelectorAll("details").forEach(function (group) {
      group.open = Array.from(group.querySelectorAll("[name]")).some(function (f) { return f.value !== ""; });
    });
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

  function open(file) {
    tell("");
    if (file.size > Number(main.dataset.most)) {
      tell(main.dataset.large.replace("#", file.name));
      return;
    }
    ask("read?name=" + encodeURIComponent(file.name), file, function (answer) {
      // What was typed and is in no file can be brought back.
      var was = hasUnsaved() ? record() : null;
      records = answer.records;
      shown = 0;
      unsaved = {};
      keep(was);
      isAlone = was !== null;
      which.textContent = "";
      records.forEach(function (one, i) { which.add(new Option(one.name, i)); });
      document.getElementById("which-label").hidden = records.length < 2;
      fill(records[0].record);
      tell(answer.note);
    }, tell);
  }

  form.addEventListener("input", function (event) { event.target.dataset.typed = ""; keep(null); unsaved[shown] = true; soon(); });
  form.addEventListener("submit", function (event) { event.preventDefault(); check(); });
  document.getElementById("layer-more").addEventListener("click", function () {
    addLayer();
    rows.lastElementChild.querySelector("input").focus();
  });
  document.getElementById("file").addEventListener("change", function (event) {
    if (event.target.files.length) { open(event.target.files[0]); }
  });
  document.getElementById("file").addEventListener("click", function (event) { event.target.value = ""; });
  // A record that one goes on from keeps what was typed into it.
  which.addEventListener("change", function () {
    records[shown].record = record();
    shown = Number(which.value);
    keep(null);
    fill(records[shown].record);
  });
  function hasUnsaved() {
    return Object.keys(unsaved).length > 0 && (Object.keys(record()).length > 0 || records.length > 1);
  }
  window.addEventListener("beforeunload", function (event) {
    if (hasUnsaved()) { event.preventDefault(); event.returnValue = true; }
  });
  // What was cleared can be brought back until something else is typed.
  function keep(source) {
    put = source;
    isAlone = false;
    clear.textContent = source ? main.dataset.back : main.dataset.clear;
  }
  clear.addEventListener("click", function () {
    var was = put;
    tell("");
    if (was) {
      // A form that a file took the place of is none of that file's records.
      if (isAlone) {
        records = [];
        shown = 0;
        document.getElementById("which-label").hidden = true;
      }
      keep(null);
      unsaved[shown] = true;
      fill(was);
    } else {
      var now = record();
      fill({});
      form.querySelector("details").open = true;
      keep(Object.keys(now).length === 0 ? null : now);
    }
  });
  document.getElementById("print").addEventListener("click", function () { frame.contentWindow.print(); });
  document.getElementById("save").addEventListener("click", function () {
    var out = record();
    var link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([JSON.stringify(out, null, 2) + "\n"], { type: "application/json" }));
    link.download = ((out.record && out.record.id) || "record").replace(/[^A-Za-z0-9_-]+/g, "-") + ".json";
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, 10000);
    delete unsaved[shown];
  });
  ["dragover", "dragleave", "drop"].forEach(function (kind) {
    document.addEventListener(kind, function (event) {
      event.preventDefault();
      main.classList.toggle("dropping", kind === "dragover");
      if (kind === "drop" && event.dataTransfer.files.length) { open(event.dataTransfer.files[0]); }
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
