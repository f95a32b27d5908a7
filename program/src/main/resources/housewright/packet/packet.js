"use strict";
// Everything happens on this phone: nothing is sent anywhere until the saved file is sent by whoever saved it.
const packet = JSON.parse(document.getElementById("packet").textContent);
const KEY = "housewright-packet-" + packet.id;
const LONGEST_SIDE = 1600;
const said = new Map(); // by item: {text, photos: [{name, data}]}
const list = { questions: document.getElementById("questions"), survey: document.getElementById("survey") };
const state = document.getElementById("state");
const kept = document.getElementById("kept");

function get(key) {
  if (!said.has(key)) said.set(key, { text: "", photos: [] });
  return said.get(key);
}

// Photos are larger than a browser's plain storage; text goes with them into the same database.
function database() {
  return new Promise((done, failed) => {
    const open = indexedDB.open("housewright-packets", 1);
    open.onupgradeneeded = () => open.result.createObjectStore("said");
    open.onsuccess = () => done(open.result);
    open.onerror = () => failed(open.error);
  });
}

async function keep() {
  count();
  const all = JSON.stringify([...said]);
  try {
    const db = await database();
    await new Promise((done, failed) => {
      const write = db.transaction("said", "readwrite");
      write.objectStore("said").put(all, KEY);
      write.oncomplete = done;
      write.onerror = write.onabort = () => failed(write.error);
    });
    db.close();
    kept.textContent = "Kept in this browser as you type.";
  } catch (first) {
    try {
      localStorage.setItem(KEY, JSON.stringify([...said].map(([key, each]) => [key, { text: each.text, photos: [] }])));
      kept.textContent = "Words are kept in this browser, photos are not: save before you close it.";
    } catch (second) {
      kept.textContent = "This browser keeps nothing: save before you close it.";
    }
  }
}

async function remember() {
  let all = null;
  try {
    const db = await database();
    all = await new Promise((done, failed) => {
      const read = db.transaction("said").objectStore("said").get(KEY);
      read.onsuccess = () => done(read.result);
      read.onerror = () => failed(read.error);
    });
    db.close();
  } catch (none) {
    try { all = localStorage.getItem(KEY); } catch (neither) { /* it says so when something is typed */ }
  }
  if (all) for (const [key, each] of JSON.parse(all)) said.set(key, each);
}

function answered(each) { return each.text.trim() !== "" || each.photos.length > 0; }

function count() {
  let done = 0;
  for (const item of packet.items) {
    const is = answered(get(item.key));
    done += is ? 1 : 0;
    document.getElementById("asks-" + item.key).classList.toggle("done", is);
  }
  state.textContent = done + " of " + packet.items.length + " answered";
}

// Drawn anew at a smaller size: what a camera writes beside the picture, its position above all, is not taken along.
async function smaller(file) {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return canvas.toDataURL("image/jpeg", 0.82).split(",")[1];
}

function element(name, attributes, ...inner) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...inner);
  return made;
}

function shots(item, into) {
  into.replaceChildren(...get(item.key).photos.map((photo, n) => {
    const image = element("img", { src: "data:image/jpeg;base64," + photo.data, alt: "Photo " + (n + 1) + " for: " + item.asks });
    const away = element("button", { type: "button", "aria-label": "Take away photo " + (n + 1) + " of: " + item.asks }, "Take away");
    away.onclick = () => { get(item.key).photos.splice(n, 1); shots(item, into); keep(); };
    return element("li", {}, image, away);
  }));
}

function field(item) {
  const own = get(item.key);
  const id = "f-" + item.key;
  if (item.units.length) {
    const parts = own.text.match(/^([\d.,-]*)\s*(.*)$/) || ["", "", ""];
    const number = element("input", { id, inputmode: "decimal", autocomplete: "off", value: parts[1] });
    const unit = element("select", { "aria-label": "Unit of: " + item.asks }, ...item.units.map(each => element("option", {}, each)));
    if (item.units.includes(parts[2])) unit.value = parts[2];
    const typed = () => {
      const text = number.value.trim().replace(",", ".");
      own.text = text ? text + " " + unit.value : "";
      const wrong = text !== "" && !/^-?\d+(\.\d+)?$/.test(text);
      number.setCustomValidity(wrong ? "A number, such as 2.45" : "");
      number.setAttribute("aria-invalid", wrong);
      keep();
    };
    number.oninput = typed;
    unit.onchange = typed;
    return element("div", { class: "line" }, number, unit);
  }
  if (item.choices.length) {
    const choice = element("select", { id }, element("option", { value: "" }, "choose"), ...item.choices.map(each => element("option", {}, each)));
    choice.value = own.text;
    choice.onchange = () => { own.text = choice.value; keep(); };
    return choice;
  }
  const text = element("textarea", { id, rows: "2", maxlength: "4000" }, own.text);
  text.oninput = () => { own.text = text.value; keep(); };
  return text;
}

function show(item) {
  const asks = element("label", { class: "asks", for: "f-" + item.key, id: "asks-" + item.key }, item.asks);
  const second = element("p", { class: "second" }, [item.about, item.hint, item.due].filter(Boolean).join(" · "));
  const into = element("ul", { class: "shots" });
  const camera = element("input", { type: "file", accept: "image/*", multiple: "" });
  const photo = element("label", { class: "photo" }, "Photo", camera);
  camera.setAttribute("aria-label", "Photo for: " + item.asks);
  const trouble = element("p", { class: "caution", role: "alert", hidden: "" });
  camera.onchange = async () => {
    trouble.hidden = true;
    for (const file of camera.files) {
      try {
        get(item.key).photos.push({ name: file.name, data: await smaller(file) });
      } catch (e) {
        trouble.textContent = file.name + " cannot be read as a picture by this browser.";
        trouble.hidden = false;
      }
    }
    camera.value = "";
    shots(item, into);
    keep();
  };
  shots(item, into);
  const line = element("li", {}, asks, second);
  if (item.caution) line.append(element("p", { class: "caution" }, item.caution));
  line.append(field(item), photo, trouble, into);
  list[item.kind].append(line);
}

function file() {
  const answers = packet.items.filter(item => answered(get(item.key))).map(item => ({
    about: item.subject, field: item.field, asked: item.asks, was: item.was, answer: get(item.key).text.trim(),
    photos: get(item.key).photos.map(photo => ({ name: photo.name, data: photo.data }))
  }));
  const at = new Date();
  const two = n => String(n).padStart(2, "0");
  const saved = at.getFullYear() + "-" + two(at.getMonth() + 1) + "-" + two(at.getDate()) + " " + two(at.getHours()) + ":" + two(at.getMinutes());
  const content = JSON.stringify({ format: 1, packet: packet.id, project: packet.project, to: packet.to, saved, answers }, null, 1);
  return new File([content], "answers-" + packet.to + "-" + saved.slice(0, 10) + ".json", { type: "application/json" });
}

document.getElementById("save").onclick = () => {
  const wrong = document.querySelector("[aria-invalid=true]");
  if (wrong) { wrong.focus(); wrong.reportValidity(); return; }
  const made = file();
  const link = element("a", { download: made.name });
  link.href = URL.createObjectURL(made);
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  kept.textContent = "Saved as " + made.name + ". Send that file back.";
};

remember().then(() => {
  packet.items.forEach(show);
  for (const part of Object.values(list)) part.closest("section").hidden = !part.children.length;
  count();
});
