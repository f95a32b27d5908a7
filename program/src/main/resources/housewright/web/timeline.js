// The drawn plan: begins at this moment, where it is on one of the days.
const area = document.querySelector(".chart-time");
const now = document.getElementById("chart-now");
if (area && now) area.scrollLeft = Math.max(0, Number(now.dataset.x) - area.clientWidth / 3);
