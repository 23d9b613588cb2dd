/** The days of this week and what is due on them. */
package org.frisket.ui.orders.internal.week;
