/**
 * The face in the browser: routes, who may come in, and what each request does. It reckons nothing; pages are made of
 * what {@link housewright.app} and the study say.
 */
@NullMarked
package housewright.web;

import org.jspecify.annotations.NullMarked;
