// Other people's changes, and one's own from another window. The server says that something changed; the page is then
// fetched again, and the parts marked data-live that differ are put in place. A part in which somebody types is left
// until they are done.
//
// The server says how far the project is when a page begins to listen, too: what happened before, or while the line was
// down, is not missed. A page that nobody sees does not listen: a browser has only six lines to one server.

const SILENT_MS = 4000; // a line that breaks is mostly there again by then

let events = null;
let shown = 0; // the revision
let silence = 0;
let waiting = false;

export function follow(address) {
    if (!address) return;
    shown = Number(document.body.dataset.revision);
    const listen = () => (document.hidden ? hush() : hear(address));
    document.addEventListener("visibilitychange", listen);
    document.addEventListener("focusout", () => {
        if (waiting) setTimeout(refresh, 200);
    });
    document.addEventListener("let-go", () => waiting && refresh());
    document.addEventListener("htmx:afterSettle", () => pages++);
    listen();
}

function hear(address) {
    if (events !== null) return;
    events = new EventSource(address);
    events.addEventListener("changed", (event) => {
        if (Number(event.data) > shown) refresh();
    });
    events.addEventListener("printed", refresh);
    events.addEventListener("open", () => lost(""));
    events.addEventListener("error", () => {
        if (events?.readyState === EventSource.CLOSED) lost("This page does not show what others change any more. Load it again.");
        else if (silence === 0) silence = setTimeout(() => lost("Housewright cannot be reached. What others change is shown when it can be again."), SILENT_MS);
    });
}

function hush() {
    events?.close();
    events = null;
    lost("");
}

function lost(words) {
    clearTimeout(silence);
    silence = 0;
    const says = document.getElementById("lost");
    if (says !== null && says.textContent !== words) says.textContent = words;
}

let asking = false;
let again = false;
let pages = 0; // that have come in place of this one: an answer that was asked for before is older than they

/** One after the other: of two answers the older could come last. */
async function refresh() {
    again = true;
    if (asking) return;
    asking = true;
    try {
        while (again) {
            again = false;
            await show();
        }
    } catch {
        // the server cannot be reached; it says how far the project is when it can be again
    } finally {
        asking = false;
    }
}

async function show() {
    waiting = false;
    const page = pages;
    const answer = await fetch(location.href, { headers: { "X-Housewright-Part": "live" } });
    if (!answer.ok) return;
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (page !== pages) {
        again = true;
        return;
    }
    shown = Math.max(shown, Number(fresh.body.dataset.revision));
    for (const part of document.querySelectorAll("[data-part]")) {
        const next = fresh.getElementById(part.id);
        if (next === null || next.outerHTML === part.dataset.shown || same(part, next)) continue;
        if (part.dataset.held || part.querySelector("[data-held]") || isTypedIn(part)) {
            waiting = true;
            continue;
        }
        put(part, next);
    }
    document.dispatchEvent(new CustomEvent("refreshed"));
}

function same(part, next) {
    return part.innerHTML === next.innerHTML;
}

function isTypedIn(part) {
    return [...part.querySelectorAll("input:not([type=hidden]), textarea, select")].some(
        (field) => field === document.activeElement || isChanged(field),
    );
}

function isChanged(field) {
    if (field.type === "checkbox" || field.type === "radio") return field.checked !== field.defaultChecked;
    if (field.tagName === "SELECT") return [...field.options].some((each) => each.selected !== each.defaultSelected);
    return field.value !== field.defaultValue;
}

function put(part, next) {
    const focused = part.contains(document.activeElement) ? document.activeElement.id : "";
    const open = new Set([...part.querySelectorAll("details[open][id]")].map((each) => each.id));
    const node = document.adoptNode(next);
    for (const each of node.querySelectorAll("details[id]")) each.open = open.has(each.id);
    part.replaceWith(node);
    window.htmx?.process(node);
    if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
}
