package housewright.web;

import housewright.app.Role;

/** What somebody must be to use a route. */
enum Need {
    /** Anybody who reaches the port: the door itself, and files that say nothing of a project. */
    NOBODY,
    LOOK,
    SITE,
    LEAD;

    boolean met(Role role) {
        return switch (this) {
            case NOBODY, LOOK -> true;
            case SITE -> role.mayWorkOnSite();
            case LEAD -> role.mayDoAll();
        };
    }
}
