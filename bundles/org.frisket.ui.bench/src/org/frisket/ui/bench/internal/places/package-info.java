/** Where jobs on a bench are kept that are none of an order book: in files, and nowhere yet. */
package org.frisket.ui.bench.internal.places;
