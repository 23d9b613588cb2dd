/**
 * The studio's database, {@code studio.mv.db} in the studio folder: opened, brought up to date area by area, and lent
 * out. Whoever keeps something in it names an {@link org.frisket.studio.store.Area} of its own; its SQL is standard, so
 * that the same runs on a database server.
 */
package org.frisket.studio.store;
