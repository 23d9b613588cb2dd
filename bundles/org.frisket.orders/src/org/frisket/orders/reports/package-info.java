/** What the order book says of all jobs together, as values and as tables. */
package org.frisket.orders.reports;
