/** The rules about the network: addresses, VLANs, load, multicast, power, and what hangs on what. */
@NullMarked
package housewright.check.network;

import org.jspecify.annotations.NullMarked;
