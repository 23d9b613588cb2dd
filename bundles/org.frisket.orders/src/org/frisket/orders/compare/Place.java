package org.frisket.orders.compare;

/**
 * Where a node stands.
 *
 * @param owner   key of the node it belongs to
 * @param feature of that node
 */
record Place(String owner, String feature) {
}
