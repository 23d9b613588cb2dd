/**
 * Two desks have changed one job: what each of them did to it, and one job out of both. All of it works on what the
 * documents say and knows no database. A job is taken apart into {@link org.frisket.orders.compare.Node nodes} that are
 * told from each other by their ids; whatever features a node has are compared without knowing what they mean.
 */
package org.frisket.orders.compare;
