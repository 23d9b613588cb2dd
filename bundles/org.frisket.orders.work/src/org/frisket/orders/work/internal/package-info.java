/** The tables of runs, and what follows from what is said to be done. */
package org.frisket.orders.work.internal;
