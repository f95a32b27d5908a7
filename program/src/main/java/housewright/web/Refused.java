package housewright.web;

import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;

/** A request that is not answered, with the reason for whoever reads it. */
final class Refused extends HttpResponseException {
    private static final long serialVersionUID = 1;

    Refused(HttpStatus status, String why) {
        super(status.getCode(), why);
    }

    static Refused notFound(String why) {
        return new Refused(HttpStatus.NOT_FOUND, why);
    }

    static Refused wrong(String why) {
        return new Refused(HttpStatus.BAD_REQUEST, why);
    }
}
