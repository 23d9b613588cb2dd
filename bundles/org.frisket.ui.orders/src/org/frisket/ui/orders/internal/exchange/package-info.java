/** Orders that come as tables, jobs that come and go as files, and tickets for the systems of others, on the screen. */
package org.frisket.ui.orders.internal.exchange;
