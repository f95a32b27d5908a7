package housewright.web;

import housewright.app.Projects;
import housewright.app.plan.Solves;
import java.time.ZoneId;

/** What every route may need. */
record Common(
        Projects projects,
        Assets assets,
        Door door,
        Guard guard,
        SharedLinks links,
        Live live,
        ZoneId zone,
        Addresses addresses,
        Serving serving,
        Sheets sheets,
        Standings standings,
        Solves solves,
        Press press) {}
