// What every page does: follows other people's changes, and knows its keys.
import { follow } from "./live.js";
import { listen } from "./keys.js";

follow(document.body.dataset.live);
listen();

// The editing tables, where one is shown.
const tables = () => document.getElementById("grid") && import("./grid.js");
tables();
document.addEventListener("htmx:afterSettle", tables);
