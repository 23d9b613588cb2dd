/** The order book as a table. */
package org.frisket.ui.orders.internal.book;
