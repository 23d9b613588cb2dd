/**
 * The order book: every job of a studio, from enquiry to delivery, in the studio's database
 * ({@link org.frisket.orders.OrderBook}). The document of a job is kept as its file; what is listed and searched stands
 * beside it.
 */
package org.frisket.orders;
