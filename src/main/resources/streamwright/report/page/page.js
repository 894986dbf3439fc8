(function () {
  "use strict";
  var all = function (selector, root) { return Array.prototype.slice.call((root || document).querySelectorAll(selector)); };
  var map = document.getElementById("yardmap");
  var readout = document.getElementById("readout");
  var marks = map ? all("a.mark", map) : [];
  var reached = marks[0];
  var marksOf = new Map();
  marks.forEach(function (mark) {
    var id = mark.getAttribute("data-for");
    marksOf.set(id, (marksOf.get(id) || []).concat(mark));
  });

  /* what is pointed at, told in words */
  function tell(mark) {
    var target = document.getElementById(mark.getAttribute("data-for"));
    if (!readout || !target) { return; }
    readout.textContent = "";
    var name = document.createElement("p");
    var bold = document.createElement("b");
    bold.textContent = mark.getAttribute("aria-label");
    name.appendChild(bold);
    readout.appendChild(name);
    var note = target.querySelector(".note");
    if (note && note.textContent) { readout.appendChild(note.cloneNode(true)); }
    reached.tabIndex = -1;
    mark.tabIndex = 0;
    reached = mark;
  }
  marks.forEach(function (mark, i) {
    mark.tabIndex = i === 0 ? 0 : -1;
    mark.addEventListener("mouseenter", function () { tell(mark); });
    mark.addEventListener("focus", function () { tell(mark); });
    mark.addEventListener("click", function (event) { event.preventDefault(); mark.focus(); tell(mark); });
  });

  /* zoom and pan by the drawing's window; marks and letters keep their size */
  if (map) {
    var whole = map.getAttribute("viewBox").split(" ").map(Number);
    var view = whole.slice();
    var show = function () {
      map.setAttribute("viewBox", view.map(function (v) { return v.toFixed(2); }).join(" "));
      size();
    };
    /* which labels have room goes by how large the drawing is on this screen; on a small one letters shrink a little */
    var size = function () {
      var box = map.getBoundingClientRect();
      if (box.width <= 0) { return; }
      var unit = Math.min(box.width / view[2], box.height / view[3]);
      map.setAttribute("data-z", [16, 8, 4, 2, 1].find(function (zoom) { return unit >= zoom * 0.85; }) || 0);
      map.style.setProperty("--k", Math.min(1 / unit, 1.7).toFixed(4));
    };
    var clamp = function (v, low, high) { return Math.min(high, Math.max(low, v)); };
    var move = function (x, y) {
      view[0] = clamp(x, whole[0] - view[2] / 2, whole[0] + whole[2] - view[2] / 2);
      view[1] = clamp(y, whole[1] - view[3] / 2, whole[1] + whole[3] - view[3] / 2);
      show();
    };
    var zoomAt = function (factor, fx, fy) {
      var wide = clamp(view[2] / factor, whole[2] / 32, whole[2]);
      var high = wide * whole[3] / whole[2];
      var x = view[0] + (view[2] - wide) * fx, y = view[1] + (view[3] - high) * fy;
      view[2] = wide; view[3] = high;
      if (wide === whole[2]) { view = whole.slice(); show(); } else { move(x, y); }
    };
    var share = function (event) {
      var box = map.getBoundingClientRect();
      return [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
    };
    all("[data-zoom]").forEach(function (button) {
      button.addEventListener("click", function () {
        var to = button.getAttribute("data-zoom");
        if (to === "all") { view = whole.slice(); show(); } else { zoomAt(to === "in" ? 2 : 0.5, 0.5, 0.5); }
      });
    });
    map.addEventListener("wheel", function (event) {
      if (!event.ctrlKey && !event.shiftKey && view[2] === whole[2] && event.deltaY > 0) { return; }
      event.preventDefault();
      var at = share(event);
      zoomAt(event.deltaY < 0 ? 1.25 : 0.8, at[0], at[1]);
    }, { passive: false });
    var pointers = {}, spread = 0;
    map.addEventListener("pointerdown", function (event) { pointers[event.pointerId] = [event.clientX, event.clientY]; spread = 0; });
    window.addEventListener("pointermove", function (event) {
      var last = pointers[event.pointerId];
      if (!last) { return; }
      var ids = Object.keys(pointers);
      var box = map.getBoundingClientRect();
      if (ids.length === 1) {
        move(view[0] - (event.clientX - last[0]) * view[2] / box.width, view[1] - (event.clientY - last[1]) * view[3] / box.height);
      }
      pointers[event.pointerId] = [event.clientX, event.clientY];
      if (ids.length === 2) {
        var a = pointers[ids[0]], b = pointers[ids[1]];
        var apart = Math.hypot(a[0] - b[0], a[1] - b[1]);
        if (spread > 0) { zoomAt(apart / spread, ((a[0] + b[0]) / 2 - box.left) / box.width, ((a[1] + b[1]) / 2 - box.top) / box.height); }
        spread = apart;
      }
    });
    ["pointerup", "pointercancel"].forEach(function (end) {
      window.addEventListener(end, function (event) { delete pointers[event.pointerId]; spread = 0; });
    });
    var place = function (mark) {
      var box = (mark.querySelector(".feed, .tag, .k") || mark).getBoundingClientRect();
      return [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    };
    var ways = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] };
    map.addEventListener("keydown", function (event) {
      var current = event.target.closest("a.mark");
      var way = ways[event.key];
      if (event.key === "+" || event.key === "=") { zoomAt(2, 0.5, 0.5); }
      else if (event.key === "-") { zoomAt(0.5, 0.5, 0.5); }
      else if (event.key === "0" || event.key === "Escape") { view = whole.slice(); show(); }
      else if (event.key === "Enter" && current) { location.hash = current.getAttribute("href"); }
      else if (way && current) {
        var from = place(current), best = null, least = Infinity;
        marks.forEach(function (mark) {
          if (mark === current) { return; }
          var to = place(mark), dx = to[0] - from[0], dy = to[1] - from[1];
          var along = dx * way[0] + dy * way[1], aside = Math.abs(dx * way[1] - dy * way[0]);
          var far = along + 2.5 * aside;
          if (along > 0.5 && far < least) { least = far; best = mark; }
        });
        if (best) {
          best.focus({ preventScroll: true });
          var at = place(best), box = map.getBoundingClientRect();
          if (at[0] < box.left || at[0] > box.right || at[1] < box.top || at[1] > box.bottom) {
            move(view[0] + (at[0] - (box.left + box.right) / 2) * view[2] / box.width, view[1] + (at[1] - (box.top + box.bottom) / 2) * view[3] / box.height);
          }
        }
      } else { return; }
      event.preventDefault();
    });
    window.addEventListener("resize", size);
    /* paper has no zoom: large yards follow in parts, which are copies that live only while one prints */
    var tiles = all(".tile svg");
    window.addEventListener("beforeprint", function () {
      view = whole.slice(); show(); map.style.removeProperty("--k"); map.setAttribute("data-z", 1);
      tiles.forEach(function (tile) {
        var copy = document.createElementNS(tile.namespaceURI, "use");
        copy.setAttribute("href", "#drawing");
        tile.replaceChildren(copy);
      });
    });
    window.addEventListener("afterprint", function () { tiles.forEach(function (tile) { tile.replaceChildren(); }); size(); });
    size();
  }

  /* search over everything that has something to find */
  var field = document.getElementById("search"), hits = document.getElementById("hits"), found = document.getElementById("found");
  var things = all("[data-find]").map(function (element) {
    return { element: element, text: element.getAttribute("data-find").toLowerCase() };
  });
  var number = function (element, name) { return Number(element.getAttribute(name)); };
  function test(question) {
    var channel = /^(?:ch|channel)\.?\s*(\d+)$/.exec(question);
    var slot = /^(?:u|universe)?\s*(\d+)\s*(?:\/|slot)\s*(\d+)$/.exec(question);
    if (channel || slot) {
      return function (thing) {
        var e = thing.element;
        if (!e.hasAttribute("data-c0")) { return false; }
        var c = channel ? Number(channel[1])
          : number(e, "data-c") + (Number(slot[1]) - number(e, "data-u")) * number(e, "data-slots") + Number(slot[2]) - 1;
        return (channel || (Number(slot[2]) >= 1 && Number(slot[2]) <= number(e, "data-slots")))
          && number(e, "data-c0") <= c && c <= number(e, "data-c1");
      };
    }
    /* what was asked, word for word; else as the begin of it; else its words wherever they stand */
    var literal = "(^|[^\\w])" + question.replace(/[^\w\s]/g, "\\$&");
    var phrase = [literal + "(?!\\w)", literal].map(function (text) { return new RegExp(text); }).find(function (pattern) {
      return things.some(function (thing) { return pattern.test(thing.text); });
    });
    var words = question.split(/\s+/);
    return function (thing) {
      return phrase ? phrase.test(thing.text) : words.every(function (word) { return thing.text.indexOf(word) >= 0; });
    };
  }
  function seek() {
    var question = field.value.trim().toLowerCase();
    all(".on").forEach(function (each) { each.classList.remove("on"); });
    hits.textContent = "";
    if (map) { map.classList.toggle("searching", question !== ""); }
    if (!question) { found.textContent = ""; return; }
    var passes = test(question), count = 0;
    things.forEach(function (thing) {
      if (!passes(thing)) { return; }
      count++;
      thing.element.classList.add("on");
      (marksOf.get(thing.element.id) || []).forEach(function (mark) { mark.classList.add("on"); });
      if (count <= 60 && thing.element.id) {
        var item = document.createElement("li"), link = document.createElement("a");
        link.href = "#" + thing.element.id;
        link.textContent = thing.element.getAttribute("data-name");
        item.appendChild(link);
        hits.appendChild(item);
      }
    });
    found.textContent = count === 1 ? "1 place" : count + " places";
  }
  if (field) {
    field.form.hidden = things.length === 0;
    field.addEventListener("input", seek);
    field.form.addEventListener("submit", function (event) {
      event.preventDefault();
      var first = hits.querySelector("a");
      if (first) { location.hash = first.getAttribute("href"); }
    });
  }

  /* what was ticked and written stays in this browser, where the browser allows it */
  var shelf = "streamwright " + document.title;
  var kept = {};
  try { kept = JSON.parse(localStorage.getItem(shelf)) || {}; } catch (e) { kept = {}; }
  all("[data-keep]").forEach(function (input) {
    var key = input.getAttribute("data-keep"), box = input.type === "checkbox";
    if (Object.prototype.hasOwnProperty.call(kept, key)) { if (box) { input.checked = kept[key] === true; } else { input.value = String(kept[key]); } }
    input.addEventListener("change", function () {
      kept[key] = box ? input.checked : input.value;
      try { localStorage.setItem(shelf, JSON.stringify(kept)); } catch (e) { /* paper still works */ }
    });
  });
})();
