/** What is due on the days of a week. */
package org.frisket.orders.week;
