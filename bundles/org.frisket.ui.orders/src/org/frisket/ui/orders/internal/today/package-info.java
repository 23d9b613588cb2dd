/** What is to be printed, cut and finished today. */
package org.frisket.ui.orders.internal.today;
