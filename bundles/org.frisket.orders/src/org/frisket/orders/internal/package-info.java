/** How the order book is kept in tables. */
package org.frisket.orders.internal;
