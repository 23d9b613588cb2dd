/** Where the studio keeps its order book, and the password for it. */
package org.frisket.ui.orders.internal.place;
