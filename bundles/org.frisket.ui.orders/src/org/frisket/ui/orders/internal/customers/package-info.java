/** Whom the studio works for. */
package org.frisket.ui.orders.internal.customers;
