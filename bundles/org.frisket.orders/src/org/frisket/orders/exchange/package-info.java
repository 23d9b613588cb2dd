/** Jobs for the systems of others: as XJDF, the job ticket of CIP4 ({@link org.frisket.orders.exchange.XjdfWriter}). */
package org.frisket.orders.exchange;
