// Other people's changes, and one's own from another window. The server says that something changed; the page is then
// fetched again, and the parts marked data-live that differ are put in place. A part in which somebody types is left
// until they are done.

let waiting = false;

export function follow(address) {
    if (!address) return;
    const events = new EventSource(address);
    events.addEventListener("changed", () => refresh());
    document.addEventListener("focusout", () => {
        if (waiting) setTimeout(refresh, 200);
    });
}

async function refresh() {
    waiting = false;
    const answer = await fetch(location.href, { headers: { "X-Housewright-Part": "live" } });
    if (!answer.ok) return;
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const part of document.querySelectorAll("[data-part]")) {
        const next = fresh.getElementById(part.id);
        if (next === null || next.outerHTML === part.dataset.shown || same(part, next)) continue;
        if (isTypedIn(part)) {
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
