/** What each page shows, as records that its template only has to write down. */
@NullMarked
package housewright.web.page;

import org.jspecify.annotations.NullMarked;
