/**
 * What the network is made of: links between ports, segments that hear one another, what each send loads on each link,
 * and what power over the network is asked and given. Switches join their ports within a VLAN and nothing else does; a
 * port of a switch that says nothing carries VLAN 1. A link has the rate of its slower port. Multicast floods every
 * link of its VLAN behind a switch that is known not to do IGMP snooping (RFC 4541).
 */
@NullMarked
package housewright.network;

import org.jspecify.annotations.NullMarked;
