/** The rules about pictures: does each arrive in a format that all on its way take, and is it fit to be shown? */
@NullMarked
package housewright.check.picture;

import org.jspecify.annotations.NullMarked;
