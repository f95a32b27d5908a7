// What every page does: follows other people's changes, and knows its keys.
import { follow } from "./live.js";
import { listen } from "./keys.js";

follow(document.body.dataset.live);
listen();

// The editing tables, where one is shown.
const tables = () => document.getElementById("grid") && import("./grid.js");
tables();
document.addEventListener("htmx:afterSettle", tables);

// Photos that are too large together are told before they are sent, while what was typed beside them is there.
document.addEventListener("change", (event) => {
    const most = Number(event.target.dataset?.mostMb);
    if (!most) return;
    const mb = [...event.target.files].reduce((sum, file) => sum + file.size, 0) / 1024 / 1024;
    event.target.setCustomValidity(mb < most ? "" : `Together ${mb.toFixed(0)} MB; less than ${most} MB go at once. Send them in turns.`);
    event.target.reportValidity();
});

// What was said of the last step stays in sight until somebody has read it.
document.addEventListener("click", (event) => {
    if (event.target instanceof Element) event.target.closest("[data-dismiss]")?.closest(".notice").remove();
});
